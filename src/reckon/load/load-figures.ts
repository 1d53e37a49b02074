import { type Figure, type Newtons, newtons, onceKnown, unknown, workedFrom } from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import type { Assumptions } from '../assumptions.ts'
import type { LeadFigures } from '../leads/index.ts'
import { type Strength, shareLeft, strengthOf } from '../rope/index.ts'
import { handsFor, pullRatio, type Tackle, tackleOf } from '../tackle/index.ts'
import { type LineLoad, type Loads, lineLoad } from './line-load.ts'
import type { SailLoad } from './sail-load.ts'
import { workOf } from './work.ts'

/** What a line works against, what it takes to haul it, and what its rope is good for. */
export interface LoadFigures {
  readonly load: Figure<LineLoad>
  readonly tackle: Figure<Tackle>
  /** Lead blocks that the fall turns over, beside the sheaves of its tackle. */
  readonly leads: Figure<number>
  /** On the fall while it is hauled, friction and all. */
  readonly pull: Figure<Newtons>
  /** Hands to haul it steadily. */
  readonly hands: Figure<number>
  /** In the part that bears most, at the worst. */
  readonly strain: Figure<Newtons>
  /** Of its rope when new, without knots. */
  readonly strength: Figure<Strength>
  /** What is left of the strength over the strain. */
  readonly safety: Figure<number>
}

/** What the loads of lines are worked from. */
export interface LoadGrounds {
  readonly sails: ReadonlyMap<string, Figure<SailLoad>>
  readonly leads: ReadonlyMap<string, LeadFigures>
  readonly assumptions: Assumptions
}

/** The loads of every line, by its address, in the order of the text. `load.md` has the method. */
export function loadFigures(rig: Rig, grounds: LoadGrounds): ReadonlyMap<string, LoadFigures> {
  const { sails, leads, assumptions } = grounds
  const workOn = workOf(rig)
  const loads: Loads = {
    sail: ({ sail, deed }) =>
      sails.get(sail?.name ?? '') ?? unknown(`No sail is bent to the ${deed.object} that it works.`),
    timber: assumptions.timber,
  }
  const loadOn = (line: Line): Figure<LineLoad> => {
    const work = workOn(line)
    return work ? lineLoad(work, loads) : unknown('What it does is not said.')
  }
  return new Map(
    rig.lines.map(line => [
      line.address,
      figuresOf(line, loadOn(line), leads.get(line.address), assumptions),
    ]),
  )
}

function figuresOf(
  line: Line,
  load: Figure<LineLoad>,
  lead: LeadFigures | undefined,
  { friction, hands, end, age }: Assumptions,
): LoadFigures {
  const tackle = tackleOf(line.purchase)
  const leads = workedFrom([tackle, lead?.way ?? unknown('Its lead is not given.')], (tackle, way) =>
    leadBlocks(line, tackle, way.turns.length),
  )
  const ratio = onceKnown(tackle, tackle => onceKnown(leads, leads => pullRatio(tackle, leads, friction)))
  const pull = workedFrom([load, ratio], (load, ratio) => newtons(load.hauled * ratio))
  const strain = workedFrom([load, tackle, pull], (load, tackle, pull) =>
    newtons(Math.max(pull, load.borne / tackle.advantage)),
  )
  const strength = line.rope
    ? strengthOf(line.rope.material, line.rope.diameter)
    : unknown('Its rope is not said.')
  return {
    load,
    tackle,
    leads,
    pull,
    hands: onceKnown(pull, pull => handsFor(pull, hands)),
    strain,
    strength,
    safety: onceKnown(strain, strain =>
      strain > 0
        ? workedFrom([strength], ({ breaking }) => (breaking * shareLeft({ end, age })) / strain)
        : unknown('It bears nothing.'),
    ),
  }
}

/** The last lead before the load is the tackle's own fixed block, unless the tackle stands below. */
function leadBlocks({ tackleBelow }: Line, { advantage }: Tackle, turns: number): number {
  return advantage > 1 && !tackleBelow ? Math.max(0, turns - 1) : turns
}

/** The least safety factor a line is judged by: lines over people most, light gear least. Common practice, no source. */
export const leastSafety = (line: Line): number => {
  switch (line.function) {
    case 'hoists':
      return 6
    case 'extends':
    case 'turns':
    case 'keeps':
      return 5
    default:
      return 4
  }
}
