import { type Figure, known, type Radians, radians, unknown } from '../../measure/index.ts'
import type { Rig, StandingRigging, Yard } from '../../rig/index.ts'

/** How sharp a yard can be braced, from fore and aft, and what stops it there. */
export interface BraceLimit {
  readonly angle: Radians
  /** 'fore topmast backstays'; 'as the text says'. */
  readonly stoppedBy: string
}

const degrees = (n: number): Radians => radians((n * Math.PI) / 180)

/** Sharpest that yards of a late rig are braced, 32 to 36 degrees from fore and aft; 38 to 42 in an older one. Common practice, no source. */
export const usualLimit = degrees(36)

/** No yard is braced sharper than this: W. H. Smyth, The Sailor's Word-Book, 1867, "brace sharp". */
export const sharpestEver = degrees(20)

/** How sharp a yard goes: as the text says, else as the rigging lets it. */
export const limitOf = (yard: Yard, rig: Pick<Rig, 'standing'>): Figure<BraceLimit> =>
  yard.bracesTo === undefined
    ? braceLimit(yard, rig)
    : known({ angle: yard.bracesTo, stoppedBy: 'as the text says' })

/**
 * The sharpest that a yard swings before its lee arm meets a shroud or a backstay. Unknown of a fixed yard, since no
 * text says how far its truss or crane holds it off the mast. `bracing.md` has the method.
 */
export function braceLimit(yard: Yard, { standing }: Pick<Rig, 'standing'>): Figure<BraceLimit> {
  const { middle, length } = yard
  if (!middle || length === undefined) return unknown(`The ${yard.name} is given no length or no height.`)
  if (!yard.hoists) return unknown(`How far its truss holds the ${yard.name} off the mast is not said.`)
  const limits = standing.flatMap(part => {
    const at = part.kind === 'stay' ? undefined : crossing(part, middle.z)
    const abaft = (at?.x ?? 0) - middle.x
    if (!at || abaft <= 0) return []
    const far = Math.hypot(abaft, at.y)
    if (far > length / 2) return []
    const thick = ((yard.diameter ?? 0) + (part.diameter ?? 0)) / 2
    const angle = Math.atan2(at.y, abaft) + Math.asin(Math.min(1, thick / far))
    return [{ angle: radians(Math.min(angle, Math.PI / 2)), stoppedBy: part.name }]
  })
  const [first] = limits.toSorted((a, b) => b.angle - a.angle)
  return first ? known(first) : unknown(`No shroud or backstay that is told of stops the ${yard.name}.`)
}

/** Where the foremost part of a bank passes a height, to starboard. */
function crossing(
  part: StandingRigging,
  height: number,
): { readonly x: number; readonly y: number } | undefined {
  const { from, to } = part
  if (!from || !to) return undefined
  const share = (from.z - height) / (from.z - to.z)
  if (!(share >= 0 && share <= 1)) return undefined
  return { x: from.x + (to.x - from.x) * share, y: Math.abs(from.y + (to.y - from.y) * share) }
}
