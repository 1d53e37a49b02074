import type { DeckThing, Rig } from '../../rig/index.ts'
import { ink, weight } from '../ink.ts'
import type { Mark, PathStep, Pen, Point } from '../sheet.ts'
import type { ChartLayout } from './layout.ts'

const pen = (width: number, colour: string = ink.ink): Pen => ({ ink: colour, width, join: 'miter' })

/** Deck, planks, bulwark and bowsprit. */
export function hullMarks(rig: Rig, layout: ChartLayout): readonly Mark[] {
  const { hull } = layout
  if (!hull) return []
  const outline = edgeRun(layout, 0)
  return [
    { kind: 'line', points: outline, closed: true, fill: { ink: ink.deck } },
    ...planks(layout),
    {
      kind: 'line',
      points: edgeRun(layout, Math.min(0.16, 0.045 * hull.halfBeam)),
      closed: true,
      pen: pen(weight.a, ink.rig),
    },
    { kind: 'line', points: outline, closed: true, pen: { ink: ink.ink, width: weight.e, join: 'round' } },
    ...bowsprit(rig, layout),
  ]
}

/** The edge of the deck, so far within it; down the starboard side and up the port one. */
function edgeRun({ hull, onSheet }: ChartLayout, within: number): readonly Point[] {
  const edge = (hull?.edge ?? []).map(([x, y]) => [x, Math.max(0, y - within)] as const)
  return [...edge.map(([x, y]) => onSheet(x, y)), ...[...edge].reverse().map(([x, y]) => onSheet(x, -y))]
}

/** Seams every metre: they say that this is wood, and how it runs. */
function planks({ hull, onSheet }: ChartLayout): readonly Mark[] {
  if (!hull) return []
  const apart = Math.max(hull.halfBeam / 5, 0.1)
  const seams = [-4, -3, -2, -1, 0, 1, 2, 3, 4].map(index => index * apart)
  return seams.flatMap((y): readonly Mark[] => {
    const under = hull.edge.filter(([, half]) => half > Math.abs(y) + 0.2).map(([x]) => x)
    const [from] = under
    const to = under.at(-1)
    if (from === undefined || to === undefined) return []
    const points = [onSheet(from, y), onSheet(to, y)]
    return [{ kind: 'line', detail: 'plank', points, pen: pen(weight.a, ink.house) }]
  })
}

/** The bowsprit, broken short: all else is to scale. */
function bowsprit(rig: Rig, { hull, onSheet, scale }: ChartLayout): readonly Mark[] {
  const spar = rig.spars.find(each => each.kind === 'bowsprit')
  if (spar?.kind !== 'bowsprit' || !spar.inner || !hull || scale === undefined) return []
  const half = Math.max(0.6, ((spar.diameter ?? 0.3) * 500) / scale)
  const heel = onSheet(spar.inner.x, 0)
  const top = onSheet(hull.stem, 0).y - 14
  const { x } = heel
  const steps: readonly PathStep[] = [
    ['M', x - half, heel.y],
    ['L', x - half, top],
    ['L', x - half / 3, top - 1.6],
    ['L', x + half / 3, top + 0.6],
    ['L', x + half, top - 0.8],
    ['L', x + half, heel.y],
    ['Z'],
  ]
  return [{ kind: 'path', steps, fill: { ink: ink.paper }, pen: pen(weight.c) }]
}

/** A thing on deck as its kind looks from above. */
export function thingMarks(thing: DeckThing, layout: ChartLayout): readonly Mark[] {
  const { onSheet } = layout
  const [a, b] = [onSheet(thing.x0, thing.y0), onSheet(thing.x1, thing.y1)]
  const box = {
    left: Math.min(a.x, b.x),
    right: Math.max(a.x, b.x),
    top: Math.min(a.y, b.y),
    bottom: Math.max(a.y, b.y),
  }
  if (isRaisedDeck(thing)) return deckBreak(thing, layout)
  if (/boat/.test(thing.kind)) return boat(box)
  if (/helm|wheel/.test(thing.kind)) return wheel(box)
  if (/companion|ladder/.test(thing.kind)) return ladder(box)
  const edge = /house/.test(thing.kind) ? weight.d : weight.c
  return [rectangle(box, pen(edge), ink.house), ...(/hatch/.test(thing.kind) ? diagonals(box) : [])]
}

/** A raised deck is a break across the ship, not a thing that stands on her. */
export const isRaisedDeck = (thing: DeckThing): boolean => /deck/.test(thing.kind)

interface Box {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const rectangle = ({ left, right, top, bottom }: Box, edge: Pen, fill: string): Mark => ({
  kind: 'line',
  closed: true,
  fill: { ink: fill },
  pen: edge,
  points: [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ],
})

const diagonals = ({ left, right, top, bottom }: Box): readonly Mark[] => [
  {
    kind: 'line',
    points: [
      { x: left, y: top },
      { x: right, y: bottom },
    ],
    pen: pen(weight.a),
  },
  {
    kind: 'line',
    points: [
      { x: right, y: top },
      { x: left, y: bottom },
    ],
    pen: pen(weight.a),
  },
]

/** The break of a raised deck: its after edge, or the fore edge of one that runs to the stern. */
function deckBreak(thing: DeckThing, { hull, onSheet }: ChartLayout): readonly Mark[] {
  if (!hull) return []
  const x = (thing.x0 + thing.x1) / 2 < (hull.stem + hull.taffrail) / 2 ? thing.x1 : thing.x0
  const half = Math.max(0, hull.halfBreadth(x) - 0.1)
  return [{ kind: 'line', points: [onSheet(x, -half), onSheet(x, half)], pen: pen(weight.d) }]
}

/** Pointed forward, square aft, with her keel. */
function boat({ left, right, top, bottom }: Box): readonly Mark[] {
  const middle = (left + right) / 2
  const deep = bottom - top
  const steps: readonly PathStep[] = [
    ['M', middle, top],
    ['C', right - 0.2 * (right - left), top + 0.2 * deep, right, top + 0.4 * deep, right, top + 0.65 * deep],
    [
      'C',
      right,
      top + 0.85 * deep,
      right - 0.1 * (right - left),
      bottom,
      right - 0.2 * (right - left),
      bottom,
    ],
    ['L', left + 0.2 * (right - left), bottom],
    ['C', left + 0.1 * (right - left), bottom, left, top + 0.85 * deep, left, top + 0.65 * deep],
    ['C', left, top + 0.4 * deep, left + 0.2 * (right - left), top + 0.2 * deep, middle, top],
    ['Z'],
  ]
  return [
    { kind: 'path', steps, fill: { ink: ink.house }, pen: pen(weight.b) },
    {
      kind: 'line',
      points: [
        { x: middle, y: top },
        { x: middle, y: bottom },
      ],
      pen: pen(weight.a),
    },
  ]
}

/** A wheel from above is a bar across the ship on its box. */
function wheel({ left, right, top, bottom }: Box): readonly Mark[] {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2]
  const half = Math.max(1, (right - left) / 10)
  return [
    rectangle({ left: x - half, right: x + half, top, bottom }, pen(weight.b), ink.house),
    {
      kind: 'line',
      points: [
        { x: left, y },
        { x: right, y },
      ],
      pen: { ink: ink.ink, width: weight.f, cap: 'butt' },
    },
  ]
}

function ladder(box: Box): readonly Mark[] {
  const steps = Math.max(2, Math.min(6, Math.round((box.bottom - box.top) / 1.3)))
  const treads = Array.from(
    { length: steps - 1 },
    (_, index) => box.top + ((index + 1) / steps) * (box.bottom - box.top),
  )
  return [
    rectangle(box, pen(weight.b), ink.paper),
    ...treads.map(
      (y): Mark => ({
        kind: 'line',
        points: [
          { x: box.left, y },
          { x: box.right, y },
        ],
        pen: pen(weight.a),
      }),
    ),
  ]
}
