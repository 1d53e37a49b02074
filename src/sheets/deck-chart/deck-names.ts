import type { DeckThing, Mast, Rig } from '../../rig/index.ts'
import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { narrowest, widthOf } from '../narrow.ts'
import { grown, type Rect, rect, rectsMeet } from '../plane.ts'
import type { Mark, Point } from '../sheet.ts'
import { capHeight, type Ruler, type Typeface } from '../typeface.ts'
import type { DeckRail } from './deck-rails.ts'
import { isRaisedDeck } from './draw-hull.ts'
import { spaced } from './isotonic.ts'
import type { ChartLayout } from './layout.ts'
import { chartType } from './type.ts'

/** What is lettered on the deck, and the things whose names found no room. */
export interface DeckNames {
  readonly marks: readonly Mark[]
  readonly homeless: readonly string[]
}

interface Lettered {
  readonly box: Rect
  readonly marks: readonly Mark[]
}

/** A radius on paper for a mast: never so thin that it is lost. */
export const mastRadius = (mast: Mast, scale: number | undefined): number =>
  Math.max(0.9, ((mast.sections[0]?.diameter ?? 0.3) * 500) / (scale ?? 1000))

/**
 * Numbers of the inboard rails, codes of all rails, names of masts and of things on deck, in that order: each
 * in the first of its places where it covers nothing that stands there already.
 */
export function deckNames(
  rig: Rig,
  rails: readonly DeckRail[],
  layout: ChartLayout,
  ruler: Ruler,
): DeckNames {
  const masts = rig.masts.flatMap(mast => (mast.foot ? [{ mast, at: layout.onSheet(mast.foot.x, 0) }] : []))
  const standing = rig.deck
    .filter(thing => !isRaisedDeck(thing))
    .map(thing => ({ thing, box: thingBox(thing, layout) }))
  const barred = standing.map(({ box }) => grown(box, 0.3))
  const lettering = letteringOn(layout, [
    ...rails.map(({ bounds }) => bounds),
    ...masts.map(({ mast, at }) => grown(rect(at.x, at.y, at.x, at.y), mastRadius(mast, layout.scale) + 1)),
  ])
  for (const rail of rails.filter(each => each.numbered !== undefined)) {
    lettering.place(`the numbers of ${rail.rail.code}`, numberPlaces(rail, ruler), [], rail.bounds)
  }
  for (const rail of rails) lettering.place(rail.rail.code, codePlaces(rail, layout, ruler))
  for (const { mast, at } of masts) lettering.place(mast.label, mastPlaces(mast, at, layout, ruler), barred)
  for (const thing of rig.deck.filter(isRaisedDeck))
    lettering.place(thing.label, deckPlaces(thing, layout, ruler), barred)
  for (const { thing, box } of standing) {
    const others = standing.filter(other => other.thing !== thing && !isUnder(other.box, box))
    lettering.place(
      thing.label,
      thingPlaces(thing, box, ruler),
      others.map(other => grown(other.box, 0.3)),
    )
  }
  return lettering
}

/** Lettering that grows name by name; `taken` is what stands on the deck before any. */
function letteringOn(layout: ChartLayout, taken: Rect[]) {
  const marks: Mark[] = []
  const homeless: string[] = []
  const place = (what: string, places: readonly Lettered[], barred: readonly Rect[] = [], own?: Rect) => {
    const isFree = (box: Rect) =>
      ![...taken, ...barred].some(other => other !== own && rectsMeet(grown(box, 0.25), other))
    const free = places.find(({ box }) => isClearOfEdge(box, layout) && isFree(box))
    if (!free) {
      homeless.push(what)
      return
    }
    taken.push(free.box)
    marks.push(...free.marks)
  }
  return { marks, homeless, place }
}

const isUnder = (below: Rect, box: Rect): boolean =>
  below.left <= box.left && below.right >= box.right && below.top <= box.top && below.bottom >= box.bottom

/** Whether a box lies clear of her edge, so that no letter is written over the hull's line. */
function isClearOfEdge(
  { left, right, top, bottom }: Rect,
  { hull, paper, scale, onSheet }: ChartLayout,
): boolean {
  if (!hull || scale === undefined) return true
  const stemY = onSheet(hull.stem, 0).y
  const halfAt = (y: number) => (hull.halfBreadth(hull.stem + ((y - stemY) * scale) / 1000) * 1000) / scale
  const narrow = Math.min(halfAt(top), halfAt(bottom)) - 0.6
  const wide = Math.max(halfAt(top), halfAt(bottom)) + 0.6
  const [from, to] = [left - paper.width / 2, right - paper.width / 2]
  return (from > -narrow && to < narrow) || from > wide || to < -wide
}

const middleOfRect = ({ left, right, top, bottom }: Rect): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
})

function thingBox(thing: DeckThing, { onSheet }: ChartLayout): Rect {
  const [a, b] = [onSheet(thing.x0, thing.y0), onSheet(thing.x1, thing.y1)]
  return rect(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y))
}

/** Words level, with their middle at a point. */
function level(words: string, middle: Point, type: Typeface, ruler: Ruler, halo?: string): Lettered {
  const width = ruler(words, type)
  const cap = capHeight(type)
  const at = { x: middle.x, y: middle.y + cap / 2 }
  return {
    box: rect(middle.x - width / 2, middle.y - cap / 2 - 0.5, middle.x + width / 2, middle.y + cap / 2 + 0.7),
    marks: [
      lettered(ruler, at, words, type, ink.ink, {
        anchor: 'middle',
        ...(halo ? { halo: { width: 1.2, ink: halo } } : {}),
      }),
    ],
  }
}

/** Numbers of an inboard rail, fanned where its pins stand closer than the type. */
function numberPlaces(rail: DeckRail, ruler: Ruler): readonly Lettered[] {
  return [5.8, 7.4, 4.6, 9.4, 12].map(out =>
    rail.numbered === 'below' ? numbersBelow(rail, ruler, out - 1.8) : numbersBeside(rail, ruler, out),
  )
}

const numberStep = 2.95

function numbersBeside({ pins, numbered }: DeckRail, ruler: Ruler, out: number): Lettered {
  const hand = numbered === 'left' ? -1 : 1
  const ordered = [...pins].sort((a, b) => a.at.y - b.at.y)
  const tops =
    spaced(
      ordered.map(({ at }) => ({ wants: at.y, height: numberStep })),
      0,
      { from: -1e6, to: 1e6 },
    ) ?? []
  const outermost = ordered.reduce(
    (most, { at }) => (hand < 0 ? Math.min(most, at.x) : Math.max(most, at.x)),
    ordered[0]?.at.x ?? 0,
  )
  const x = outermost + hand * out
  const wide = ordered.reduce(
    (most, { place }) => Math.max(most, ruler(String(place.number), chartType.deckNumber)),
    0,
  )
  const marks = ordered.flatMap(({ place, at }, index): readonly Mark[] => {
    const y = (tops[index] ?? 0) + numberStep / 2
    const words = String(place.number)
    return [
      leader({ x: at.x + hand * 1.2, y: at.y }, { x: x - hand * (wide / 2 + 0.7), y }),
      lettered(
        ruler,
        { x, y: y + capHeight(chartType.deckNumber) / 2 },
        words,
        chartType.deckNumber,
        ink.ink,
        { anchor: 'middle' },
      ),
    ]
  })
  const near = outermost + hand * 1.1
  const far = x + hand * (wide / 2)
  const top = tops[0] ?? 0
  return {
    box: rect(Math.min(near, far), top, Math.max(near, far), (tops.at(-1) ?? top) + numberStep),
    marks,
  }
}

function numbersBelow({ pins, bounds }: DeckRail, ruler: Ruler, down: number): Lettered {
  const type = chartType.deckNumber
  const wide = pins.reduce((most, { place }) => Math.max(most, ruler(String(place.number), type)), 0) + 0.8
  const ordered = [...pins].sort((a, b) => a.at.x - b.at.x)
  const lefts =
    spaced(
      ordered.map(({ at }) => ({ wants: at.x, height: wide })),
      0,
      { from: -1e6, to: 1e6 },
    ) ?? []
  const y = bounds.bottom + Math.max(2.2, down - 1.8)
  const marks = ordered.flatMap(({ place, at }, index): readonly Mark[] => {
    const x = (lefts[index] ?? 0) + wide / 2
    const moved = Math.abs(x - at.x) > 0.3
    return [
      ...(moved ? [leader({ x: at.x, y: at.y + 1.1 }, { x, y: y - capHeight(type) / 2 - 0.4 })] : []),
      lettered(ruler, { x, y: y + capHeight(type) / 2 }, String(place.number), type, ink.ink, {
        anchor: 'middle',
      }),
    ]
  })
  const left = lefts[0] ?? 0
  return { box: rect(left, bounds.bottom + 0.3, (lefts.at(-1) ?? left) + wide, y + 1.3), marks }
}

const leader = (from: Point, to: Point): Mark => ({
  kind: 'line',
  points: [from, to],
  pen: { ink: ink.rig, width: weight.a },
})

/** A code runs along a rail of five pins and more, read from outboard; else it stands level, inboard of it. */
function codePlaces(rail: DeckRail, { paper }: ChartLayout, ruler: Ruler): readonly Lettered[] {
  const { bounds, numbered, pins } = rail
  const { code } = rail.rail
  const type = chartType.deckCode
  const width = ruler(code, type)
  const middle = middleOfRect(bounds)
  const beside = (hand: 1 | -1, away: number, y = middle.y) =>
    level(
      code,
      { x: (hand > 0 ? bounds.right : bounds.left) + hand * (away + width / 2), y },
      type,
      ruler,
      ink.deck,
    )
  if (numbered === 'below')
    return [beside(-1, 0.9, bounds.bottom + 2.2), beside(-1, 1.2), beside(1, 1.2), beside(-1, 4)]
  if (numbered) {
    const hand = numbered === 'left' ? -1 : 1
    const above = upright(middle, bounds, code, type, ruler)
    const near = [4.6, 5.4, 6.2, 7, 7.8, 8.6, 9.8].map(away => beside(hand, away))
    return [...near, ...above, ...[11, 13, 16].map(away => beside(hand, away))]
  }
  const inboard = middle.x < paper.width / 2 ? 1 : -1
  const along =
    pins.length >= 5 && bounds.bottom - bounds.top > width + 1 ? alongPlaces(rail, inboard, ruler) : []
  return [
    ...along,
    ...[1, 2.2, 4].map(away => beside(inboard, away)),
    beside(inboard === 1 ? -1 : 1, 1),
    ...upright(middle, bounds, code, type, ruler),
  ]
}

/** Above and below, for a rail that has no room beside it. */
const upright = (
  middle: Point,
  bounds: Rect,
  code: string,
  type: Typeface,
  ruler: Ruler,
): readonly Lettered[] =>
  [1.9, 3.6, 5.5].flatMap(away => [
    level(code, { x: middle.x, y: bounds.bottom + away }, type, ruler, ink.deck),
    level(code, { x: middle.x, y: bounds.top - away }, type, ruler, ink.deck),
  ])

function alongPlaces({ pins, rail }: DeckRail, inboard: 1 | -1, ruler: Ruler): readonly Lettered[] {
  const type = chartType.deckCode
  const width = ruler(rail.code, type)
  const cap = capHeight(type)
  return [0.5, 0.62, 0.38, 0.75, 0.25].map(share => {
    const y = (pins[0]?.at.y ?? 0) + share * ((pins.at(-1)?.at.y ?? 0) - (pins[0]?.at.y ?? 0))
    // The plank may slant: the code clears it over its whole length.
    const near = pins.filter(({ at }) => Math.abs(at.y - y) < width / 2 + 2).map(({ at }) => at.x)
    const edge = inboard > 0 ? Math.max(...near) + 2.1 : Math.min(...near) - 2.1
    const baseline = edge + inboard * cap
    const at = inboard > 0 ? { x: baseline, y: y + width / 2 } : { x: baseline, y: y - width / 2 }
    return {
      box: rect(Math.min(edge, baseline) - 0.3, y - width / 2, Math.max(edge, baseline) + 0.3, y + width / 2),
      marks: [lettered(ruler, at, rail.code, type, ink.ink, { turn: inboard > 0 ? 90 : -90 })],
    }
  })
}

function mastPlaces(mast: Mast, at: Point, { scale }: ChartLayout, ruler: Ruler): readonly Lettered[] {
  const words = mast.label.toLowerCase()
  const radius = mastRadius(mast, scale)
  return [5.2, 7.5, 10, 13, 16].flatMap(away =>
    [-1, 1].map(way =>
      level(words, { x: at.x, y: at.y + way * (radius + away) }, chartType.mast, ruler, ink.deck),
    ),
  )
}

/** A raised deck is named in its middle, or wherever on it there is room. */
function deckPlaces(thing: DeckThing, layout: ChartLayout, ruler: Ruler): readonly Lettered[] {
  const box = thingBox(thing, layout)
  const { x } = middleOfRect(box)
  return [0.5, 0.6, 0.7, 0.4, 0.8, 0.3, 0.2].map(share =>
    level(
      printed(thing),
      { x, y: box.top + share * (box.bottom - box.top) },
      chartType.deck,
      ruler,
      ink.deck,
    ),
  )
}

const printed = (thing: DeckThing): string => thing.label.charAt(0).toLowerCase() + thing.label.slice(1)

/** Within the thing if it holds its name, else below, above or beside it. */
function thingPlaces(thing: DeckThing, box: Rect, ruler: Ruler): readonly Lettered[] {
  const words = printed(thing)
  const width = ruler(words, chartType.thing)
  const { x, y } = middleOfRect(box)
  const holds =
    !/ladder|companion|helm|wheel/.test(thing.kind) &&
    width + 1.5 < box.right - box.left &&
    box.bottom - box.top > 3.6
  const inside = holds
    ? [0, -2.5, 2.5]
        .filter(off => Math.abs(off) + 2 < (box.bottom - box.top) / 2 || off === 0)
        .map(off => level(words, { x, y: y + off }, chartType.thing, ruler, ink.house))
    : []
  const outside = [2.3, 3.6].flatMap(away => [
    level(words, { x, y: box.bottom + away }, chartType.thing, ruler, ink.deck),
    level(words, { x, y: box.top - away }, chartType.thing, ruler, ink.deck),
    level(words, { x: box.right + 1 + width / 2, y }, chartType.thing, ruler, ink.deck),
    level(words, { x: box.left - 1 - width / 2, y }, chartType.thing, ruler, ink.deck),
  ])
  return [...inside, ...outside, ...brokenPlaces(words, box, ruler)]
}

/** A name in two lines, for where one line is too long. */
function brokenPlaces(words: string, box: Rect, ruler: Ruler): readonly Lettered[] {
  const lines = narrowest(words, 2, chartType.thing, ruler)
  if (lines.length < 2) return []
  const width = widthOf(lines, chartType.thing, ruler)
  const { x, y } = middleOfRect(box)
  const middles = [
    { x, y: box.bottom + 4.2 },
    { x, y: box.top - 4.2 },
    { x: box.right + 1 + width / 2, y },
    { x: box.left - 1 - width / 2, y },
  ]
  return middles.map(middle => {
    const set = lines.map((line, index) =>
      level(line, { x: middle.x, y: middle.y + (index - 0.5) * 3.4 }, chartType.thing, ruler, ink.deck),
    )
    const tops = set.map(({ box: { top, bottom } }) => [top, bottom] as const)
    const top = Math.min(...tops.map(([first]) => first))
    const bottom = Math.max(...tops.map(([, last]) => last))
    return {
      box: rect(middle.x - width / 2, top, middle.x + width / 2, bottom),
      marks: set.flatMap(({ marks }) => marks),
    }
  })
}
