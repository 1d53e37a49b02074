import { type Boom, type Mast, onMast, type Rig } from '../../rig/index.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** A boom or a gaff that can't swing past the mast abaft its own. */
export const meetsNextMast: Rule = {
  slug: 'boom/meets-next-mast',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const spar of rig.spars) {
      if (spar.kind !== 'boom' && spar.kind !== 'gaff') continue
      const met = mastMet(rig, spar)
      if (!met) continue
      yield {
        at: spar.span,
        message: `${sentence(spar.name)} reaches ${shownLength(rig, met.reach)} from its mast, and the ${met.mast.name} stands ${shownLength(rig, met.room)} from there.`,
        aboard: 'It strikes the mast as it swings, and the sail can be neither jibed nor trimmed flat.',
        remedy: 'Check where it ends and where the mast is stepped.',
        related: [{ at: met.mast.span, message: `The ${met.mast.name} is stepped here.` }],
        about: [spar.name],
      }
    }
  },
}

/** The first mast abaft the spar's own that it reaches, level with its outer end. */
function mastMet(
  rig: Rig,
  { mast: own, outer }: Boom,
): { mast: Mast; reach: number; room: number } | undefined {
  const stands = rig.mastAt.get(own ?? '')
  const at = stands && outer && onMast(stands, outer.z)
  if (!at || !outer) return undefined
  for (const mast of rig.masts) {
    const next = onMast(mast, outer.z)
    const head = mast.sections.at(-1)?.head
    if (mast.name === own || !next || !head || head.z < outer.z || next.x <= at.x) continue
    const reach = outer.x - at.x
    const room = next.x - at.x - (mast.sections[0]?.diameter ?? 0) / 2
    if (reach > room) return { mast, reach, room }
  }
  return undefined
}
