import type { Line, LineFunction, Rig, Sail } from '../../rig/index.ts'
import { functionAnswer } from '../function-mark.ts'
import { linesOf } from './register-rows.ts'
import { inPairs } from './station-lines.ts'

/** A line, or both of a pair, as one box of the page of counterparts. */
export interface AnswerNode {
  readonly pairKey: string
  readonly lines: readonly Line[]
  readonly deed: LineFunction | undefined
  /** The two of the pair answer each other. */
  readonly answersItself: boolean
}

/** Two boxes that pull against each other, by their keys. */
export type Join = readonly [string, string]

/** Who answers whom in one sail: two columns of lines, and what is joined across and within them. */
export interface AnswerGraph {
  readonly sail: Sail
  /** Lines that set the sail, in the order of their places. */
  readonly setting: readonly AnswerNode[]
  /** Lines that take it in, and those that steady it. */
  readonly taking: readonly AnswerNode[]
  readonly across: readonly Join[]
  readonly withinSetting: readonly Join[]
  readonly withinTaking: readonly Join[]
}

/**
 * The counterparts of a sail's lines as a graph. A join stands for either direction: one of the two must be
 * eased when the other is hauled. Braces and vangs, which only answer each other, are left to a sentence.
 */
export function answerGraph(sail: Sail, rig: Rig): AnswerGraph {
  const nodes = inPairs(alongRails(linesOf(sail, rig), rig))
    .flatMap(answerNode)
    .filter(({ deed }) => deed !== 'turns')
  const setting = nodes.filter(setsSail)
  const taking = nodes.filter(node => !setsSail(node))
  const joined = (some: readonly AnswerNode[], others: readonly AnswerNode[]): readonly Join[] =>
    some.flatMap(a => others.filter(b => answers(a, b)).map((b): Join => [a.pairKey, b.pairKey]))
  const within = (some: readonly AnswerNode[]): readonly Join[] =>
    some.flatMap((a, index) => joined([a], some.slice(index + 1)))
  return {
    sail,
    setting,
    taking,
    across: joined(setting, taking),
    withinSetting: within(setting),
    withinTaking: within(taking),
  }
}

/** Lines in the order of their places: rail by rail as the text has them, and along each. */
function alongRails(lines: readonly Line[], rig: Rig): readonly Line[] {
  const rail = ({ belay }: Line) =>
    belay ? rig.rails.findIndex(({ code }) => code === belay.rail) : rig.rails.length
  return lines.toSorted((a, b) => rail(a) - rail(b) || (a.belay?.number ?? 0) - (b.belay?.number ?? 0))
}

/** A box of lines that are written as one. */
export function answerNode(lines: readonly Line[]): readonly AnswerNode[] {
  const [line] = lines
  if (!line) return []
  const own = lines.map(({ address }) => address)
  const answersItself = lines.some(({ counterparts }) => counterparts.some(address => own.includes(address)))
  return [{ pairKey: line.pairKey, lines, deed: line.function, answersItself }]
}

const setsSail = ({ deed }: AnswerNode): boolean => deed !== undefined && functionAnswer[deed] === 'more'

function answers(a: AnswerNode, b: AnswerNode): boolean {
  return a.pairKey !== b.pairKey && (names(a, b) || names(b, a))
}

function names(a: AnswerNode, b: AnswerNode): boolean {
  const others = b.lines.map(({ address }) => address)
  return a.lines.some(({ counterparts }) => counterparts.some(address => others.includes(address)))
}
