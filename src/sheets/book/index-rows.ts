import type { Line, Place } from '../../rig/index.ts'
import { addressesOf, type PinAddress, placeAddress } from './address.ts'
import type { Book } from './book.ts'
import { lowered } from './order-names.ts'
import { lineKey, orderKey } from './page-key.ts'
import { inPairs, nameInBook } from './station-lines.ts'

/** A row of the index by name. */
export interface NameRow {
  readonly name: string
  readonly isOthers: boolean
  readonly addresses: readonly PinAddress[]
  readonly page: number | undefined
  /** The name's first letter: a wider gap stands between two groups. */
  readonly group: string
}

/** A row of the index by pin. */
export interface PinRow {
  readonly address: PinAddress
  readonly names: readonly { readonly name: string; readonly isOthers: boolean }[]
  /** Numbers of the free pins that follow, told in the same row. */
  readonly alsoFree: readonly number[]
  readonly group: string
}

/** Every line a station has to do with, by name and by what it is called aboard: its own, others' on its rails, others' of its sails. */
export function nameRows(book: Book): readonly NameRow[] {
  const { own, othersHere, lent } = book.lines
  const lines = [...new Set([...own, ...othersHere, ...lent])]
  const rows = inPairs(lines).flatMap((pair): readonly NameRow[] => {
    const [line] = pair
    if (!line) return []
    const name = nameInBook(line, book)
    const called = line.nicknames.map(nickname => `${withoutArticle(nickname)}, see ${lowered(name, line)}`)
    return [name, ...called].map(name => ({
      name,
      isOthers: line.station !== book.station.name,
      addresses: addressesOf(pair, book.rig),
      page: pageOfLine(line, book),
      group: name.slice(0, 1).toLowerCase(),
    }))
  })
  return rows.toSorted(byName)
}

/** Every place of a station's rails, from forward; mirrored places that carry the same share a row. */
export function pinRows(book: Book): readonly PinRow[] {
  const { rig, station } = book
  const done = new Set<string>()
  return station.rails.flatMap(code => {
    const rail = rig.railAt.get(code)
    if (!rail || done.has(code)) return []
    const mirror = rail.mirrored
      ? station.rails
          .flatMap(other => rig.railAt.get(other) ?? [])
          .find(other => other.mark === rail.mark && other.code !== code)
      : undefined
    done.add(code)
    if (mirror) done.add(mirror.code)
    return gathered(railRows(rail.places, mirror?.places ?? [], rail.mark, book))
  })
}

/** 'the Monkey' is looked for under M. */
const withoutArticle = (nickname: string): string => {
  const bare = nickname.replace(/^(?:the|a|an) /i, '')
  return bare.charAt(0).toUpperCase() + bare.slice(1)
}

// The page that tells most of a line: its sail's to set, else its row in the register, else its chart.
function pageOfLine(line: Line, book: Book): number | undefined {
  const sail = line.host?.kind === 'sail' ? line.host.name : undefined
  const toSet = sail === undefined ? undefined : book.pageOf(orderKey(sail, 'set'))
  return toSet ?? book.pageOf(lineKey(line.pairKey))
}

// By the letters as written, small and capital alike: an order that needs no locale.
function byName(a: NameRow, b: NameRow): number {
  const [left, right] = [a.name.toLowerCase(), b.name.toLowerCase()]
  return left < right ? -1 : left > right ? 1 : 0
}

function railRows(
  places: readonly Place[],
  across: readonly Place[],
  group: string,
  book: Book,
): readonly PinRow[] {
  const numbers = [...new Set([...places, ...across].map(place => place.number))].toSorted((a, b) => a - b)
  return numbers.flatMap(number => {
    const here = places.find(place => place.number === number)
    const there = across.find(place => place.number === number)
    const both = here && there && carried(here, book) === carried(there, book)
    const rows = (both ? [here] : [here, there]).flatMap(place => (place ? placeRow(place, group, book) : []))
    return both
      ? rows.map(row => ({ ...row, address: { ...row.address, sides: ['P', 'S'] as const } }))
      : rows
  })
}

const carried = (place: Place, { rig }: Book): string =>
  place.lines.map(address => rig.lineAt.get(address)?.pairKey ?? address).join(' ')

function placeRow(place: Place, group: string, book: Book): readonly PinRow[] {
  const address = placeAddress(place.rail, place.number, book.rig)
  if (!address) return []
  const lines = place.lines.flatMap(line => book.rig.lineAt.get(line) ?? [])
  const names = lines.map(line => ({
    name: nameInBook(line, book),
    isOthers: line.station !== book.station.name,
  }))
  return [{ address, names, alsoFree: [], group }]
}

// Free pins that follow each other are told in one row: 'free, and 3, 4, 5'.
function gathered(rows: readonly PinRow[]): readonly PinRow[] {
  const result: PinRow[] = []
  for (const row of rows) {
    const last = result.at(-1)
    const follows =
      last !== undefined &&
      last.names.length === 0 &&
      row.names.length === 0 &&
      last.address.sides.join() === row.address.sides.join() &&
      Number(row.address.pins) === Number(last.address.pins) + last.alsoFree.length + 1
    if (follows)
      result[result.length - 1] = { ...last, alsoFree: [...last.alsoFree, Number(row.address.pins)] }
    else result.push(row)
  }
  return result
}
