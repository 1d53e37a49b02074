import { linesMeant, type OrderRow } from '../../evolve/index.ts'
import type { Act, Line, Side } from '../../rig/index.ts'
import { addressesOf, addressOf, type PinAddress } from './address.ts'
import type { Book } from './book.ts'
import { briefStation, callPhrase, lineInOrder } from './order-names.ts'
import type { SideMark } from './side-mark.ts'

/** One line of a list in a working order: where, what, how many hands. */
export interface Entry {
  readonly act: Act
  /** Undefined for a line that is made fast nowhere. */
  readonly address: PinAddress | undefined
  readonly name: string
  /** 'main', after the name of a line that another station works. */
  readonly station: string | undefined
  /** Undefined where the text gives none, or where hands are not told. */
  readonly hands: number | undefined
}

/** Entries of a list, each row by itself but for those that the second breath takes together: 'then these'. */
export function entriesOf(rows: readonly OrderRow[], sail: string, book: Book): readonly Entry[] {
  const entries: Entry[] = []
  for (let at = 0; at < rows.length; ) {
    const these = thenThese(rows, at, book)
    const row = rows[at]
    if (these) entries.push(these.entry)
    else if (row) entries.push(...entriesOfRow(row, sail, book))
    at += these?.rows ?? 1
  }
  return entries
}

/** The same with like lines of one rail in one entry: 'FR 11·12 buntlines'. It saves rows on a page that is full. */
export function entriesJoined(rows: readonly OrderRow[], sail: string, book: Book): readonly Entry[] {
  const groups: OrderRow[][] = []
  for (const row of rows) {
    const last = groups.at(-1)
    if (last?.[0] && joins(last[0], row, book)) last.push(row)
    else groups.push([row])
  }
  return groups.flatMap(group => {
    const [first] = group
    if (!first || group.length === 1) return entriesOf(group, sail, book)
    const address = joinedAddress(group, book)
    if (!address) return entriesOf(group, sail, book)
    const before = rows.slice(0, rows.indexOf(first))
    const isSecondBreath = first.after && group.every(row => opposed(before, row))
    const name = isSecondBreath
      ? 'then these'
      : callPhrase({ ...first, name: kindOf(first, book), several: !isForeign(first, book) })
    return [{ act: first.act, address, name, station: stationOf(first, book), hands: handsOf(group) }]
  })
}

function entriesOfRow(row: OrderRow, sail: string, book: Book): readonly Entry[] {
  const lines = book.rig.pairAt.get(row.pairKey) ?? []
  const [line] = lines
  if (!line) return []
  const name = lineInOrder(line, sail, book)
  const oneAddress = pairAddress(row, book)
  const common = { act: row.act, station: stationOf(row, book) }
  if (oneAddress || lines.length === 1 || row.reach === 'named' || row.reach === 'other') {
    const address = oneAddress ?? eitherAddress(lines, book)
    const phrase = callPhrase({ ...row, name, several: row.count > 1 && !line.foreign })
    return [{ ...common, address, name: phrase, hands: handsOf([row]) }]
  }
  return row.reach === 'all' ? eachLine(row, lines, name, book) : eachWind(row, name, book)
}

// Two pins that don't mirror are two entries: each line by its own side,
function eachLine(row: OrderRow, lines: readonly Line[], name: string, book: Book): readonly Entry[] {
  return lines.map(line => {
    const address = addressOf(line, book.rig)
    const sideTold = address !== undefined && address.sides.length > 0
    const phrase = callPhrase({
      ...row,
      name: sideTold ? name : `${line.side ?? ''} ${name}`.trim(),
      several: false,
    })
    return { act: row.act, address, name: phrase, station: stationOfLine(line, book), hands: line.hands }
  })
}

// and, where the order calls it weather or lee, by the wind that makes it so.
function eachWind(row: OrderRow, name: string, book: Book): readonly Entry[] {
  const winds: readonly Side[] = ['starboard', 'port']
  return winds.flatMap(wind =>
    linesMeant(book.rig, row, wind).map(line => ({
      act: row.act,
      address: addressOf(line, book.rig),
      name: `${callPhrase({ ...row, name, several: false })}, wind from ${wind}`,
      station: stationOfLine(line, book),
      hands: line.hands,
    })),
  )
}

/** The one address a row has where its lines mirror, or where it is a single line. */
function pairAddress(row: OrderRow, book: Book): PinAddress | undefined {
  const addresses = addressesOf(book.rig.pairAt.get(row.pairKey) ?? [], book.rig)
  const [address] = addresses
  if (!address || addresses.length !== 1) return undefined
  return address.sides.length === 2 ? { ...address, sides: sidesOf(row) } : address
}

function sidesOf({ reach }: OrderRow): readonly SideMark[] {
  switch (reach) {
    case 'weather':
      return ['W']
    case 'lee':
      return ['L']
    case 'all':
      return ['P', 'S']
    case 'named':
    case 'other':
      return []
  }
}

// A named line may be either of its pair: the rail and pin of both where they differ, as 'MF 2, MF 3'.
function eitherAddress(lines: readonly Line[], book: Book): PinAddress | undefined {
  const addresses = lines.flatMap(line => addressOf(line, book.rig) ?? [])
  const [first] = addresses
  if (!first) return undefined
  const pins = [...new Set(addresses.flatMap(({ pins }) => pins ?? []))]
  const oneRail = addresses.every(({ rail }) => rail === first.rail)
  return oneRail ? { ...first, sides: [], pins: pins.length > 0 ? pins.join('·') : undefined } : first
}

interface Joined {
  readonly entry: Entry
  readonly rows: number
}

/** The weather lines after the lee ones, where they are the same lines of one rail: one entry for all. */
function thenThese(rows: readonly OrderRow[], at: number, book: Book): Joined | undefined {
  const before = rows.slice(0, at)
  const [first, ...rest] = rows.slice(at)
  if (!first?.after || !opposed(before, first)) return undefined
  const group = [first]
  for (const row of rest) {
    if (!row.after || row.reach !== first.reach || row.act !== first.act || !opposed(before, row)) break
    group.push(row)
  }
  const address = joinedAddress(group, book)
  if (!address) return undefined
  const entry = {
    act: first.act,
    address,
    name: group.length > 1 ? 'then these' : 'then this',
    station: stationOf(first, book),
    hands: handsOf(group),
  }
  return { entry, rows: group.length }
}

function opposed(before: readonly OrderRow[], row: OrderRow): boolean {
  const other = row.reach === 'weather' ? 'lee' : row.reach === 'lee' ? 'weather' : undefined
  return before.some(one => one.pairKey === row.pairKey && one.reach === other && one.act === row.act)
}

function joins(first: OrderRow, row: OrderRow, book: Book): boolean {
  const manner = ({ act, reach, after, when, count }: OrderRow) =>
    `${act} ${reach} ${after} ${when ?? ''} ${count}`
  return (
    manner(first) === manner(row) &&
    kindOf(first, book) === kindOf(row, book) &&
    hostOf(first, book) === hostOf(row, book) &&
    first.stations.join() === row.stations.join() &&
    joinedAddress([first, row], book) !== undefined
  )
}

/** One address for lines that stand on one rail and the same sides of it. */
function joinedAddress(rows: readonly OrderRow[], book: Book): PinAddress | undefined {
  const addresses = rows.map(row => pairAddress(row, book))
  const [first] = addresses
  const alike = addresses.every(
    one => one?.pins !== undefined && one.rail === first?.rail && one.sides.join() === first.sides.join(),
  )
  if (!first || !alike) return undefined
  return { ...first, pins: addresses.map(one => one?.pins).join('·') }
}

function handsOf(rows: readonly OrderRow[]): number | undefined {
  return rows.reduce<number | undefined>(
    (total, { hands }) => (total === undefined || !hands.known ? undefined : total + hands.value),
    0,
  )
}

const kindOf = (row: OrderRow, book: Book): string => book.rig.pairAt.get(row.pairKey)?.[0]?.kind ?? ''
const isForeign = (row: OrderRow, book: Book): boolean =>
  book.rig.pairAt.get(row.pairKey)?.[0]?.foreign === true
const hostOf = (row: OrderRow, book: Book): string | undefined =>
  book.rig.pairAt.get(row.pairKey)?.[0]?.host?.name

function stationOf(row: OrderRow, book: Book): string | undefined {
  if (row.stations.length === 0 || row.stations.includes(book.station.name)) return undefined
  return row.stations.map(name => briefStation(book.rig.stationAt.get(name)?.label ?? name)).join(', ')
}

function stationOfLine(line: Line, book: Book): string | undefined {
  if (line.station === undefined || line.station === book.station.name) return undefined
  return briefStation(book.rig.stationAt.get(line.station)?.label ?? line.station)
}
