import { type Figure, known, unknown } from '../measure/index.ts'
import type { Rig, Station } from '../rig/index.ts'
import { winds } from './called.ts'
import type { Loan, OrderPhase, OrderRow, PhaseHands, StationHands } from './order.ts'
import { handsOn } from './rows.ts'

/** The rows that hands are reckoned from. */
export type Worked = Pick<OrderPhase, 'haul' | 'ease' | 'tend' | 'aloft'>

/** The hands a phase takes at once, station by station, and who lends where a station has too few. */
export function phaseHands(rig: Rig, worked: Worked): PhaseHands {
  const called = new Set([...worked.haul, ...worked.ease, ...worked.tend].flatMap(row => row.stations))
  const wanting = rig.stations
    .filter(({ name }) => called.has(name))
    .map(station => wantsOf(rig, station, worked))
    .filter(({ hauling, easing }) => !hauling.known || hauling.value + easing > 0)
  return {
    hauling: handsAtOnce(worked.haul),
    easing: easingHands([...worked.ease, ...worked.tend]),
    aloft: worked.aloft?.hands ?? 0,
    stations: withLoans(rig, wanting),
  }
}

/**
 * Hands on rows that are worked at once. Lines hauled "then" are hauled by hands that come from the lines
 * before them, so that of the two parties only the larger counts.
 */
export function handsAtOnce(rows: readonly OrderRow[]): Figure<number> {
  const silent = rows.find(row => !row.hands.known)
  if (silent && !silent.hands.known) return unknown(silent.hands.because)
  const count = (some: readonly OrderRow[]) =>
    some.reduce((total, { hands }) => total + (hands.known ? hands.value : 0), 0)
  return known(Math.max(count(rows.filter(row => !row.after)), count(rows.filter(row => row.after))))
}

// Lines let go run by themselves; a line eased or tended keeps a hand. Common practice, no source.
const easingHands = (rows: readonly OrderRow[]): number =>
  rows.reduce((total, row) => total + (row.act === 'let go' ? 0 : row.count), 0)

type Wants = Omit<StationHands, 'loans' | 'short'>

function wantsOf(rig: Rig, station: Station, { haul, ease, tend }: Worked): Wants {
  const own = (rows: readonly OrderRow[]) =>
    rows.filter(row => row.stations.includes(station.name)).map(row => shareOf(rig, row, station.name))
  return {
    station: station.name,
    hauling: handsAtOnce(own(haul)),
    easing: easingHands(own([...ease, ...tend])),
    inAll: station.handsInAll ?? ofItsOwn(station),
    inWatch: station.handsInWatch ?? ofItsOwn(station),
  }
}

// A station manned by others has nobody of its own: all its hands are lent.
const ofItsOwn = (station: Station): number | undefined => (station.mannedBy.length > 0 ? 0 : undefined)

/**
 * A row cut down to one station's lines. Where port and starboard are two stations' the wind decides whose a
 * weather line is, so that each must reckon with it.
 */
function shareOf(rig: Rig, row: OrderRow, station: string): OrderRow {
  const shares = winds.map(wind =>
    row.lines[wind]
      .flatMap(address => rig.lineAt.get(address) ?? [])
      .filter(line => line.station === station),
  )
  const [larger = []] = shares.toSorted((a, b) => b.length - a.length)
  return { ...row, count: Math.min(row.count, larger.length), hands: handsOn(larger, row.count) }
}

function withLoans(rig: Rig, wanting: readonly Wants[]): readonly StationHands[] {
  const spare = new Map(rig.stations.flatMap(station => spareOf(station, wanting)))
  return wanting.map(wants => {
    const short = shortOf(wants)
    const loans = short > 0 ? borrow(lendersOf(rig, wants.station, wanting), spare, short) : []
    const lent = loans.reduce((total, loan) => total + loan.hands, 0)
    return { loans, short: Math.max(0, short - lent), ...wants }
  })
}

function spareOf(station: Station, wanting: readonly Wants[]): readonly [string, number][] {
  const own = wanting.find(wants => wants.station === station.name)
  if (station.handsInAll === undefined || (own && !own.hauling.known)) return []
  const busy = own?.hauling.known ? own.hauling.value + own.easing : 0
  return [[station.name, Math.max(0, station.handsInAll - busy)]]
}

function shortOf({ hauling, easing, inAll }: Wants): number {
  if (!hauling.known || inAll === undefined) return 0
  return Math.max(0, hauling.value + easing - inAll)
}

/**
 * Who lends first: those the text says man the station, then those who work in the phase already, and so are
 * called, then the nearest, as the text names stations one after the other along the deck. A station that takes
 * the helm or another duty lends last.
 */
function lendersOf(rig: Rig, borrower: string, wanting: readonly Wants[]): readonly string[] {
  const own = rig.stations.findIndex(({ name }) => name === borrower)
  const nearest = rig.stations
    .map((station, index) => ({
      name: station.name,
      dutied: station.takes.length > 0,
      away: Math.abs(index - own),
    }))
    .toSorted((a, b) => Number(a.dutied) - Number(b.dutied) || a.away - b.away)
  const called = nearest.filter(
    ({ name, dutied }) => !dutied && wanting.some(({ station }) => station === name),
  )
  const names = [
    ...(rig.stationAt.get(borrower)?.mannedBy ?? []),
    ...[...called, ...nearest].map(({ name }) => name),
  ]
  return [...new Set(names)].filter(name => name !== borrower)
}

// `spare` is the local purse of one phase: what one station has borrowed another can't.
function borrow(lenders: readonly string[], spare: Map<string, number>, wanted: number): readonly Loan[] {
  const loans: Loan[] = []
  let left = wanted
  for (const from of lenders) {
    const hands = Math.min(left, spare.get(from) ?? 0)
    if (hands === 0) continue
    loans.push({ from, hands })
    spare.set(from, (spare.get(from) ?? 0) - hands)
    left -= hands
  }
  return loans
}
