import type { Rig } from '../rig/index.ts'
import type { Evolutions } from './evolutions.ts'

/** Where a caution bites: the headings under which the handbook gathers them. */
export type CautionGroup =
  | 'On every line'
  | 'Halyards and yards'
  | 'Sheets, booms, the lee rail'
  | 'Aloft and furling'

/** One of the fourteen cautions, under the number it keeps in every paper. */
export interface Caution {
  readonly number: number
  readonly group: CautionGroup
  /** One or two sentences, for the page of cautions. */
  readonly full: string
  /** At most 42 characters, for the box in a phase. */
  readonly short: string
  /** At most 20, for a page that is full: the number leads to the full wording. */
  readonly brief: string
  /** What it speaks of, where that is not aboard every vessel: one of these she must have. */
  readonly of?: readonly CautionedThing[]
}

type CautionedThing = 'yard' | 'slung yard' | 'gaff' | 'boom' | 'buntline'

/** The headings of the cautions, in the order of the handbook's page. */
export const cautionGroups: readonly CautionGroup[] = [
  'On every line',
  'Halyards and yards',
  'Sheets, booms, the lee rail',
  'Aloft and furling',
]

/** Whence the fourteen cautions come. */
export const cautionBasis = 'common practice, no source'

/** What governs above every paper this program writes. */
export const governingNote =
  'Hands, loads and times in this book are planning figures. The vessel’s own documents, the law where she ' +
  'sails and the judgement of her licensed officers govern.'

/** The fourteen cautions in order of their numbers: common practice, no source. */
export const cautions: readonly Caution[] = [
  {
    number: 1,
    group: 'On every line',
    full: 'Stand clear of every bight, and outside the angle of a lead block.',
    short: 'Clear of bights and lead blocks.',
    brief: 'Clear of bights.',
  },
  {
    number: 2,
    group: 'Halyards and yards',
    full: 'Pass a halyard’s weight in three steps: hold, turn or stopper, belay. Hands come off only on the word.',
    short: 'Hold, turn, belay. Hands off on the word.',
    brief: 'Hold, turn, belay.',
  },
  {
    number: 3,
    group: 'On every line',
    full: 'Never take the last turn off a loaded pin. Surge round it.',
    short: 'Keep the last turn: surge.',
    brief: 'Keep the turn.',
  },
  {
    number: 4,
    group: 'Sheets, booms, the lee rail',
    full: 'Keep outside the sweep of slatting clews, sheets and blocks.',
    short: 'Clear of slatting clews and blocks.',
    brief: 'Clear of the clews.',
  },
  {
    number: 5,
    group: 'Halyards and yards',
    of: ['yard', 'slung yard'],
    full: 'Hands off the yard, or warned, before it is sheeted, hoisted or braced.',
    short: 'Hands off the yard.',
    brief: 'Hands off the yard.',
  },
  {
    number: 6,
    group: 'Aloft and furling',
    of: ['yard'],
    full: 'Brace the yard steady and haul its gear taut before anyone lays out to furl.',
    short: 'Yard steady first.',
    brief: 'Yard steady first.',
  },
  {
    number: 7,
    group: 'Aloft and furling',
    full: 'Aloft by the weather side, one on a ratline, one hand for the ship, harness on.',
    short: 'Harness on, weather side.',
    brief: 'Harness on.',
  },
  {
    number: 8,
    group: 'Halyards and yards',
    of: ['yard', 'slung yard', 'gaff'],
    full: 'Nobody under a yard or a gaff that is moving.',
    short: 'Nobody under yard or gaff.',
    brief: 'Nobody under it.',
  },
  {
    number: 9,
    group: 'On every line',
    full: 'See every coil turned over and clear to run before you let go.',
    short: 'Coils turned over, clear to run.',
    brief: 'Clear to run.',
  },
  {
    number: 10,
    group: 'On every line',
    full: 'Weather and lee are called by name and said back. One voice for each line.',
    short: 'Weather or lee said back. One voice.',
    brief: 'Say it back.',
  },
  {
    number: 11,
    group: 'Sheets, booms, the lee rail',
    full: 'Lifelines before the lee rail in a seaway.',
    short: 'Lifelines before the lee rail.',
    brief: 'Lifelines first.',
  },
  {
    number: 12,
    group: 'Sheets, booms, the lee rail',
    of: ['boom'],
    full: 'Nobody in the arc of a boom. Preventer first.',
    short: 'Nobody in the arc of the boom.',
    brief: 'Clear of the boom.',
  },
  {
    number: 13,
    group: 'Aloft and furling',
    of: ['yard'],
    full: 'Count hands down off the yard before the next order.',
    short: 'Count hands off the yard.',
    brief: 'Count hands off.',
  },
  {
    number: 14,
    group: 'Sheets, booms, the lee rail',
    of: ['buntline'],
    full: 'Overhaul and stop the buntlines once the sail is set.',
    short: 'Overhaul and stop the buntlines.',
    brief: 'Stop the buntlines.',
  },
]

/** The caution of a number, or undefined: there are fourteen. */
export const cautionAt = (number: number): Caution | undefined => cautions[number - 1]

/** The cautions that bite aboard her: those of what she has, and whatever her orders name. */
export function cautionsAboard(rig: Rig, { sails }: Evolutions): readonly Caution[] {
  const has = (thing: CautionedThing) =>
    thing === 'buntline'
      ? rig.lines.some(({ words }) => words.includes(thing))
      : rig.spars.some(({ kind }) => kind === thing)
  const named = new Set(
    sails.flatMap(({ set, douse }) =>
      [set, douse].flatMap(order => order?.phases.flatMap(phase => phase.cautions) ?? []),
    ),
  )
  return cautions.filter(({ number, of }) => of === undefined || of.some(has) || named.has(number))
}
