import type { Rig, Sail } from '../../rig/index.ts'
import { sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { bearingOf, type MeasuredStay, measuredStays, stayOf } from '../stays.ts'

/** Hanks of two sails may come so near each other on one stay, in metres, as to overlap on paper. */
const grace = 0.1

/** Two sails on one yard or one gaff, or along the same stretch of one stay. */
export const twoInOnePlace: Rule = {
  slug: 'sail/two-in-one-place',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const first = new Map<string, Sail>()
    for (const sail of rig.sails) {
      const bent = bentTo(rig, sail)
      if (bent === undefined) continue
      const other = first.get(bent)
      if (other) yield crowded(sail, other, `are both bent to the ${bent}`, bent)
      else first.set(bent, sail)
    }
    for (const [low, high] of overlapping(luffsOf(rig))) {
      const [one, other] = low.sail.span.start < high.sail.span.start ? [high, low] : [low, high]
      const much = `${shownLength(rig, overlap(low, high))} of the ${low.stay.name}`
      yield crowded(one.sail, other.sail, `take up the same ${much}`, low.stay.name)
    }
  },
}

/** The one yard or gaff that a sail's head is bent to. */
function bentTo(rig: Rig, sail: Sail): string | undefined {
  if (sail.kind === 'square') return sail.yard
  if (sail.kind !== 'fore-and-aft' || sail.class !== 'gaff sail') return undefined
  return sail.on.find(name => rig.sparAt.get(name)?.kind === 'gaff')
}

/** The stretch of its stay that a sail's luff takes up, in metres from the stay's foot. */
interface Hanked {
  readonly sail: Sail
  readonly stay: MeasuredStay
  readonly from: number
  readonly to: number
}

/** The luffs that are measured, from the lowest up. */
function luffsOf(rig: Rig): readonly Hanked[] {
  const stays = measuredStays(rig)
  const luffs = rig.sails.flatMap(sail => {
    const stay = stayOf(stays, sail)
    if (!stay || sail.kind !== 'fore-and-aft') return []
    const [from, to] = ['tack', 'head'].map(name => {
      const corner = sail.corners.find(one => one.name === name)
      return corner && bearingOf(stay.to, stay.from, corner.at)?.along
    })
    return from === undefined || to === undefined ? [] : [{ sail, stay, from, to }]
  })
  return luffs.sort((a, b) => a.from - b.from)
}

/** Each luff that begins below the end of one on the same stay, with that one. */
function overlapping(luffs: readonly Hanked[]): readonly (readonly [Hanked, Hanked])[] {
  const highest = new Map<string, Hanked>()
  return luffs.flatMap(luff => {
    const below = highest.get(luff.stay.name)
    if (!below || luff.to > below.to) highest.set(luff.stay.name, luff)
    return below && overlap(below, luff) > grace ? [[below, luff] as const] : []
  })
}

const overlap = (a: Hanked, b: Hanked): number => Math.min(a.to, b.to) - Math.max(a.from, b.from)

const crowded = (sail: Sail, other: Sail, how: string, on: string): Draft => ({
  at: sail.span,
  message: `${sentence(sail.name)} and the ${other.name} ${how}.`,
  aboard: 'The two can never be set together, and the orders, the areas and the balance count both.',
  remedy: `Set one of them elsewhere; or, where the one is bent in the other's stead, allow it and say so.`,
  related: [{ at: other.span, message: `the ${other.name} is said here` }],
  about: [sail.name, other.name, on],
})
