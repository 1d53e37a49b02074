import type { Mast, Rig, Shrouds } from '../../rig/index.ts'
import type { Mark } from '../sheet.ts'
import { capAt, type HullLines } from './hull-lines.ts'
import { sectionShapes } from './mast-shape.ts'
import { isSober } from './sober.ts'
import { byRulePen, ratlines } from './standing.ts'
import { axisAt, type StandingLine } from './standing-lines.ts'
import { addressOf, run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** Shrouds, backstays and bobstay of a rig that records none, dashed: common practice, no source. */
export function standingByRule(rig: Rig, hull: HullLines, view: View): readonly Mark[] {
  const ruled = rig.masts.flatMap(mast => (wantsNone(mast, rig) ? [] : mastByRule(mast, hull, view)))
  return [...ruled, ...bobstay(rig, hull, view)]
}

/** Whether a mast wants none by rule: the text records some, or says that it has none. */
function wantsNone(mast: Mast, { standing }: Rig): boolean {
  if (!mast.hasShrouds) return true
  const foot = mast.foot
  return standing.some(
    (item): item is Shrouds =>
      item.kind !== 'stay' &&
      !!item.from &&
      !!foot &&
      Math.abs(item.from.x - foot.x) < 0.1 * item.from.z + 1.5,
  )
}

function mastByRule(mast: Mast, hull: HullLines, view: View): readonly Mark[] {
  const sections = sectionShapes(mast)
  const [lower, ...upper] = sections
  if (!lower) return []
  const isSmall = hull.length < 35
  const [count, apart] = isSmall ? [4, 0.62] : [5, 1.05]
  const hounds = upper[0]?.foot.z ?? lower.foot.z + 0.9 * (lower.head.z - lower.foot.z)
  const chain = (aft: number): StandingLine['to'] => {
    const x = lower.foot.x + aft
    return { x, z: capAt(hull, x) + 0.15 }
  }
  const shrouds = Array.from(
    { length: count },
    (_, i): StandingLine => ({ from: { x: axisAt(lower, hounds), z: hounds }, to: chain(0.4 + i * apart) }),
  )
  const backstays = upper.map((section, i): StandingLine => {
    const z = section.foot.z + 0.92 * (section.head.z - section.foot.z)
    return { from: { x: axisAt(section, z), z }, to: chain(0.4 + (count + 0.4 + i) * apart) }
  })
  const lines = [...shrouds, ...backstays].map(({ from, to }) =>
    run([view.at(from.x, from.z), view.at(to.x, to.z)], byRulePen),
  )
  const name = `${mast.label}: shrouds and backstays, by rule`
  return [thing(addressOf('standing-by-rule', mast.name), name, [...ratlines(shrouds, view), ...lines])]
}

/** From the stem near the waterline to the bowsprit, over the dolphin striker where she has one. */
function bobstay(
  { spars, standing }: Rig,
  { stemHead, dolphinStriker }: HullLines,
  { at }: View,
): readonly Mark[] {
  const isRecorded = standing.some(({ name }) => /\b(bobstay|martingale)/.test(name))
  const bowsprit = spars.find(spar => spar.kind === 'bowsprit')
  if (isRecorded || bowsprit?.kind !== 'bowsprit' || !bowsprit.inner || !bowsprit.outer) return []
  const { inner, outer } = bowsprit
  if (![inner.x, inner.z, outer.x, outer.z].every(isSober) || outer.x >= stemHead.x) return []
  const stem = at(0.1 * stemHead.x, 0.22 * stemHead.z)
  const end = at(outer.x + 0.3, outer.z)
  const ropes = dolphinStriker ? [[stem, at(dolphinStriker.x, dolphinStriker.z), end]] : [[stem, end]]
  return [
    thing(
      'bobstay-by-rule',
      'Bobstay, by rule',
      ropes.map(points => run(points, byRulePen)),
    ),
  ]
}
