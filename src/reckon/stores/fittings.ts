import {
  type Figure,
  type Kilograms,
  kilograms,
  type Metres,
  metres,
  type SquareMetres,
  squareMetres,
  workedFrom,
} from '../../measure/index.ts'
import type { Rig } from '../../rig/index.ts'
import type { Figures } from '../figures.ts'
import { canvasNumber, canvasWeight, listOf } from '../sails/index.ts'
import type { Cordage } from './cordage.ts'

/** Belaying pins of one thickness. */
export interface Pins {
  readonly diameter: Metres
  readonly length: Metres
  readonly count: number
  readonly rails: readonly string[]
}

/** A pin is one and a half to twice as thick and fourteen to eighteen times as long as its rope: common practice, no source. */
const pinToRope = { diameter: 1.5, length: 14 }

/** The pins of all rails that have pins, by the thickest rope on the rail or on its mirror: pins of one rail are changed about. */
export function pinsOf(rig: Rig): readonly Pins[] {
  const found = new Map<number, { rope: number; count: number; rails: string[] }>()
  const thickest = new Map<string, number>()
  for (const { name, places } of rig.rails) {
    const ropes = places.flatMap(place =>
      place.lines.map(address => rig.lineAt.get(address)?.rope?.diameter ?? 0),
    )
    thickest.set(name, Math.max(thickest.get(name) ?? 0, ...ropes))
  }
  for (const rail of rig.rails) {
    if (/cleat|kevel|cavil|bitts|bollard/.test(rail.kind)) continue
    const rope = thickest.get(rail.name) ?? 0
    if (rope === 0) continue
    const pins = found.get(rope) ?? { rope, count: 0, rails: [] }
    pins.count += rail.places.length
    pins.rails.push(rail.code)
    found.set(rope, pins)
  }
  return [...found.values()]
    .sort((a, b) => b.rope - a.rope)
    .map(({ rope, count, rails }) => ({
      diameter: metres(pinToRope.diameter * rope),
      length: metres(pinToRope.length * rope),
      count,
      rails,
    }))
}

/** One thimble where each rope ends aloft, by the rope's thickness: common practice, no source. */
export function thimblesOf(
  cordage: readonly Cordage[],
): readonly { readonly rope: Metres; readonly count: number }[] {
  const counts = new Map<Metres, number>()
  for (const { diameter, cuts } of cordage) counts.set(diameter, (counts.get(diameter) ?? 0) + cuts.length)
  return [...counts].sort(([a], [b]) => b - a).map(([rope, count]) => ({ rope, count }))
}

/** Canvas of one number and width. */
export interface Canvas {
  /** The list that numbers it: 'cotton duck'. */
  readonly list: string
  readonly number: number
  readonly width: Metres
  /** Of the sails made of it, both of a pair of studdingsails. */
  readonly area: SquareMetres
  /** Length of the cloth as it comes off the bolt. */
  readonly cloth: Metres
  /** Of that cloth, dry. */
  readonly mass: Figure<Kilograms>
  readonly sails: readonly string[]
}

/** A tenth more than the area goes into seams, tablings and linings: common practice, no source. */
const madeUp = 1.1

/** Canvas by list, number and width for all sails whose area is known; of one width where a sail says none. */
export function canvasOf(
  rig: Rig,
  { sails, assumptions }: Pick<Figures, 'sails' | 'assumptions'>,
  usualWidth: Metres,
): readonly Canvas[] {
  const found = new Map<
    string,
    Pick<Canvas, 'list' | 'number' | 'width'> & { area: number; sails: string[] }
  >()
  for (const sail of rig.sails) {
    const area = sails.get(sail.name)?.area
    if (!area?.known) continue
    const kind = {
      list: listOf(sail, assumptions.canvas),
      number: canvasNumber(sail),
      width: sail.cloth.width ?? usualWidth,
    }
    const key = `${kind.list} ${kind.number} ${kind.width.toFixed(4)}`
    const canvas = found.get(key) ?? { ...kind, area: 0, sails: [] }
    canvas.area += area.value * (sail.kind === 'studdingsail' ? 2 : 1)
    canvas.sails.push(sail.label)
    found.set(key, canvas)
  }
  return [...found.values()]
    .sort((a, b) => a.number - b.number || (a.list < b.list ? -1 : 1))
    .map(({ area, ...canvas }) => ({
      ...canvas,
      area: squareMetres(area),
      cloth: metres((area * madeUp) / canvas.width),
      mass: workedFrom([canvasWeight(canvas.list, canvas.number)], weight =>
        kilograms(area * madeUp * weight),
      ),
    }))
}
