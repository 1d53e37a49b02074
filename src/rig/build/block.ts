import { type Clause, nameKey, type Statement } from '../../syntax/index.ts'
import type { Block } from '../block.ts'
import type { Hanging, Hung } from './hung.ts'
import type { Kit } from './kit.ts'

/** The blocks of which the text keeps a number or a day of inspection, in the order of the text. */
export function buildBlocks(hangings: readonly Hanging[], hung: readonly Hung[]): readonly Block[] {
  const loose = new Map(hung.flatMap(one => (one.hanging ? [] : [[one.pairKey, one] as const])))
  return [
    ...hangings.flatMap(({ host, kit }) => kept(host.name, kit.blocks)),
    ...[...loose.values()].flatMap(({ words, line }) => kept(words, line.blocks)),
  ]
}

const kept = (host: string, blocks: Kit['blocks']): readonly Block[] =>
  [...blocks.values()].flatMap(({ name, number, inspected, span }) =>
    number === undefined && inspected === undefined
      ? []
      : [{ name: `${host} ${nameKey(name.words)}`, number, inspected, span }],
  )

/** What a statement says of a block beside its place. */
export function marksOf({ clauses }: Statement): Pick<Block, 'number' | 'inspected'> {
  const number = clauses.findLast(
    (one): one is Extract<Clause, { kind: 'numbered' }> => one.kind === 'numbered',
  )
  const seen = clauses.findLast(
    (one): one is Extract<Clause, { kind: 'inspected' | 'due' }> => one.kind === 'inspected',
  )
  return {
    number: number?.label.text,
    inspected: seen && { year: seen.year, month: seen.month, day: seen.day },
  }
}
