import type { DeckThing, Mast, Rig } from '../../rig/index.ts'
import type { Span } from '../../text/index.ts'
import { ink, weight } from '../ink.ts'
import { narrowest, widthOf } from '../narrow.ts'
import { grown, type Rect, rect, rectsMeet } from '../plane.ts'
import type { Mark, Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import type { DeckRail } from './deck-rails.ts'
import { isRaisedDeck } from './draw-hull.ts'
import type { ChartLayout } from './layout.ts'
import { type Lettered, level, middleOfRect } from './level-words.ts'
import { codePlaces, numberPlaces } from './rail-lettering.ts'
import { chartType } from './type.ts'

/** What is lettered on the deck, and the things whose names found no room. */
export interface DeckNames {
  readonly marks: readonly Mark[]
  readonly homeless: readonly Named[]
}

/** What is lettered on the deck, as it is printed, and where the text says it. */
export interface Named {
  readonly label: string
  readonly span: Span
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
    const numbers = { label: `the numbers of ${rail.rail.code}`, span: rail.rail.span }
    lettering.place(numbers, clearFirst(numberPlaces(rail, ruler), barred), [], rail.bounds)
  }
  for (const rail of rails) {
    const code = { label: rail.rail.code, span: rail.rail.span }
    const box = lettering.place(code, clearFirst(codePlaces(rail, layout, ruler), barred))
    const isOverThing = barred.some(other => rectsMeet(rail.bounds, other))
    if (box && isOverThing) lettering.add(tether(rail.bounds, box))
  }
  for (const { mast, at } of masts) lettering.place(mast, mastPlaces(mast, at, layout, ruler), barred)
  for (const thing of rig.deck.filter(isRaisedDeck))
    lettering.place(thing, deckPlaces(thing, layout, ruler), barred)
  for (const { thing, box } of standing) {
    const others = standing.filter(other => other.thing !== thing && !isUnder(other.box, box))
    lettering.place(
      thing,
      thingPlaces(thing, box, ruler),
      others.map(other => grown(other.box, 0.3)),
    )
  }
  return lettering
}

/** Lettering that grows name by name; `taken` is what stands on the deck before any. */
function letteringOn(layout: ChartLayout, taken: Rect[]) {
  const marks: Mark[] = []
  const homeless: Named[] = []
  const place = (what: Named, places: readonly Lettered[], barred: readonly Rect[] = [], own?: Rect) => {
    const isFree = (box: Rect) =>
      ![...taken, ...barred].some(other => other !== own && rectsMeet(grown(box, 0.25), other))
    const free = places.find(({ box }) => isClearOfEdge(box, layout) && isFree(box))
    if (!free) {
      homeless.push(what)
      return undefined
    }
    taken.push(free.box)
    marks.push(...free.marks)
    return free.box
  }
  return { marks, homeless, place, add: (more: readonly Mark[]) => marks.push(...more) }
}

/** A code below or above a rail that hangs over some other thing is tied to it, lest it be read as the thing's. */
function tether(rail: Rect, code: Rect): readonly Mark[] {
  const { x } = middleOfRect(rail)
  const [from, to] = code.top > rail.bottom ? [rail.bottom, code.top] : [code.bottom, rail.top]
  if (to - from < 1.5 || x < code.left || x > code.right) return []
  const points = [
    { x, y: from },
    { x, y: to },
  ]
  return [{ kind: 'line', points, pen: { ink: ink.rig, width: weight.a } }]
}

/** A rail may stand on a house, and its lettering then must: but whatever is clear of the deck's things is tried first. */
function clearFirst(places: readonly Lettered[], barred: readonly Rect[]): readonly Lettered[] {
  const isClear = ({ box }: Lettered) => !barred.some(other => rectsMeet(box, other))
  return [...places.filter(isClear), ...places.filter(place => !isClear(place))]
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

function thingBox(thing: DeckThing, { onSheet }: ChartLayout): Rect {
  const [a, b] = [onSheet(thing.x0, thing.y0), onSheet(thing.x1, thing.y1)]
  return rect(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.max(a.x, b.x), Math.max(a.y, b.y))
}

function mastPlaces(mast: Mast, at: Point, { scale }: ChartLayout, ruler: Ruler): readonly Lettered[] {
  const words = mast.label.toLowerCase()
  const radius = mastRadius(mast, scale)
  return [5.2, 7.5, 10, 13, 16, 20].flatMap(away =>
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

/** Within the thing if it holds its name, else below, above or beside it; over it rather than nowhere. */
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
  const at = (middle: Point) => level(words, middle, chartType.thing, ruler, ink.deck)
  const apart = (away: number) => [at({ x, y: box.bottom + away }), at({ x, y: box.top - away })]
  const beside = [at({ x: box.right + 1 + width / 2, y }), at({ x: box.left - 1 - width / 2, y })]
  return [
    ...inside,
    ...apart(2.3),
    ...beside.map(withRoomBeside),
    ...apart(3.6),
    ...brokenPlaces(words, box, ruler),
    ...apart(8),
    at({ x, y }),
  ]
}

/** Words that follow one another on a level with little room between are read as one. */
const withRoomBeside = ({ box: { left, right, top, bottom }, marks }: Lettered): Lettered => ({
  box: rect(left - 1, top, right + 1, bottom),
  marks,
})

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
