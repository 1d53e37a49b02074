import type { Line, Rig } from '../../rig/index.ts'
import { addressesOf, addressInFull, addressWords } from '../book/address.ts'
import { inPairs } from '../book/station-lines.ts'
import { deedWords } from '../deed-words.ts'

/** Where lines are made fast: 'fore rail, port and starboard, pin 14 (FR-P and FR-S 14)'. */
export const placesWords = (lines: readonly Line[], rig: Rig): readonly string[] =>
  addressesOf(lines, rig).map(address => `${addressInFull(address)} (${addressWords(address)})`)

/** What is to be eased when these are hauled, the two of a pair together. */
export function easedWith(lines: readonly Line[], rig: Rig): readonly (readonly Line[])[] {
  const addresses = new Set(lines.flatMap(({ counterparts }) => counterparts))
  return inPairs([...addresses].flatMap(address => rig.lineAt.get(address) ?? []))
}

/** What a haul does, told of both where two are told together. */
export const haulWords = (lines: readonly Line[]): string => [...new Set(lines.map(deedWords))].join('; ')
