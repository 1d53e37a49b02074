import { allSail } from '../title-rows.ts'
import type { OnPlan } from './key-entries.ts'
import type { Ship } from './ship.ts'
import { standingByRule } from './standing-by-rule.ts'

/** What stands on the plan of a ship, for its key. */
export function onPlan({ rig, lines, view, sails, edges, centres }: Ship): OnPlan {
  const isForeAndAft = ({ sail }: (typeof sails)[number]) => sail.kind === 'fore-and-aft'
  return {
    squares: !sails.every(isForeAndAft),
    foreAndAft: sails.some(isForeAndAft),
    reefs: sails.some(({ sail }) => sail.reefs.length > 0),
    standing: rig.standing.some(({ from, to }) => from && to),
    byRule: lines !== undefined && standingByRule(rig, lines, view).length > 0,
    hullByRule: lines !== undefined && !lines.isRecorded,
    hidden: edges.some(({ hidden }) => hidden.length > 0),
    conjectural: [...rig.masts, ...rig.spars, ...rig.standing, ...rig.sails].some(
      ({ conjectural }) => conjectural,
    ),
    sum: allSail(rig),
    effort: centres.effort !== undefined,
    lateral: centres.lateral !== undefined,
  }
}
