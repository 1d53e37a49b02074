import { deckPage } from './draft-deck.ts'
import { sailPage } from './draft-sails.ts'
import { sparPages } from './draft-spars.ts'
import { pagesOfRails } from './rails.ts'
import type { Rope } from './ropes.ts'
import { aft, isPlain, metres, spoken, up } from './spoken.ts'
import type { TableSail, Tables } from './tables.ts'

/** What is said under the gear of a sail or a spar. */
export interface Gearing {
  readonly gear: string
  readonly said: readonly GearLine[]
}

/** A line under a gear: what is said of a line or a block by its name; or, without one, the words as they are. */
export interface GearLine {
  readonly name: string
  readonly said: string
}

/** What is to be said of her gear: under each sail and spar, on pages of its own, and of the lines that hang on neither. */
export interface GearSaid {
  readonly gearings: ReadonlyMap<string, Gearing>
  /** By the sail's name. */
  readonly own: ReadonlyMap<string, readonly string[]>
  readonly loose: readonly string[]
}

/** The name of a gear that one sail has for herself. */
export const gearOfOwn = (sail: string) => `${sail} gear`

/** The text of a rig, from her tables and what is to be said of her gear, in the order of a bosun's notebook. */
export function draft(tables: Tables, ropes: readonly Rope[], { gearings, own, loose }: GearSaid): string {
  const pages = [
    opening(tables, ropes),
    vessel(tables),
    ...sparPages(tables, gearings),
    ...[...own].map(([sail, lines]) => page(`gear ${spoken(gearOfOwn(sail))}`, lines)),
    sailPage(tables, ropes, gearings),
    order(tables.sails),
    page('lines', loose),
    ...pagesOfRails(tables.rails, ropes),
    deckPage(tables.deck),
  ]
  return `${pages.filter(text => text !== '').join('\n\n')}\n`
}

const page = (head: string, lines: readonly string[]) =>
  lines.length === 0 ? '' : [head, ...lines.map(line => `  ${line}`)].join('\n')

function opening({ hull }: Tables, ropes: readonly Rope[]): string {
  const unfast = ropes.filter(({ lines }) => lines.some(({ pin }) => pin === undefined))
  return [
    `# ${hull.words.get('name') || 'A vessel'}, from her tables.`,
    '# Aft is counted from the forward perpendicular, up from the waterline.',
    '# "Out" is out from the centreline, on the side a thing or its line belongs to.',
    '# To be given, since no table has it: the shape of her hull, tops and crosstrees, shrouds and backstays, reefs of her',
    '# fore-and-aft sails, stations, and what is allowed.',
    ...unfast.map(({ words }) => `# To be given: where the ${words} is made fast.`),
    '',
    'edition 1',
    'bring in standard gear',
  ].join('\n')
}

function vessel({ hull: { words, numbers } }: Tables): string {
  const told = (key: string, tell: (value: number) => string) => {
    const value = numbers.get(key)
    return value === undefined ? [] : [tell(value)]
  }
  const [x, z] = [numbers.get('clr_x'), numbers.get('clr_z')]
  const rig = words.get('rig')
  const facts = [
    rig && isPlain(rig) ? [rig] : [],
    [
      ...told('lwl', value => `waterline ${metres(value)}`),
      ...told('lbp', value => `between perpendiculars ${metres(value)}`),
      ...told('length_sparred', value => `over spars ${metres(value)}`),
    ],
    [
      ...told('beam', value => `beam ${metres(value)}`),
      ...told('draught', value => `draught ${metres(value)}`),
      ...told('displacement', value => `displaces ${Number(value.toFixed(3))} t`),
    ],
    x === undefined || z === undefined ? [] : [`lateral centre ${aft(x)} ${up(z)}`],
    told('gm', value => `metacentric height ${metres(value)}`),
    [
      ...told('main_deck_z', value => `main deck ${up(value)}`),
      ...told('forecastle_deck_z', value => `forecastle deck ${up(value)}`),
    ],
    [
      ...told('hands_all', value => `hands ${value} in all`),
      ...told('hands_watch', value =>
        numbers.has('hands_all') ? `${value} in a watch` : `hands ${value} in a watch`,
      ),
    ],
    ['measure in m and mm'],
  ]
  return [
    `vessel ${spoken(words.get('name') || 'Unnamed')}`,
    ...facts.filter(said => said.length > 0).map(said => `  ${said.join(', ')}`),
  ].join('\n')
}

/** Sails a line of the order may name. */
const abreast = 5

function order(sails: readonly TableSail[]): string {
  const set = sails.filter(sail => Number.isFinite(sail.order)).sort((a, b) => a.order - b.order)
  const names = set.map(({ name }) => spoken(name))
  const lines = Array.from({ length: Math.ceil(names.length / abreast) }, (_, i) =>
    names.slice(i * abreast, (i + 1) * abreast).join(' then '),
  )
  return set.length < 2 ? '' : `set ${lines.join('\n  then ')}`
}
