import { type Curve, cornersOf, type Rect } from '../plane.ts'
import type { Fill, Mark, PathStep, Pen, Point } from '../sheet.ts'

/** An open run of straight stretches. */
export const run = (points: readonly Point[], pen: Pen, id?: string): Mark => ({
  kind: 'line',
  ...(id === undefined ? {} : { id }),
  points,
  pen,
})

/** A closed figure of straight stretches. */
export const figure = (points: readonly Point[], fill: Fill | undefined, pen?: Pen): Mark => ({
  kind: 'line',
  points,
  closed: true,
  ...(fill ? { fill } : {}),
  ...(pen ? { pen } : {}),
})

export const block = (box: Rect, fill: Fill | undefined, pen?: Pen): Mark => figure(cornersOf(box), fill, pen)

export const disc = (at: Point, radius: number, fill: Fill | undefined, pen?: Pen): Mark => ({
  kind: 'circle',
  at,
  radius,
  ...(fill ? { fill } : {}),
  ...(pen ? { pen } : {}),
})

/** Marks of one thing, with its address and its name. */
export const thing = (id: string, title: string, marks: readonly Mark[]): Mark => ({
  kind: 'group',
  id,
  title,
  marks,
})

export const moveTo = ({ x, y }: Point): PathStep => ['M', x, y]
export const lineTo = ({ x, y }: Point): PathStep => ['L', x, y]
export const curveTo = (a: Point, b: Point, { x, y }: Point): PathStep => ['C', a.x, a.y, b.x, b.y, x, y]
export const curveStep = ([, a, b, end]: Curve): PathStep => curveTo(a, b, end)

/** Address of a thing: its kind, a point, its words joined by hyphens. */
export const addressOf = (kind: string, name: string): string =>
  `${kind}.${name.trim().replace(/[\s.]+/g, '-')}`
