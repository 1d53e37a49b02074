import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import type { Fill, Mark, PathStep, Pen, Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import { capHeight } from '../typeface.ts'
import type { StripFrame } from './frame.ts'
import { freeDash } from './head.ts'
import type { StripPlan } from './plan.ts'

/** How a place is shown: in use, free, or not told, as on a blank. */
export type PinState = 'in use' | 'free' | 'not told'

/** The plank, from end to end; an end that is broken says that the rail goes on. */
export function plank(
  plan: StripPlan,
  frame: StripFrame,
  goesOn: { left: boolean; right: boolean },
): readonly Mark[] {
  const { plankTop: top, plankFoot: foot } = plan.heights
  const { left, right } = plankEnds(plan, frame)
  const points = [...brokenEnd(left, foot, top, goesOn.left), ...brokenEnd(right, top, foot, goesOn.right)]
  const grain = [0.25, 0.75].map(share => {
    const y = top + share * (foot - top)
    const pen: Pen = { ink: ink.squareCloth, width: weight.a }
    return {
      kind: 'line',
      detail: 'plank',
      points: [
        { x: left + 0.4, y },
        { x: right - 0.4, y },
      ],
      pen,
    } as const
  })
  return [
    { kind: 'line', points, closed: true, fill: { ink: ink.railPlank } },
    ...grain,
    { kind: 'line', points, closed: true, pen: { ink: ink.ink, width: weight.e, join: 'miter' } },
  ]
}

/** A rail that fills the sheet runs from margin to margin; a short one ends a little past its outer pins. */
function plankEnds({ columns, pitch, scale }: StripPlan, frame: StripFrame): { left: number; right: number } {
  const reach = Math.min(pitch / 2, 23 * scale)
  const first = (columns[0] ?? 0) - reach
  const last = (columns.at(-1) ?? 0) + reach
  if (first - frame.columnsLeft < 1) return { left: frame.left + 1.9, right: frame.right - 1.9 }
  const over = 4 * scale
  return { left: Math.max(frame.left + 1.9, first - over), right: Math.min(frame.right - 1.9, last + over) }
}

function brokenEnd(x: number, from: number, to: number, isBroken: boolean): readonly Point[] {
  if (!isBroken)
    return [
      { x, y: from },
      { x, y: to },
    ]
  return Array.from({ length: 5 }, (_, index) => ({
    x: x + (index % 2 === 0 ? 0.9 : -0.9),
    y: from + (index / 4) * (to - from),
  }))
}

/** A pin, or the kevel or cleat that a rail of one place is, standing on the plank with its number. */
export function pinOnPlank(
  plan: StripPlan,
  { x, number, kind, state }: { x: number; number: string; kind: string; state: PinState },
  ruler: Ruler,
): readonly Mark[] {
  const { plankTop, plankFoot } = plan.heights
  const type = plan.type.number
  const look = lookOf(state)
  const at = shapeAt({ x, y: plankTop }, plan.scale)
  const baseline = (plankTop + plankFoot) / 2 + capHeight(type) / 2
  return [
    { kind: 'path', steps: headOf(kind, at), ...look },
    ...(isTimber(kind) ? [] : [tail(x, plankFoot, plan.scale, state)]),
    lettered(ruler, { x, y: baseline }, number, type, state === 'free' ? ink.rig : ink.ink, {
      anchor: 'middle',
    }),
  ]
}

function lookOf(state: PinState): { fill?: Fill; pen?: Pen } {
  if (state === 'in use') return { fill: { ink: ink.ink } }
  const pen: Pen = { ink: ink.ink, width: weight.c }
  return { pen: state === 'free' ? { ...pen, dash: freeDash } : pen }
}

type At = (x: number, y: number) => readonly [number, number]

const shapeAt =
  (foot: Point, scale: number): At =>
  (x, y) => [foot.x + x * scale, foot.y + y * scale]

const isTimber = (kind: string): boolean => /kevel|cavil|cleat/.test(kind)

/** The head of a pin; or the horns of a kevel or cleat. */
function headOf(kind: string, at: At): readonly PathStep[] {
  if (/kevel|cavil/.test(kind)) return kevel(at)
  return /cleat/.test(kind) ? cleat(at) : pinHead(at)
}

/** What of a pin is seen under the plank; too small for dashes where it is free. */
function tail(x: number, top: number, scale: number, state: PinState): Mark {
  const look = state === 'in use' ? { fill: { ink: ink.ink } } : { pen: { ink: ink.ink, width: weight.b } }
  const [left, right] = [x - 0.75 * scale, x + 0.75 * scale]
  const foot = top + 3.1 * scale
  const head = top + weight.e / 2
  const points = [
    { x: left, y: head },
    { x: left, y: foot },
    { x: right, y: foot },
    { x: right, y: head },
  ]
  return { kind: 'line', points, closed: state === 'in use', ...look }
}

function pinHead(at: At): readonly PathStep[] {
  return [
    ['M', ...at(-1.2, 0)],
    ['C', ...at(-1.35, -3.2), ...at(-1.98, -4.6), ...at(-1.98, -7.6)],
    ['C', ...at(-1.98, -11), ...at(-1.1, -12.9), ...at(0, -12.9)],
    ['C', ...at(1.1, -12.9), ...at(1.98, -11), ...at(1.98, -7.6)],
    ['C', ...at(1.98, -4.6), ...at(1.35, -3.2), ...at(1.2, 0)],
    ['Z'],
  ]
}

/** Two stout horns spreading from a timber. */
function kevel(at: At): readonly PathStep[] {
  return [
    ['M', ...at(-5.2, 0)],
    ['C', ...at(-6.4, -4), ...at(-9.4, -8), ...at(-10.6, -11.6)],
    ['C', ...at(-10.2, -13), ...at(-7.6, -13), ...at(-7, -11.8)],
    ['C', ...at(-5.4, -8.4), ...at(-3.4, -5.4), ...at(0, -5.4)],
    ['C', ...at(3.4, -5.4), ...at(5.4, -8.4), ...at(7, -11.8)],
    ['C', ...at(7.6, -13), ...at(10.2, -13), ...at(10.6, -11.6)],
    ['C', ...at(9.4, -8), ...at(6.4, -4), ...at(5.2, 0)],
    ['Z'],
  ]
}

/** Two arms from a foot, as a cleat is seen from the side. */
function cleat(at: At): readonly PathStep[] {
  return [
    ['M', ...at(-3.4, 0)],
    ['C', ...at(-3.4, -2.4), ...at(-3.6, -3.6), ...at(-5.6, -4.4)],
    ['C', ...at(-8, -5.2), ...at(-10.4, -6), ...at(-11.6, -7.6)],
    ['C', ...at(-12, -8.8), ...at(-10.8, -9.4), ...at(-9.6, -9.2)],
    ['C', ...at(-5.6, -8.4), ...at(-2.6, -8), ...at(0, -8)],
    ['C', ...at(2.6, -8), ...at(5.6, -8.4), ...at(9.6, -9.2)],
    ['C', ...at(10.8, -9.4), ...at(12, -8.8), ...at(11.6, -7.6)],
    ['C', ...at(10.4, -6), ...at(8, -5.2), ...at(5.6, -4.4)],
    ['C', ...at(3.6, -3.6), ...at(3.4, -2.4), ...at(3.4, 0)],
    ['Z'],
  ]
}
