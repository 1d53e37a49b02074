import type { Line, Sail } from '../../../src/rig/index.ts'
import { lineOf, type Notebook, withLine, withLineBelow, wordsAt } from '../notebook.ts'
import { anywhere, at, has, isLifted, type Plant, type Plants, perSail, square, stayed } from './plant.ts'

/** An order of one phase in the place of the gear's own: told at the phase. */
const ordering = (
  rule: string,
  kind: 'set' | 'douse',
  acts: string,
  fits: (sail: Sail, book: Notebook) => boolean,
): Plant =>
  perSail((book, { thing, gear }) => {
    let last = gear
    while (/^ {6}/.test(wordsAt(book, last + 1))) last++
    const lines = [
      `      to ${kind}`,
      '        "All together."',
      ...acts.split('\n').map(act => `          ${act}`),
    ]
    if (!fits(thing, book)) return undefined
    // Told at the phase, or at the order as a whole.
    return { text: withLineBelow(book, last, lines.join('\n')), rules: [rule], lines: [last + 1, last + 2] }
  })

const fewerHands: Plant = book => {
  const line = book.lines.findIndex(words => /^ {2}hands \d+ in all/.test(words)) + 1
  if (line === 0) return []
  return [anywhere('order/more-hands-than-aboard', withLine(book, line, '  hands 1 in all'))]
}

/** All stations left with one hand each, and the vessel with as many as before. */
const fewerAtStations: Plant = book => {
  const from = book.lines.findIndex(words => words.startsWith('stations'))
  if (from < 0) return []
  const lines = book.lines.map((words, index) =>
    index > from && /^ {2}\S/.test(words)
      ? words.replace(/\d+ hands?( in a watch)?, *\d+ in all|\d+ hands? in all/, '1 hand in all')
      : words,
  )
  return [anywhere(['order/party-too-small', 'order/more-hands-than-aboard'], lines.join('\n'))]
}

/** A rail taken from the station that works it, where its lines answer what other stations haul. */
const railUnmanned: Plant = book => {
  const answering = answeringIn(book)
  return book.rig.rails.flatMap(rail => {
    const answers = rail.places
      .flatMap(place => place.lines)
      .some(address => answering.get(address)?.has(rail.mark))
    const line = book.lines.findIndex(words => new RegExp(`works .*\\b${rail.name}\\b`).test(words)) + 1
    const old = wordsAt(book, line)
    const words = old.replace(` and ${rail.name}`, '').replace(`works ${rail.name} and `, 'works ')
    const entry = lineOf(book, rail.span)
    if (!answers || line === 0 || words === old || entry === undefined) return []
    return [at(entry, 'order/counterpart-unmanned', withLine(book, line, words))]
  })
}

/** Lines that must be eased when one on another rail is hauled in the orders of a sail, with the marks of their own rails. */
function answeringIn({ rig }: Notebook): ReadonlyMap<string, ReadonlySet<string>> {
  const phases = rig.sails.flatMap(({ toSet, toDouse }) => [
    ...(toSet?.phases ?? []),
    ...(toDouse?.phases ?? []),
  ])
  const hauls = phases.flatMap(({ acts }) => acts.filter(({ act }) => act === 'haul'))
  const hauled = new Set(hauls.flatMap(({ lines }) => lines.map(({ pairKey }) => pairKey)))
  const named = new Set(rig.stations.flatMap(({ lines }) => lines))
  const markOf = (line: Line | undefined) => rig.railAt.get(line?.belay?.rail ?? '')?.mark ?? ''
  const answering = new Map<string, Set<string>>()
  for (const line of rig.lines.filter(({ pairKey, station }) => station && hauled.has(pairKey))) {
    for (const address of line.counterparts) {
      const other = rig.lineAt.get(address)
      if (!other || named.has(other.pairKey) || markOf(other) === markOf(line)) continue
      answering.set(address, (answering.get(address) ?? new Set()).add(markOf(other)))
    }
  }
  return answering
}

const hoisting =
  (...names: readonly string[]) =>
  (sail: Sail, book: Notebook) =>
    square()(sail) && has(book, sail, 'halyard', ...names) && !isLifted(sail, book)

/** Faults of the orders, and of the hands for them. */
export const orders: Plants = {
  'a downhaul hauled against a fast halyard': ordering(
    'order/hauled-against',
    'douse',
    'haul downhaul, hold halyard',
    (sail, book) => stayed(sail) && has(book, sail, 'downhaul', 'halyard'),
  ),
  "a yard's halyard let go": ordering(
    'order/let-go-under-load',
    'douse',
    'let go halyard, haul buntlines',
    hoisting('buntline'),
  ),
  'throat and peak let go': ordering(
    'order/let-go-under-load',
    'douse',
    'let go throat halyard and peak halyard',
    (sail, book) => has(book, sail, 'throat halyard', 'peak halyard'),
  ),
  'a yard hoisted under hands': ordering(
    'order/aloft-while-worked',
    'set',
    'aloft 3 hands, gaskets off\nhaul halyard, ease buntlines',
    hoisting('buntline'),
  ),
  'a yard braced under hands': ordering(
    'order/aloft-while-worked',
    'douse',
    'aloft 3 hands, furl\nhaul weather brace, ease lee brace',
    (sail, book) => square()(sail) && has(book, sail, 'brace') && !isLifted(sail, book),
  ),
  'both running backstays left set up': ordering(
    'order/lee-backstay-kept',
    'set',
    'haul throat halyard and peak halyard, hold running backstays',
    (sail, book) => has(book, sail, 'running backstay', 'throat halyard'),
  ),
  'too few hands aboard': fewerHands,
  'too few hands at the stations': fewerAtStations,
  'a rail without a station': railUnmanned,
}
