import type { PaperFamily } from './imprint.ts'
import { enlargedName, paper } from './imprint.ts'
import { ink, weight } from './ink.ts'
import { cornersOf, grown, type Rect, rect } from './plane.ts'
import type { Mark } from './sheet.ts'

/** A plate's paper: a double frame, a band for the title block at its foot, and the room above the band. */
export interface Plate {
  /** 'A3', 'Tabloid': as a scale names its paper, at the size it is printed. */
  readonly name: string
  /** So many times is it printed as long and broad as it is composed. */
  readonly enlarged: number
  readonly width: number
  readonly height: number
  /** The inner line of the frame. */
  readonly frame: Rect
  readonly band: Rect
  readonly room: Rect
}

const margin = 11
const innerBy = 1.6
const bandHeight = 26

/** The landscape plate of a family of papers: A3 in the ISO family, Tabloid in the American one. */
export function plateOf(family: PaperFamily, enlarged = 1): Plate {
  const name = family === 'A4' ? 'A3' : 'Tabloid'
  const { width: height, height: width } = paper[name]
  const frame = grown(rect(0, 0, width, height), -margin - innerBy)
  const bandTop = frame.bottom - bandHeight
  return {
    name: enlargedName(name, enlarged),
    enlarged,
    width,
    height,
    frame,
    band: { ...frame, top: bandTop },
    room: { ...frame, bottom: bandTop },
  }
}

/** The two lines of the frame and the line above the band. They stand for no thing. */
export function plateFrame({ frame, band }: Plate): Mark {
  const outline = (box: Rect, width: number): Mark => ({
    kind: 'line',
    points: cornersOf(box),
    closed: true,
    pen: { ink: ink.ink, width },
  })
  return {
    kind: 'group',
    id: 'frame',
    tag: { role: 'Artifact' },
    marks: [
      outline(grown(frame, innerBy), weight.e),
      outline(frame, weight.a),
      {
        kind: 'line',
        points: [
          { x: frame.left, y: band.top },
          { x: frame.right, y: band.top },
        ],
        pen: { ink: ink.ink, width: weight.b },
      },
    ],
  }
}
