import { enlarged } from './enlarged.ts'
import { type InkName, ink, type WeightName, weight } from './ink.ts'
import { cornersOf, rect } from './plane.ts'
import type { Fill, Mark, Pen, Sheet, TextMark } from './sheet.ts'
import type { Style } from './style.ts'
import type { Face, Ruler, Typeface } from './typeface.ts'

/** A ruler that measures type as a style sets it. */
export const rulerIn =
  (style: Style, ruler: Ruler): Ruler =>
  (words, type) =>
    ruler(words, typeIn(style, type))

/**
 * A sheet in a style. It was drawn in the fine one, with `rulerIn` for its ruler: every ink, line weight and
 * typeface is exchanged for the style's own, and what the style does without is left out. Addresses stay.
 */
export function inStyle(style: Style, sheet: Sheet): Sheet {
  const { paper } = style.inks
  const styled = enlarged({ ...sheet, ground: paper, marks: marksIn(style, sheet.marks) }, style.enlarged)
  if (!style.printsGround) return styled
  const { width, height } = styled
  // Print leaves the ground bare, but not a figure of its colour.
  const ground: Mark = {
    kind: 'line',
    points: cornersOf(rect(0, 0, width, height)),
    closed: true,
    fill: { ink: paper },
  }
  return { ...styled, ground: undefined, marks: [ground, ...styled.marks] }
}

const marksIn = (style: Style, marks: readonly Mark[]): readonly Mark[] =>
  marks.flatMap(mark => (isLeftOut(style, mark) ? [] : [markIn(style, mark)]))

const isLeftOut = ({ without }: Style, mark: Mark): boolean =>
  'detail' in mark && mark.detail !== undefined && without.has(mark.detail)

function markIn(style: Style, mark: Mark): Mark {
  if (mark.kind === 'group') return { ...mark, marks: marksIn(style, mark.marks) }
  if (mark.kind === 'text') return textIn(style, mark)
  const { pen, fill } = mark
  if (style.seams && pen && isSeam(mark)) return { ...mark, pen: { ...penIn(style, pen), ...style.seams } }
  return { ...mark, ...(pen && { pen: penIn(style, pen) }), ...(fill && { fill: fillIn(style, fill) }) }
}

const isSeam = (mark: Mark): boolean =>
  mark.kind === 'line' && (mark.detail === 'seam' || mark.detail === 'second seam')

const textIn = (style: Style, mark: TextMark): TextMark => ({
  ...mark,
  type: typeIn(style, mark.type),
  ink: inkIn(style, mark.ink),
  ...(mark.halo && { halo: { ...mark.halo, ink: inkIn(style, mark.halo.ink) } }),
})

const penIn = (style: Style, pen: Pen): Pen => ({
  ...pen,
  ink: inkIn(style, pen.ink),
  width: weightIn(style, pen.width),
})

const fillIn = (style: Style, { ink: colour, opacity }: Fill): Fill => ({
  ink: inkIn(style, colour),
  ...(opacity !== undefined && style.showsThrough && { opacity }),
})

const inkNames = new Map(Object.entries(ink).map(([name, colour]) => [colour as string, name as InkName]))

function inkIn({ inks }: Style, colour: string): string {
  const name = inkNames.get(colour)
  return name === undefined ? colour : inks[name]
}

const weightNames = new Map(
  Object.entries(weight).map(([name, width]) => [width as number, name as WeightName]),
)

/** Widths outside the family are parts of a figure and grow with it alone. */
function weightIn({ weights }: Style, width: number): number {
  const name = weightNames.get(width)
  return name === undefined ? width : weights[name]
}

function typeIn({ type: { times, isHeavier } }: Style, type: Typeface): Typeface {
  if (times === 1 && !isHeavier) return type
  return { ...type, size: type.size * times, face: (isHeavier ? heavier[type.face] : undefined) ?? type.face }
}

/** The next heavier of the faces at hand. */
const heavier: Partial<Record<Face, Face>> = {
  Spectral: 'Spectral Medium',
  'Spectral Italic': 'Spectral Medium Italic',
  'Spectral SC': 'Spectral SC Medium',
  'Fira Sans Condensed': 'Fira Sans Condensed Medium',
  'Fira Sans Condensed Italic': 'Fira Sans Condensed SemiBold Italic',
}
