import type { LineFunction } from '../rig/index.ts'
import { ink } from './ink.ts'
import type { Mark, PathStep, Pen, Point } from './sheet.ts'

/** What hauling a line does to the sail she carries: more of it, less of it, or neither. */
export type Answer = 'more' | 'less' | 'neither'

/** The eight deeds in the order of every key: what gives sail, what takes it away, what does neither. */
export const functionsInOrder: readonly LineFunction[] = [
  'hoists',
  'extends',
  'lowers',
  'clews',
  'gathers',
  'reefs',
  'turns',
  'keeps',
]

/** The letter that repeats the shape. P and S are left to the sides, O and I to the figures. */
export const functionLetter: Readonly<Record<LineFunction, string>> = {
  hoists: 'H',
  extends: 'E',
  lowers: 'L',
  clews: 'C',
  gathers: 'G',
  reefs: 'R',
  turns: 'T',
  keeps: 'K',
}

/** The deed as a key words it, after "what hauling does". */
export const functionWords: Readonly<Record<LineFunction, string>> = {
  hoists: 'hoists',
  extends: 'extends a corner',
  lowers: 'lowers',
  clews: 'clews up a corner',
  gathers: 'gathers the cloth',
  reefs: 'reefs',
  turns: 'turns a spar',
  keeps: 'keeps it still',
}

/** Whether hauling a line of this deed gives her more sail or less. */
export const functionAnswer: Readonly<Record<LineFunction, Answer>> = {
  hoists: 'more',
  extends: 'more',
  lowers: 'less',
  clews: 'less',
  gathers: 'less',
  reefs: 'less',
  turns: 'neither',
  keeps: 'neither',
}

/** Blue for more sail, rust for less, ink for neither: colour answers that one question, after shape and letter. */
export function functionInk(deed: LineFunction): string {
  const answer = functionAnswer[deed]
  return answer === 'more' ? ink.more : answer === 'less' ? ink.less : ink.ink
}

/**
 * The mark of a deed, upright on a square of half-side `k` millimetres about `centre`. It is never mirrored
 * or turned, not even where the names are. Shapes and figures are Crosstree's own.
 */
export function functionMark(
  deed: LineFunction,
  centre: Point,
  k: number,
  colour = functionInk(deed),
): readonly Mark[] {
  const draw = brush(centre, k, colour)
  switch (deed) {
    case 'hoists':
      return [
        draw.solid([
          [0, -1],
          [0.98, 0.86],
          [-0.98, 0.86],
        ]),
      ]
    case 'extends':
      return [
        draw.solid([
          [-1.12, 0],
          [-0.17, -0.98],
          [-0.17, 0.98],
        ]),
        draw.solid([
          [1.12, 0],
          [0.17, 0.98],
          [0.17, -0.98],
        ]),
      ]
    case 'lowers':
      return [
        draw.open(
          [
            [-0.84, -0.86],
            [0.84, -0.86],
            [0, 0.5],
          ],
          0.32,
        ),
        draw.bar(-0.95, 0.68, 1.9, 0.34),
      ]
    case 'clews':
      return [draw.bag(0.72, 1.4, -0.62, 0.34), draw.bar(-1.08, -0.98, 2.16, 0.42)]
    case 'gathers':
      return [
        draw.open(
          [
            [-0.98, -0.82],
            [0.98, 0.82],
            [0.98, -0.82],
            [-0.98, 0.82],
          ],
          0.34,
        ),
      ]
    case 'reefs':
      return [draw.bar(-1, -0.87, 2, 0.58), draw.bar(-1, 0.29, 2, 0.58)]
    case 'turns':
      return [draw.disc(0.62), draw.stroke([-1.08, 0.7], [1.08, -0.7], 0.32)]
    case 'keeps':
      return [draw.bar(-0.8, -0.8, 1.6, 1.6)]
  }
}

type Place = readonly [number, number]

/** Shapes in units of the half-side, so that the figures above read as the code's own table has them. */
function brush(centre: Point, k: number, colour: string) {
  const at = ([x, y]: Place): Point => ({ x: centre.x + x * k, y: centre.y + y * k })
  const pen = (width: number): Pen => ({ ink: colour, width: width * k, join: 'round', cap: 'butt' })
  const fill = { ink: colour }
  return {
    solid: (places: readonly Place[]): Mark => ({ kind: 'line', points: places.map(at), closed: true, fill }),
    open: (places: readonly Place[], width: number): Mark => ({
      kind: 'line',
      points: places.map(at),
      closed: true,
      pen: pen(width),
    }),
    bar: (x: number, y: number, w: number, h: number): Mark => ({
      kind: 'line',
      points: [at([x, y]), at([x + w, y]), at([x + w, y + h]), at([x, y + h])],
      closed: true,
      fill,
    }),
    disc: (radius: number): Mark => ({ kind: 'circle', at: centre, radius: radius * k, fill }),
    stroke: (from: Place, to: Place, width: number): Mark => ({
      kind: 'line',
      points: [at(from), at(to)],
      pen: pen(width),
    }),
    bag: (half: number, depth: number, top: number, width: number): Mark => ({
      kind: 'path',
      steps: halfEllipse(at, half, depth, top),
      pen: pen(width),
    }),
  }
}

/** Two quarter ellipses hung from `top`; 0.5523 makes a cubic follow a quarter of a circle within 0.03 %. */
function halfEllipse(
  at: (place: Place) => Point,
  half: number,
  depth: number,
  top: number,
): readonly PathStep[] {
  const arm = 0.5523
  const point = (x: number, y: number) => {
    const { x: px, y: py } = at([x, y])
    return [px, py] as const
  }
  const foot = top + depth
  return [
    ['M', ...point(-half, top)],
    ['C', ...point(-half, top + arm * depth), ...point(-arm * half, foot), ...point(0, foot)],
    ['C', ...point(arm * half, foot), ...point(half, top + arm * depth), ...point(half, top)],
  ]
}
