import { ink, weight } from './ink.ts'
import { lettered } from './lettered.ts'
import { type Rect, rect } from './plane.ts'
import { plateType } from './plate-type.ts'
import type { Mark, Point } from './sheet.ts'
import { tagged } from './tagged.ts'
import type { Ruler } from './typeface.ts'

/** One thing the key explains: a sample drawn in a small box, and what it stands for. */
export interface KeyEntry {
  readonly sample: (box: Rect) => readonly Mark[]
  readonly words: string
}

const pitch = 5.1
const sampleWidth = 9
const sampleHeight = 3.1
const wordsAt = 13

/** A key hung from its upper left corner, headed and ruled, and the room it takes. */
export function keyMarks(
  heading: string,
  entries: readonly KeyEntry[],
  { at, width }: { readonly at: Point; readonly width: number },
  ruler: Ruler,
): { mark: Mark; bounds: Rect } {
  const rows = entries.flatMap(({ sample, words }, i): readonly Mark[] => {
    const baseline = at.y + 9.2 + i * pitch
    const middle = baseline - 1
    const box = rect(at.x, middle - sampleHeight / 2, at.x + sampleWidth, middle + sampleHeight / 2)
    return [
      ...sample(box),
      tagged('P', [lettered(ruler, { x: at.x + wordsAt, y: baseline }, words, plateType.key, ink.ink)]),
    ]
  })
  return {
    mark: {
      kind: 'group',
      id: 'key',
      title: heading,
      marks: [...headed(heading, at, width, ruler), ...rows],
    },
    bounds: rect(at.x, at.y, at.x + width, at.y + 9.2 + Math.max(0, entries.length - 1) * pitch + 1.5),
  }
}

/** A small heading and the thin rule under it. */
export function headed(heading: string, at: Point, width: number, ruler: Ruler): readonly Mark[] {
  return [
    tagged('H2', [
      lettered(ruler, { x: at.x, y: at.y + 2.2 }, heading.toLowerCase(), plateType.heading, ink.ink),
    ]),
    {
      kind: 'line',
      points: [
        { x: at.x, y: at.y + 4 },
        { x: at.x + width, y: at.y + 4 },
      ],
      pen: { ink: ink.rig, width: weight.b },
    },
  ]
}
