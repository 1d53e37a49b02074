import { fitted } from './flow.ts'
import { ink, weight } from './ink.ts'
import { lettered } from './lettered.ts'
import type { Rect } from './plane.ts'
import { plateType } from './plate-type.ts'
import type { Mark, Point } from './sheet.ts'
import { tagged } from './tagged.ts'
import type { Ruler, Typeface } from './typeface.ts'

/** What a plate's cartouche says, from the vessel's name down. */
export interface Cartouche {
  readonly vessel: string
  /** 'Three-masted barque'; undefined where the text is silent. */
  readonly rig: string | undefined
  /** 'Sail plan, starboard profile'. */
  readonly title: string
  /** Short remarks in grey, each a line or wrapped before it comes here. */
  readonly notes: readonly string[]
  /** Errors in the rig: more than none are told across the rule. */
  readonly errors: number
}

const mostWidth = 150
const vesselTypes: readonly Typeface[] = [27, 24, 22, 20, 18, 16, 14].map(size => ({
  ...plateType.vessel,
  size,
}))

/** A cartouche as it stands: its mark, the room it takes, and the same room in two blocks, name and remarks. */
export interface SetCartouche {
  readonly mark: Mark
  readonly bounds: Rect
  readonly blocks: readonly Rect[]
}

/** A cartouche hung from its upper left corner. */
export function cartouche(words: Cartouche, at: Point, ruler: Ruler): SetCartouche {
  const name = fitted(words.vessel, vesselTypes, mostWidth, ruler)
  const width = Math.max(ruler(name.words, name.type), 40)
  const rig = words.rig && fitted(capitalised(words.rig), [plateType.rig, plateType.title], mostWidth, ruler)
  const lines = [
    ...(rig ? [{ words: rig.words, type: rig.type, ink: ink.ink, drop: 7 }] : []),
    { words: words.title, type: plateType.title, ink: ink.ink, drop: 5.9 },
    ...words.notes.map((note, i) => ({
      words: note,
      type: plateType.note,
      ink: ink.rig,
      drop: i === 0 ? 5 : 4.1,
    })),
  ]
  let y = at.y + 11.6
  const written = lines.map(line => {
    y += line.drop
    return lettered(ruler, { x: at.x, y }, line.words, line.type, line.ink)
  })
  const remarks = written.reduce((most, line) => Math.max(most, line.width), 0)
  const bounds = { left: at.x, top: at.y, right: at.x + Math.max(width, remarks), bottom: y + 1.5 }
  const ruleY = at.y + 12
  return {
    mark: {
      kind: 'group',
      id: 'cartouche',
      title: words.vessel,
      marks: [
        tagged('H1', [lettered(ruler, { x: at.x, y: at.y + 6.6 }, name.words, name.type, ink.ink)]),
        ...rule({ x: at.x, y: at.y + 11 }, width, words.errors, ruler),
        ...written.map(line => tagged('P', [line])),
      ],
    },
    bounds,
    blocks: [
      { ...bounds, right: at.x + width, bottom: ruleY },
      { ...bounds, right: at.x + remarks, top: ruleY },
    ],
  }
}

/** "from a rig with 3 errors", as every sheet of an unsound rig says. */
export const unsoundWords = (errors: number): string =>
  `from a rig with ${errors} ${errors === 1 ? 'error' : 'errors'}`

function rule({ x, y }: Point, width: number, errors: number, ruler: Ruler): readonly Mark[] {
  const line = (from: number, to: number, drop: number, thick: number): Mark => ({
    kind: 'line',
    points: [
      { x: from, y: y + drop },
      { x: to, y: y + drop },
    ],
    pen: { ink: ink.ink, width: thick },
  })
  if (errors === 0) return [line(x, x + width, 0, weight.d), line(x, x + width, 0.75, weight.a)]

  // The words stand in a gap of the rule, which grows if they need it.
  const words = unsoundWords(errors)
  const wordsWidth = ruler(words, plateType.unsound)
  const end = x + Math.max(width, wordsWidth + 16)
  const from = (x + end - wordsWidth) / 2
  const sides = [
    [x, from - 1.8],
    [from + wordsWidth + 1.8, end],
  ] as const
  return [
    ...sides.flatMap(([a, b]) => [line(a, b, 0, weight.d), line(a, b, 0.75, weight.a)]),
    tagged('P', [lettered(ruler, { x: from, y: y + 1.3 }, words, plateType.unsound, ink.ink)]),
  ]
}

const capitalised = (words: string): string => {
  const [first = '', ...rest] = [...words]
  return first.toUpperCase() + rest.join('')
}
