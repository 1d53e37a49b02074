import { enlargedName, type PaperFamily } from '../imprint.ts'
import { weight } from '../ink.ts'

/** A standing sheet for a deck chart, in millimetres: its frame, and the inner line a little within. */
export interface ChartPaper {
  /** As it is printed. */
  readonly name: string
  /** So many times is it printed as long and broad as it is composed. */
  readonly enlarged: number
  readonly width: number
  readonly height: number
  readonly margin: number
  /** Weights of the frame and of its inner line, and how far apart the two stand. */
  readonly frame: readonly [outer: number, inner: number, apart: number]
}

/** The papers of a family, the smallest first: the first that holds the lists at 8 pt is taken. */
export function chartPapers(family: PaperFamily, enlarged = 1): readonly [ChartPaper, ...ChartPaper[]] {
  const [least, ...larger] = composed[family]
  const printed = (paper: Composed) => ({ ...paper, enlarged, name: enlargedName(paper.name, enlarged) })
  return [printed(least), ...larger.map(printed)]
}

type Composed = Omit<ChartPaper, 'enlarged'>

const lines = {
  A3: { margin: 9, frame: [weight.e, weight.a, 1.6] },
  A2: { margin: 15, frame: [weight.f, weight.b, 2.2] },
  A1: { margin: 21, frame: [1, weight.c, 3] },
  A0: { margin: 30, frame: [1.4, weight.d, 4.2] },
} as const satisfies Record<string, Pick<ChartPaper, 'margin' | 'frame'>>

const composed: Readonly<Record<PaperFamily, readonly [Composed, ...Composed[]]>> = {
  A4: [
    { name: 'A3', width: 297, height: 420, ...lines.A3 },
    { name: 'A2', width: 420, height: 594, ...lines.A2 },
    { name: 'A1', width: 594, height: 841, ...lines.A1 },
    { name: 'A0', width: 841, height: 1189, ...lines.A0 },
  ],
  Letter: [
    { name: 'Tabloid', width: 279.4, height: 431.8, ...lines.A3 },
    { name: 'ANSI C', width: 431.8, height: 558.8, ...lines.A2 },
    { name: 'ANSI D', width: 558.8, height: 863.6, ...lines.A1 },
    { name: 'ANSI E', width: 863.6, height: 1117.6, ...lines.A0 },
  ],
}

/** A sheet of the last paper's width, cut from the roll at the height the lists need. */
export const fromRoll = (paper: ChartPaper, height: number): ChartPaper => ({
  ...paper,
  name: `a roll ${Math.round(paper.width * paper.enlarged)} mm wide`,
  height: Math.ceil(Math.max(paper.height, height)),
})
