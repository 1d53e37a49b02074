import { type InkName, ink, type WeightName, weight } from './ink.ts'
import type { Detail } from './sheet.ts'

/** How a sheet is inked. It holds figures only and moves nothing: whatever the style, a sheet is composed alike. */
export interface Style {
  readonly inks: Readonly<Record<InkName, string>>
  /** Line weights in millimetres. */
  readonly weights: Readonly<Record<WeightName, number>>
  /** Sizes of type are so many times those of the fine style; Regular becomes Medium where it is heavier. */
  readonly type: { readonly times: number; readonly isHeavier: boolean }
  readonly without: ReadonlySet<Detail>
  /** Seams as dots, where a thin line would close up on a copier: width and dashes in millimetres. */
  readonly seams?: { readonly width: number; readonly dash: readonly number[] }
  /** Whether what stands behind a sail shows through its ground. */
  readonly showsThrough: boolean
  /** The paper, and the distance it is read at, are so many times those of the hand. */
  readonly enlarged: number
  /** Whether the ground is printed too, and not only shown on a screen. */
  readonly printsGround: boolean
}

export const styleNames = ['fine', 'black', 'bold', 'night', 'night-screen'] as const

/** Fine for the hand; black for copiers and printers of one ink; bold for walls; night for red light, in print, and on a screen that shows red alone. */
export type StyleName = (typeof styleNames)[number]

/** The paper, and what is laid on it as a tint. */
const tints = [
  'paper',
  'belowWater',
  'squareSail',
  'squareOnPaper',
  'foreAndAftSail',
  'foreAndAftOnPaper',
  'deck',
  'house',
  'railPlank',
] as const

const fine: Style = {
  inks: ink,
  weights: weight,
  type: { times: 1, isHeavier: false },
  without: new Set(['hidden spar']),
  showsThrough: true,
  enlarged: 1,
  printsGround: false,
}

/** Pure black and white: every grey is ink, and no line so thin that a copier would lose it. */
const black: Style = {
  ...fine,
  inks: {
    ...same('#FFFFFF', tints),
    ...same('#000000', ['ink', 'rig', 'faint', 'rule', 'more', 'less', 'hull', 'bootTop']),
    ...same('#000000', ['squareCloth', 'foreAndAftCloth']),
  },
  weights: weights(1, 0.18),
  without: new Set(['ratline', 'plank']),
  seams: { width: 0.2, dash: [0.2, 1.4] },
  showsThrough: false,
}

const heavier = weights(Math.SQRT2, 0.25)

const bold: Style = {
  inks: {
    ...ink,
    ...same('#FFFFFF', ['paper', 'belowWater', 'deck', 'house', 'railPlank']),
    ...same('#FFFFFF', ['foreAndAftSail', 'foreAndAftOnPaper']),
    squareOnPaper: ink.squareSail,
    ...same('#000000', ['ink', 'faint', 'rule']),
  },
  weights: heavier,
  type: { times: 1, isHeavier: false },
  without: new Set(['second seam', 'ratline', 'plank']),
  showsThrough: false,
  enlarged: 2,
  printsGround: false,
}

const dark = '#0B0C0E'
const light = '#F1EADB'
const red = '#E5402A'

const night: Style = {
  inks: {
    ...ink,
    ...same(dark, [...tints, 'hull', 'bootTop']),
    ...same(light, ['ink', 'more', 'less']),
    ...same('#CFC7B6', ['rig', 'faint']),
    ...same('#8B8578', ['rule', 'squareCloth', 'foreAndAftCloth']),
  },
  weights: heavier,
  type: { times: 1.12, isHeavier: true },
  without: new Set(['seam', 'second seam', 'ratline', 'plank']),
  showsThrough: false,
  enlarged: 1,
  printsGround: true,
}

/** On the dark ground of a screen nothing but red may shine. */
const nightScreen: Style = {
  ...night,
  inks: {
    ...night.inks,
    ...same(red, ['ink', 'more', 'less', 'rig', 'faint', 'rule', 'squareCloth', 'foreAndAftCloth']),
  },
}

export const styles: Readonly<Record<StyleName, Style>> = {
  fine,
  black,
  bold,
  night,
  'night-screen': nightScreen,
}

export const styleOf = ({ style = 'fine' }: { readonly style?: StyleName }): Style => styles[style]

/** Strips are set for 0.75 m in any style: larger still, a rail would have to be divided. */
export const forStrips = (style: Style): Style => ({ ...style, type: { ...style.type, times: 1 } })

function same<Name extends InkName>(colour: string, names: readonly Name[]): Readonly<Record<Name, string>> {
  return Object.fromEntries(names.map(name => [name, colour])) as Record<Name, string>
}

/** The family so many times as heavy, and no line under the least, in millimetres. */
function weights(times: number, least: number): Style['weights'] {
  const raised = Object.entries(weight).map(
    ([name, width]) => [name, Math.max(least, width * times)] as const,
  )
  return Object.fromEntries(raised) as Style['weights']
}
