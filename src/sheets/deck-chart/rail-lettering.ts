import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { type Rect, rect } from '../plane.ts'
import type { Mark, Point } from '../sheet.ts'
import { capHeight, type Ruler, type Typeface } from '../typeface.ts'
import type { DeckRail } from './deck-rails.ts'
import { spaced } from './isotonic.ts'
import type { ChartLayout } from './layout.ts'
import { type Lettered, level, middleOfRect } from './level-words.ts'
import { chartType } from './type.ts'

/** Numbers of an inboard rail, fanned where its pins stand closer than the type. */
export function numberPlaces(rail: DeckRail, ruler: Ruler): readonly Lettered[] {
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
  const wide = ordered.reduce((most, { place }) => Math.max(most, ruler(place.pin, chartType.deckNumber)), 0)
  const marks = ordered.flatMap(({ place, at }, index): readonly Mark[] => {
    const y = (tops[index] ?? 0) + numberStep / 2
    const words = place.pin
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
  const wide = pins.reduce((most, { place }) => Math.max(most, ruler(place.pin, type)), 0) + 0.8
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
      lettered(ruler, { x, y: y + capHeight(type) / 2 }, place.pin, type, ink.ink, {
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
export function codePlaces(rail: DeckRail, { paper }: ChartLayout, ruler: Ruler): readonly Lettered[] {
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
