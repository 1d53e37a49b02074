import type { AnswerGraph, AnswerNode, Join } from './answer-graph.ts'
import { countCrossings, type Stretch } from './crossings.ts'

/** Lines of which each answers every one across: they are joined by a bus, not by a net. */
export interface Bus {
  readonly setting: readonly string[]
  readonly taking: readonly string[]
}

/** A sail's boxes in their places, and the joins that can be drawn among them without crossing. */
export interface AnswerLayout {
  readonly setting: readonly Placed[]
  readonly taking: readonly Placed[]
  readonly bus: Bus | undefined
  readonly fans: readonly Join[]
  /** Joins across that would cross another one: they are told in words. */
  readonly told: readonly Join[]
  readonly rows: number
}

export interface Placed {
  readonly node: AnswerNode
  /** Its row, from 0, in halves. */
  readonly row: number
}

/** The gap between the columns, with its two bars: distances in rows of boxes don't matter here, only their order. */
export const gap = { left: 51, busLeft: 56, busRight: 62, right: 67 } as const

/** How much above or below the middle of its box a fan begins where a bus begins in the middle. */
const aside = 0.22

/**
 * Finds places in which the joins cross least: the order of the left boxes is tried through, the right ones
 * follow by the middle of what they are joined to, and the shorter column slides along the longer. Joins that
 * still cross are taken out and told in words, so that none drawn ever crosses.
 */
export function answerLayout(graph: AnswerGraph): AnswerLayout {
  const bus = largestBus(graph)
  const fans = graph.across.filter(join => !inBus(join, bus))
  const tried = orders(graph.setting).flatMap(setting => {
    const taking = followed(graph.taking, setting, graph.across)
    return slides(setting, taking).map(places => ({ places, cost: cost(places, bus, fans, graph) }))
  })
  const [first, ...rest] = tried
  if (!first) return { setting: [], taking: [], bus, fans: [], told: [], rows: 0 }
  const best = rest.reduce((least, one) => (one.cost < least.cost ? one : least), first)
  const drawn = uncrossed(best.places, bus, fans)
  return {
    ...best.places,
    bus,
    fans: drawn,
    told: fans.filter(join => !drawn.includes(join)),
    rows: Math.max(graph.setting.length, graph.taking.length),
  }
}

interface Places {
  readonly setting: readonly Placed[]
  readonly taking: readonly Placed[]
}

const inBus = ([a, b]: Join, bus: Bus | undefined): boolean =>
  bus?.setting.includes(a) === true && bus.taking.includes(b)

/** The most lines of which all answer all, two on each side at the least. */
function largestBus({ setting, taking, across }: AnswerGraph): Bus | undefined {
  const keys = setting.map(({ pairKey }) => pairKey).slice(0, mostTried)
  const candidates = subsets(keys).map(some => ({
    setting: some,
    taking: taking
      .map(({ pairKey }) => pairKey)
      .filter(key => some.every(one => across.some(([a, b]) => a === one && b === key))),
  }))
  const size = (bus: Bus) => bus.setting.length * bus.taking.length
  const wide = candidates.filter(bus => bus.setting.length > 1 && bus.taking.length > 1)
  return wide.reduce<Bus | undefined>(
    (best, bus) => (best && size(best) >= size(bus) ? best : bus),
    undefined,
  )
}

/** More boxes than this are left in the order of the text: six have 720 orders. */
const mostTried = 6

function subsets([key, ...rest]: readonly string[]): readonly (readonly string[])[] {
  if (key === undefined) return [[]]
  const without = subsets(rest)
  return without.concat(without.map(some => [key, ...some]))
}

function orders(nodes: readonly AnswerNode[]): readonly (readonly AnswerNode[])[] {
  if (nodes.length > mostTried) return [nodes]
  if (nodes.length < 2) return [nodes]
  return nodes.flatMap((node, index) =>
    orders([...nodes.slice(0, index), ...nodes.slice(index + 1)]).map(rest => [node, ...rest]),
  )
}

// By the middle of the rows they are joined to; those joined to nothing come last, in the order of the text.
function followed(
  taking: readonly AnswerNode[],
  setting: readonly AnswerNode[],
  across: readonly Join[],
): readonly AnswerNode[] {
  const middle = ({ pairKey }: AnswerNode) => {
    const rows = across
      .filter(([, b]) => b === pairKey)
      .map(([a]) => setting.findIndex(node => node.pairKey === a))
    return rows.length === 0 ? setting.length : rows.reduce((total, row) => total + row, 0) / rows.length
  }
  return taking
    .map((node, index) => ({ node, index, at: middle(node) }))
    .toSorted((a, b) => a.at - b.at || a.index - b.index)
    .map(({ node }) => node)
}

/** The shorter column beside the top, the middle or the foot of the longer. */
function slides(setting: readonly AnswerNode[], taking: readonly AnswerNode[]): readonly Places[] {
  const slack = taking.length - setting.length
  const placed = (nodes: readonly AnswerNode[], from: number) =>
    nodes.map((node, row) => ({ node, row: row + from }))
  return [0, 0.5, 1].map(share => ({
    setting: placed(setting, Math.max(0, slack) * share),
    taking: placed(taking, Math.max(0, -slack) * share),
  }))
}

// A crossing outweighs any slope, and slope the order of the text.
function cost(places: Places, bus: Bus | undefined, fans: readonly Join[], graph: AnswerGraph): number {
  const crossings = countCrossings(stretchesOf(places, bus, fans))
  const slope = graph.across.reduce((total, join) => total + rise(join, places), 0)
  const textRow = (node: AnswerNode, nodes: readonly AnswerNode[]) => nodes.indexOf(node)
  const moved =
    places.setting.reduce((total, { node }, row) => total + Math.abs(row - textRow(node, graph.setting)), 0) +
    places.taking.reduce((total, { node }, row) => total + Math.abs(row - textRow(node, graph.taking)), 0)
  return crossings * 1e4 + slope + moved / 100
}

const rowOf = (key: string, placed: readonly Placed[]): number =>
  placed.find(({ node }) => node.pairKey === key)?.row ?? 0

const rise = ([a, b]: Join, { setting, taking }: Places): number =>
  Math.abs(rowOf(a, setting) - rowOf(b, taking))

/** Every stretch of line that a layout draws between its columns, each with the join it belongs to; y in rows. */
export function stretchesOf(places: Places, bus: Bus | undefined, fans: readonly Join[]): readonly Stretch[] {
  return [...busStretches(places, bus), ...fans.map(join => fanStretch(join, places, bus))]
}

function fanStretch([a, b]: Join, { setting, taking }: Places, bus: Bus | undefined): Stretch {
  const [from, to] = [rowOf(a, setting), rowOf(b, taking)]
  const down = to >= from ? 1 : -1
  const first = bus?.setting.includes(a) ? from + aside * asideWay(a, bus.setting, setting, down) : from
  const last = bus?.taking.includes(b) ? to - aside * asideWay(b, bus.taking, taking, -down) : to
  return { owner: `${a} ${b}`, from: { x: gap.left, y: first }, to: { x: gap.right, y: last } }
}

// A box at the end of its bus sends its fan out on the outer side, clear of the bar.
function asideWay(
  key: string,
  inBus: readonly string[],
  placed: readonly Placed[],
  otherwise: number,
): number {
  const rows = inBus.map(one => rowOf(one, placed))
  const row = rowOf(key, placed)
  if (row === Math.max(...rows) && row !== Math.min(...rows)) return 1
  if (row === Math.min(...rows)) return -1
  return otherwise
}

function busStretches({ setting, taking }: Places, bus: Bus | undefined): readonly Stretch[] {
  if (!bus) return []
  const left = bus.setting.map(key => rowOf(key, setting))
  const right = bus.taking.map(key => rowOf(key, taking))
  const link = linkRow(left, right)
  const level = (from: number, to: number, y: number): Stretch => ({
    owner: 'bus',
    from: { x: from, y },
    to: { x: to, y },
  })
  const bar = (x: number, rows: readonly number[]): Stretch => ({
    owner: 'bus',
    from: { x, y: Math.min(link, ...rows) },
    to: { x, y: Math.max(link, ...rows) },
  })
  return [
    ...left.map(row => level(gap.left, gap.busLeft, row)),
    bar(gap.busLeft, left),
    level(gap.busLeft, gap.busRight, link),
    bar(gap.busRight, right),
    ...right.map(row => level(gap.busRight, gap.right, row)),
  ]
}

function linkRow(left: readonly number[], right: readonly number[]): number {
  const top = Math.max(Math.min(...left), Math.min(...right))
  const foot = Math.min(Math.max(...left), Math.max(...right))
  return (top + foot) / 2
}

function uncrossed(places: Places, bus: Bus | undefined, fans: readonly Join[]): readonly Join[] {
  let drawn = fans
  while (countCrossings(stretchesOf(places, bus, drawn)) > 0) {
    const without = drawn.map(join => drawn.filter(other => other !== join))
    const crossings = without.map(some => countCrossings(stretchesOf(places, bus, some)))
    const least = Math.min(...crossings)
    drawn = without[crossings.indexOf(least)] ?? []
  }
  return drawn
}
