import { enlargedName, type PaperFamily } from '../imprint.ts'

/** A standing sheet for a deck chart, in millimetres: its frame, and the inner line a little within. */
export interface ChartPaper {
  /** As it is printed. */
  readonly name: string
  /** So many times is it printed as long and broad as it is composed. */
  readonly enlarged: number
  readonly width: number
  readonly height: number
  readonly margin: number
}

/** The papers of a family, the smallest first: the first that holds the lists at 8 pt is taken. */
export function chartPapers(family: PaperFamily, enlarged = 1): readonly [ChartPaper, ...ChartPaper[]] {
  const [least, ...larger] = composed[family]
  const printed = (paper: Composed) => ({ ...paper, enlarged, name: enlargedName(paper.name, enlarged) })
  return [printed(least), ...larger.map(printed)]
}

type Composed = Omit<ChartPaper, 'enlarged'>

const composed: Readonly<Record<PaperFamily, readonly [Composed, ...Composed[]]>> = {
  A4: [
    { name: 'A3', width: 297, height: 420, margin: 9 },
    { name: 'A2', width: 420, height: 594, margin: 15 },
    { name: 'A1', width: 594, height: 841, margin: 21 },
    { name: 'A0', width: 841, height: 1189, margin: 30 },
  ],
  Letter: [
    { name: 'Tabloid', width: 279.4, height: 431.8, margin: 9 },
    { name: 'ANSI C', width: 431.8, height: 558.8, margin: 15 },
    { name: 'ANSI D', width: 558.8, height: 863.6, margin: 21 },
    { name: 'ANSI E', width: 863.6, height: 1117.6, margin: 30 },
  ],
}

/** A sheet of the last paper's width, cut from the roll at the height the lists need. */
export const fromRoll = (paper: ChartPaper, height: number): ChartPaper => ({
  ...paper,
  name: `a roll ${Math.round(paper.width * paper.enlarged)} mm wide`,
  height: Math.ceil(Math.max(paper.height, height)),
})
