import type { Act } from '../../rig/index.ts'
import { lettered } from '../lettered.ts'
import type { Mark, PathStep, Point } from '../sheet.ts'
import { capHeight, type Ruler, type Typeface } from '../typeface.ts'
import { black, rule, white } from './type.ts'

/** The actions that have a mark. A line stood by is manned and not yet worked: it has words only. */
export type MarkedAct = Exclude<Act, 'stand by'>

/** What a hand does, as the word-blocks and the lists say it. */
export const actWord: Readonly<Record<MarkedAct, string>> = {
  haul: 'Haul',
  ease: 'Ease',
  'let go': 'Let go',
  hold: 'Hold',
  tend: 'Tend',
}

/**
 * The mark of an action, in a square of half-side k about its centre. Actions are arrows with a shaft, so that
 * they can't be taken for the shaftless marks of what a line does, not even turned on their side.
 */
export function actionMark(act: MarkedAct, centre: Point, k: number, ink: string = black): readonly Mark[] {
  return drawings[act]((x, y) => [centre.x + x * k, centre.y + y * k], k, ink)
}

/** A word-block of an action: its outline differs as much as its mark. `at` is the upper left corner. */
export function actionBlock(
  act: MarkedAct,
  at: Point,
  size: { readonly width: number; readonly height: number },
  type: Typeface,
  ruler: Ruler,
): readonly Mark[] {
  const ink = act === 'haul' ? white : black
  const middle = at.y + size.height / 2
  const k = capHeight(type) * 0.62
  const base = { x: at.x + 2.5 + k + 1, y: middle + capHeight(type) / 2 }
  return [
    ...blockOutline(act, at, size),
    ...actionMark(act, { x: at.x + 2.5, y: middle }, act === 'tend' ? k * 0.9 : k, ink),
    lettered(ruler, base, actWord[act].toUpperCase(), type, ink),
  ]
}

type Place = (x: number, y: number) => readonly [number, number]
type Drawing = (place: Place, k: number, ink: string) => readonly Mark[]

const shape = (place: Place, corners: readonly (readonly [number, number])[]): readonly PathStep[] => [
  ...corners.map(([x, y], index): PathStep => [index === 0 ? 'M' : 'L', ...place(x, y)]),
  ['Z'],
]

const mirrored = (half: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] => [
  ...half,
  ...[...half].reverse().map(([x, y]): readonly [number, number] => [-x, y]),
]

const solid = (place: Place, ink: string, half: readonly (readonly [number, number])[]): Mark => ({
  kind: 'path',
  steps: shape(place, mirrored(half)),
  fill: { ink },
})

const drawings: Readonly<Record<MarkedAct, Drawing>> = {
  haul: (place, _k, ink) => [
    solid(place, ink, [
      [0.44, -1],
      [0.44, -0.06],
      [1.06, -0.06],
      [0, 1],
    ]),
  ],
  ease: (place, k, ink) => [
    {
      kind: 'path',
      steps: shape(
        place,
        mirrored([
          [0, -0.9],
          [0.98, 0.08],
          [0.4, 0.08],
          [0.4, 0.9],
        ]),
      ),
      pen: { ink, width: 0.24 * k, join: 'miter' },
    },
  ],
  'let go': (place, k, ink) => [chevron(place, k, ink, -0.86), chevron(place, k, ink, -0.02)],
  hold: (place, _k, ink) => [
    solid(place, ink, [
      [0.8, -0.9],
      [0.8, -0.5],
      [0.26, -0.5],
      [0.26, 0.5],
      [0.8, 0.5],
      [0.8, 0.9],
    ]),
  ],
  tend: (place, _k, ink) => [
    solid(place, ink, [
      [0, -1],
      [0.68, -0.32],
      [0.18, -0.32],
      [0.18, 0.32],
      [0.68, 0.32],
      [0, 1],
    ]),
  ],
}

function chevron(place: Place, k: number, ink: string, top: number): Mark {
  const corner = (x: number, y: number): Point => {
    const [px, py] = place(x, y)
    return { x: px, y: py }
  }
  return {
    kind: 'line',
    points: [corner(-0.98, top + 0.86), corner(0, top), corner(0.98, top + 0.86)],
    pen: { ink, width: 0.3 * k, join: 'miter', cap: 'butt' },
  }
}

function blockOutline(
  act: MarkedAct,
  { x, y }: Point,
  { width, height }: { readonly width: number; readonly height: number },
): readonly Mark[] {
  const pen = { ink: black, width: rule.box }
  const inset = rule.box / 2
  const box = (extra: number): readonly Point[] => [
    { x: x + inset + extra, y: y + inset },
    { x: x + width - inset - extra, y: y + inset },
    { x: x + width - inset - extra, y: y + height - inset },
    { x: x + inset + extra, y: y + height - inset },
  ]
  switch (act) {
    case 'haul':
      return [{ kind: 'line', points: box(-inset), closed: true, fill: { ink: black } }]
    case 'ease':
      return [{ kind: 'line', points: box(0), closed: true, pen }]
    case 'let go':
      return [{ kind: 'line', points: box(0), closed: true, pen: { ...pen, dash: [1.1, 0.6] } }]
    case 'hold':
      return [
        { kind: 'line', points: box(0), closed: true, pen },
        end(x, y, height),
        end(x + width - 0.9, y, height),
      ]
    case 'tend':
      return [
        { kind: 'path', steps: capsule(x + inset, y + inset, width - 2 * inset, height - 2 * inset), pen },
      ]
  }
}

const end = (x: number, y: number, height: number): Mark => ({
  kind: 'line',
  points: [
    { x, y },
    { x: x + 0.9, y },
    { x: x + 0.9, y: y + height },
    { x, y: y + height },
  ],
  closed: true,
  fill: { ink: black },
})

function capsule(x: number, y: number, width: number, height: number): readonly PathStep[] {
  const r = height / 2
  const h = r * 0.5523
  return [
    ['M', x + r, y],
    ['L', x + width - r, y],
    ['C', x + width - r + h, y, x + width, y + r - h, x + width, y + r],
    ['C', x + width, y + r + h, x + width - r + h, y + height, x + width - r, y + height],
    ['L', x + r, y + height],
    ['C', x + r - h, y + height, x, y + r + h, x, y + r],
    ['C', x, y + r - h, x + r - h, y, x + r, y],
    ['Z'],
  ]
}
