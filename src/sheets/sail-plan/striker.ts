import type { Rig } from '../../rig/index.ts'
import { ink, weight } from '../ink.ts'
import type { Mark } from '../sheet.ts'
import type { HullLines } from './hull-lines.ts'
import { isSoberPoint } from './sober.ts'
import { figure, thing } from './strokes.ts'
import type { View } from './view.ts'

/** The dolphin striker: a short spar square to the bowsprit, down to the recorded place of its foot. */
export function strikerMarks(
  { spars }: Rig,
  { dolphinStriker: foot }: HullLines,
  { at }: View,
): readonly Mark[] {
  const bowsprit = spars.find(spar => spar.kind === 'bowsprit')
  if (!foot || bowsprit?.kind !== 'bowsprit') return []
  const { inner, outer } = bowsprit
  if (!inner || !outer || !isSoberPoint(inner) || !isSoberPoint(outer)) return []
  const [dx, dz] = [outer.x - inner.x, outer.z - inner.z]
  const square = dx * dx + dz * dz
  if (square === 0) return []
  const share = ((foot.x - inner.x) * dx + (foot.z - inner.z) * dz) / square
  const head = { x: inner.x + share * dx, z: inner.z + share * dz }
  const half = 0.011 * Math.hypot(head.x - foot.x, head.z - foot.z) + 0.03
  return [
    thing('dolphin-striker', 'Dolphin striker', [
      figure(
        [
          at(head.x - 1.6 * half, head.z),
          at(foot.x - half, foot.z),
          at(foot.x + half, foot.z),
          at(head.x + 1.6 * half, head.z),
        ],
        { ink: ink.paper },
        { ink: ink.ink, width: weight.b, join: 'round' },
      ),
    ]),
  ]
}
