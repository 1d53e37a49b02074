import type { Line, Sail } from '../../rig/index.ts'
import { flow, type Piece, words } from '../flow.ts'
import { addressesOf, addressPiece, type PinAddress } from './address.ts'
import { answerGraph, answerNode } from './answer-graph.ts'
import type { Book } from './book.ts'
import { listed, plural, raised } from './order-names.ts'
import { live } from './page.ts'
import { linesOf } from './register-rows.ts'
import { inPairs } from './station-lines.ts'
import { type } from './type.ts'

/** The sentence on pairs that only answer each other, with its heading: 'Braces', 'Braces and vangs'; a mere remark has none. */
export interface BraceSentence {
  readonly heading: string | undefined
  readonly pieces: readonly Piece[]
  readonly lines: number
}

/**
 * Braces, vangs, lifts and backstays in one sentence: 'FB-P 3 to 7 against FB-S 3 to 7', by rail and by who
 * works them. Undefined where the station has to do with none.
 */
export function braceSentence(sails: readonly Sail[], book: Book): BraceSentence | undefined {
  const pairs = selfAnswering(sails, book)
  const groups = byRail(pairs, book)
  const anyDashed = sails.some(sail => {
    const { setting, taking } = answerGraph(sail, book.rig)
    return [...setting, ...taking].some(({ lines }) =>
      lines.every(line => line.station !== book.station.name),
    )
  })
  const dashed = anyDashed ? 'Dashed boxes are other stations’ lines.' : ''
  if (groups.length === 0) {
    if (dashed === '') return undefined
    return { heading: undefined, pieces: [words(dashed, type.noteItalic)], lines: 1 }
  }
  const against = groups.flatMap((group, index) => [
    ...groupPieces(group, book),
    ...whose(group, groups, book),
    words(index < groups.length - 1 ? '; ' : ': ', type.working),
  ])
  const pieces = [
    ...against,
    words(`one is in hand before the other is cast off. ${callAcross(groups, book)}${dashed}`, type.working),
  ]
  const kinds = pairs.flatMap(([line]) => (line ? [line.foreign ? line.kind : plural(line.kind)] : []))
  return {
    heading: raised(listed([...new Set(kinds)])),
    pieces,
    lines: flow(pieces, live.width, book.setting.ruler).length,
  }
}

function selfAnswering(sails: readonly Sail[], book: Book): readonly (readonly Line[])[] {
  const ofSails = sails.flatMap(sail => linesOf(sail, book.rig))
  const boxed = new Set(
    sails.flatMap(sail => {
      const { setting, taking } = answerGraph(sail, book.rig)
      return [...setting, ...taking].map(({ pairKey }) => pairKey)
    }),
  )
  return inPairs([...new Set([...ofSails, ...book.lines.own])])
    .filter(([line]) => line !== undefined && !boxed.has(line.pairKey))
    .filter(lines => answerNode(lines).some(({ answersItself }) => answersItself))
    .toSorted((a, b) => Number(b[0]?.kind === 'brace') - Number(a[0]?.kind === 'brace'))
}

interface RailGroup {
  readonly sides: readonly [PinAddress, PinAddress | undefined]
  readonly pins: readonly number[]
  readonly station: string | undefined
}

function byRail(pairs: readonly (readonly Line[])[], book: Book): readonly RailGroup[] {
  const groups = new Map<string, RailGroup>()
  for (const lines of pairs) {
    const addresses = addressesOf(lines, book.rig)
    const [address, second] = addresses
    const station = lines[0]?.station
    if (!address) continue
    const mirrors = address.sides.length === 2
    const sides: RailGroup['sides'] = mirrors
      ? [
          { ...address, sides: ['P'] },
          { ...address, sides: ['S'] },
        ]
      : [address, second]
    const key = mirrors ? `${address.rail} ${station ?? ''}` : lines.map(line => line.address).join()
    const known = groups.get(key)
    const pin = Number(address.pins ?? 0)
    groups.set(key, {
      sides: known?.sides ?? sides,
      station,
      pins: [...(known?.pins ?? []), pin].toSorted((a, b) => a - b),
    })
  }
  return [...groups.values()]
}

function groupPieces(
  { sides: [first, second], pins }: RailGroup,
  { setting: { ruler } }: Book,
): readonly Piece[] {
  const ranges = rangesOf(pins)
  const address = (one: PinAddress): readonly Piece[] => [
    addressPiece(
      { ...one, pins: one.pins === undefined ? undefined : (ranges[0]?.split(' ')[0] ?? one.pins) },
      type.workingAddress,
      ruler,
    ),
    words(rest(ranges), type.workingAddress),
  ]
  const mirrored =
    first.pins !== undefined && second !== undefined && first.rail === second.rail && pins.length > 0
  if (!second) return [addressPiece(first, type.workingAddress, ruler)]
  if (!mirrored)
    return [
      addressPiece(first, type.workingAddress, ruler),
      words(' against ', type.working),
      addressPiece(second, type.workingAddress, ruler),
    ]
  return [...address(first), words(' against ', type.working), ...address(second)]
}

// The first number stands in the address itself; what follows it is words.
function rest(ranges: readonly string[]): string {
  const [first = '', ...others] = ranges
  const tail = first.includes(' ') ? first.slice(first.indexOf(' ')) : ''
  return others.length === 0
    ? tail
    : `${tail}${others.length > 1 ? `, ${others.slice(0, -1).join(', ')}` : ''} and ${others.at(-1)}`
}

/** '3 to 7', '9': runs of pins, in order. */
function rangesOf(pins: readonly number[]): readonly string[] {
  const runs: [number, number][] = []
  for (const pin of pins) {
    const last = runs.at(-1)
    if (last && pin === last[1] + 1) last[1] = pin
    else if (last?.[1] !== pin) runs.push([pin, pin])
  }
  return runs.map(([from, to]) => (from === to ? String(from) : `${from} to ${to}`))
}

/** Who works the pairs of a rail, where not all are worked by one other station. */
function whose({ station }: RailGroup, groups: readonly RailGroup[], book: Book): readonly Piece[] {
  if (station === undefined || station === book.station.name || allAnothers(groups, book) !== undefined)
    return []
  return [words(` (${stationName(station, book)})`, type.workingOthers)]
}

function callAcross(groups: readonly RailGroup[], book: Book): string {
  const another = allAnothers(groups, book)
  if (another !== undefined) return `${raised(stationName(another, book))} works them; call across. `
  return groups.some(({ station }) => station !== undefined && station !== book.station.name)
    ? 'Call across. '
    : ''
}

/** The one other station that works them all. */
function allAnothers(groups: readonly RailGroup[], { station }: Book): string | undefined {
  const [first, ...more] = new Set(groups.map(group => group.station))
  return more.length === 0 && first !== station.name ? first : undefined
}

const stationName = (name: string, { rig }: Book): string =>
  (rig.stationAt.get(name)?.label ?? name).toLowerCase()
