import type { Line, Rig, Sail } from '../../rig/index.ts'
import { deedWords } from '../deed-words.ts'
import { easeWords } from '../ease-words.ts'
import { areaFigure, speaksFeet } from '../measure-words.ts'
import { conjectureWords, surveyWords } from '../survey-words.ts'
import { addressesOf, addressOf, type PinAddress } from './address.ts'
import type { Book } from './book.ts'
import { curled } from './order-names.ts'
import { inPairs, nameInBook } from './station-lines.ts'

/** One row of the register: a single line, or both of a pair whose pins mirror. */
export interface RegisterRow {
  readonly pairKey: string
  readonly address: PinAddress | undefined
  /** With the station, where another one works it: 'Brace, mainmast'. */
  readonly name: string
  /** The same by its short form, for a word that the column can't hold; undefined where it has none. */
  readonly inShort: string | undefined
  readonly isOthers: boolean
  readonly deed: Line['function']
  readonly hauling: string
  readonly ease: string
  /** Hands on one line. */
  readonly hands: string
  /** Thickness of the rope. */
  readonly rope: string
  /** How the rope is known, what the last survey found, what she is called aboard; empty where nothing is said. */
  readonly remark: string
}

/** Rows under one heading: a sail's lines, or those that belong to none of the station's sails. */
export interface RegisterSection {
  readonly heading: string
  readonly note: string
  readonly rows: readonly RegisterRow[]
}

/**
 * All that a station has to do with: its sails from low to high with every line of each, then the other lines it
 * works, then those of others on its rails.
 */
export function registerSections(book: Book): readonly RegisterSection[] {
  const { rig, lines } = book
  const sails = lines.sails.map(sail => ({
    heading: sail.label,
    note: sailNote(sail, book),
    rows: rowsOf(linesOf(sail, rig), book, line => line.labelOnSail),
  }))
  const told = new Set(lines.sails.flatMap(sail => linesOf(sail, rig)))
  const untold = lines.own.filter(line => !told.has(line))
  const inFull = (line: Line) => nameInBook(line, book)
  return [
    ...sails,
    {
      heading: 'Other lines you work',
      note: 'for others’ sails and spars',
      rows: rowsOf(untold, book, inFull),
    },
    {
      heading: 'Others’ lines on your rails',
      note: 'keep clear; know them',
      rows: rowsOf(
        lines.othersHere.filter(line => !told.has(line)),
        book,
        inFull,
      ),
    },
  ].filter(({ rows }) => rows.length > 0)
}

/** What the register's last column counts in: 'mm', or 'in' for a vessel whose papers speak feet. */
export const ropeUnit = ({ rig }: Book): string => (speaksFeet(rig.vessel) ? 'in' : 'mm')

/** Lines hung on a sail, or on the spars that are only its own. */
export function linesOf(sail: Sail, rig: Rig): readonly Line[] {
  const spars = sail.kind === 'square' ? [sail.yard] : sail.on
  return rig.lines.filter(
    ({ host }) => host?.name === sail.name || (host?.kind === 'spar' && spars.includes(host.name)),
  )
}

// Own lines first, as they stand along the station's rails, then others', as those stand along the ship.
function rowsOf(lines: readonly Line[], book: Book, nameOf: (line: Line) => string): readonly RegisterRow[] {
  const { rig, station } = book
  const rails = [...station.rails, ...rig.rails.map(({ code }) => code)]
  const place = ([line]: readonly Line[]): number => {
    const rail = line?.belay ? rails.indexOf(line.belay.rail) : rails.length
    return (line?.station === station.name ? 0 : 1e6) + rail * 1000 + (line?.belay?.number ?? 0)
  }
  return inPairs(lines)
    .toSorted((a, b) => place(a) - place(b))
    .flatMap(pair => rowsOfPair(pair, book, nameOf))
}

function rowsOfPair(
  pair: readonly Line[],
  book: Book,
  nameOf: (line: Line) => string,
): readonly RegisterRow[] {
  const addresses = addressesOf(pair, book.rig)
  const [line] = pair
  if (!line) return []
  if (addresses.length < 2) return [rowOf(line, addresses[0], nameOf(line), book)]
  return pair.map(one => {
    const address = addressOf(one, book.rig)
    const sideTold = address === undefined || address.sides.length > 0
    return rowOf(one, address, sideTold ? nameOf(one) : `${nameOf(one)} ${one.side ?? ''}`.trim(), book)
  })
}

function rowOf(line: Line, address: PinAddress | undefined, name: string, book: Book): RegisterRow {
  const isOthers = line.station !== book.station.name
  const station = book.rig.stationAt.get(line.station ?? '')?.label.toLowerCase()
  const withStation = (words: string) => (isOthers && station !== undefined ? `${words}, ${station}` : words)
  return {
    pairKey: line.pairKey,
    address,
    name: withStation(name),
    inShort: line.short === undefined ? undefined : withStation(line.short),
    isOthers,
    deed: line.function,
    hauling: sideless(deedWords(line), address),
    ease: easeCell(line, book.rig),
    hands: line.hands === undefined ? '' : String(line.hands),
    rope: ropeCell(line, book),
    remark: remarkOf(line),
  }
}

// A row of both sides says of each what it says of one.
const sideless = (deed: string, address: PinAddress | undefined): string =>
  address?.sides.length === 2 ? deed.replace(/ to (port|starboard)$/, ' to its side') : deed

const remarkOf = (line: Line): string =>
  [
    line.aside && line.nicknames.map(name => `“${name}”`).join(', '),
    line.coloured && `${line.coloured} rope`,
    line.whipped && `whipped ${line.whipped}`,
    surveyWords(line),
    line.lifted && `lifted: ${curled(line.lifted)}`,
    conjectureWords(line),
  ]
    .filter(Boolean)
    .join(' · ')

// Kinds only, the own side understood; a single line eases both sides of a pair, and says so.
function easeCell(line: Line, rig: Rig): string {
  const words = easeWords(line, rig)
  if (words.length === 0) return curled(line.answeredBy ?? 'nothing')
  const eased = line.counterparts.flatMap(address => rig.lineAt.get(address) ?? [])
  const both = line.side === undefined && eased.some(({ side }) => side !== undefined)
  const alreadyTold = /^(both|every|all) /.test(words[0] ?? '')
  return `${both && !alreadyTold ? 'all ' : ''}${words.join(', ')}`
}

function ropeCell({ rope }: Line, { rig }: Book): string {
  if (!rope) return ''
  if (!speaksFeet(rig.vessel)) return String(Math.round(rope.diameter * 1000))
  return eighths(rope.diameter / 0.0254)
}

/** Inches to the nearest sixteenth, as a rigger reads them: '7/8', '1 1/4'. */
function eighths(inches: number): string {
  const sixteenths = Math.round(inches * 16)
  const whole = Math.floor(sixteenths / 16)
  let part = sixteenths - whole * 16
  let of = 16
  while (part > 0 && part % 2 === 0) {
    part /= 2
    of /= 2
  }
  const fraction = part === 0 ? '' : `${part}/${of}`
  return [whole > 0 ? String(whole) : '', fraction].filter(text => text !== '').join(' ') || '0'
}

function sailNote(sail: Sail, { rig, figures }: Book): string {
  const area = figures.sails.get(sail.name)?.area
  return [area?.known ? areaFigure(area, rig.vessel) : undefined, hungOn(sail, rig)]
    .filter(text => text !== undefined)
    .join(' · ')
}

function hungOn(sail: Sail, rig: Rig): string | undefined {
  if (sail.kind === 'square') {
    const yard = rig.sparAt.get(sail.yard)
    return yard?.kind === 'yard' ? `yard ${yard.hoists ? 'hoists' : 'fixed'}` : undefined
  }
  const spars = sail.on.flatMap(name => rig.sparAt.get(name) ?? [])
  const gaff = spars.find(spar => spar.kind === 'gaff')
  if (gaff?.kind === 'gaff' && sail.class === 'gaff sail') return gaff.hoists ? 'gaff hoists' : 'gaff stands'
  const slung = spars.find(spar => spar.kind === 'slung yard')
  if (slung?.kind === 'slung yard') return `yard ${slung.hoists ? 'hoists' : 'fixed'}`
  return sail.on[0] === undefined || sail.class === 'gaff sail' ? undefined : `on the ${sail.on[0]}`
}
