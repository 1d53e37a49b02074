import { known, type Point3, unknown, workedFrom } from '../../measure/index.ts'
import {
  type Balance,
  balanceOf,
  canvasNumber,
  type Figures,
  groupsOf,
  leadRanges,
  leastSafety,
  listOf,
  runningRigging,
  sparLength,
  type UnderCanvas,
} from '../../reckon/index.ts'
import type { Line, Rig, Sail, Spar } from '../../rig/index.ts'
import { foulsRecord, turnsRecord } from './leads-record.ts'
import { caution } from './lines.ts'
import { type Entries, type Plain, type ReckoningRecord, record } from './plain.ts'
import { leadConvention } from './sails.ts'
import { bracingRecord, stabilityRecord } from './stance-record.ts'

export type { ReckoningRecord } from './plain.ts'

/**
 * What is reckoned of a rig as plain data in SI units. A figure that is not known is left out, and its reason
 * stands under "unknown" of the same thing, by the name of the figure.
 */
export function reckoningRecord(rig: Rig, figures: Figures, chosen?: UnderCanvas): ReckoningRecord {
  const { total, centreOfEffort, lead } = figures
  return {
    vessel: rig.vessel.name,
    caution,
    assumptions: assumed(figures),
    sails: rig.sails.map(sail => sailRecord(sail, figures)),
    groups: groupsOf(rig, figures).map(({ name, sails, area }) =>
      record({ name, sails: sails.map(sail => sail.name) }, { area_m2: area }),
    ),
    ...record(
      {
        lead_convention: leadConvention,
        usual_leads: leadRanges.map(({ rig, low, high, source }) => ({
          rig,
          low_percent: low * 100,
          high_percent: high * 100,
          source,
        })),
      },
      {
        ...balanceEntries({ area: total, centreOfEffort, lead }),
        running_rigging_m: runningRigging(rig, figures.leads()),
      },
    ),
    ...(chosen ? { chosen: canvasRecord(chosen) } : {}),
    canvas: figures.canvas().map(canvasRecord),
    setting: rig.order.map((sail, i) =>
      record({ sail }, balanceEntries(balanceOf(rig, figures, rig.order.slice(0, i + 1)))),
    ),
    spars: rig.spars.map(spar => sparRecord(spar, figures)),
    lines: rig.lines.map(line => lineRecord(line, figures)),
    bracing: bracingRecord(figures),
    stability: stabilityRecord(figures),
    fouls: foulsRecord(figures),
  }
}

const placed = ({ x, z }: Point3): Plain => ({ x_m: x, z_m: z })

const balanceEntries = ({ area, centreOfEffort, lead }: Balance): Entries => ({
  total_area_m2: area,
  centre_of_effort: workedFrom([centreOfEffort], placed),
  lead_m: workedFrom([lead], ({ metres }) => metres),
  lead_percent: lead.known ? workedFrom([lead.value.share], share => share * 100) : lead,
})

/** Sails carried together, with their reefs. */
const canvasRecord = ({ label, carried, balance, heel }: UnderCanvas): ReckoningRecord =>
  record(
    { name: label, sails: carried.map(({ sail, reefs }) => ({ name: sail, reefs })) },
    { ...balanceEntries(balance), heel_rad: heel },
  )

function sailRecord(sail: Sail, figures: Figures): ReckoningRecord {
  const { area, centroid } = figures.sails.get(sail.name) ?? { area: noFigures, centroid: noFigures }
  const load = figures.sailLoads().get(sail.name) ?? noFigures
  return record(
    {
      name: sail.name,
      class: sail.class,
      canvas_number: canvasNumber(sail),
      canvas: listOf(sail, figures.assumptions.canvas),
      canvas_said: sail.cloth.number !== undefined,
    },
    {
      area_m2: area,
      centroid: workedFrom([centroid], placed),
      weight_kg: workedFrom([load], ({ mass }) => mass),
      force_N: workedFrom([load], ({ force }) => force),
      strong_force_N: workedFrom([load], ({ strongForce }) => strongForce),
    },
  )
}

function sparRecord(spar: Spar, figures: Figures): ReckoningRecord {
  const length = sparLength(spar)
  return record(
    {
      name: spar.name,
      weight_said: spar.mass !== undefined,
      ...(spar.material === undefined ? {} : { material: spar.material }),
      ...(spar.walls === undefined ? {} : { walls_m: spar.walls }),
    },
    {
      length_m: length === undefined ? unknown('Its length is not given.') : known(length),
      thickness_m:
        spar.diameter === undefined ? unknown('Its thickness is not given.') : known(spar.diameter),
      weight_kg: figures.spars().get(spar.name) ?? noFigures,
    },
  )
}

function lineRecord(line: Line, figures: Figures): ReckoningRecord {
  const lead = figures.leads().get(line.address)
  const loads = figures.loads().get(line.address)
  return record(
    {
      name: line.side ? `${line.words} ${line.side}` : line.words,
      address: line.address,
      purchase: line.purchase,
      least_safety: leastSafety(line),
      ...(line.hands === undefined ? {} : { hands_said: line.hands }),
      ...(line.rope ? { rope_m: line.rope.diameter } : {}),
      ...(line.rope?.material === undefined ? {} : { material: line.rope.material }),
    },
    {
      length_m: lead?.length ?? noFigures,
      travel_m: lead?.travel ?? noFigures,
      hauled_m: lead?.hauled ?? noFigures,
      hauled_home_m: lead?.home ?? noFigures,
      slack_m: lead?.slack ?? noFigures,
      turns: workedFrom([lead?.way ?? noFigures], turnsRecord),
      advantage: workedFrom([loads?.tackle ?? noFigures], ({ advantage }) => advantage),
      sheaves: workedFrom([loads?.tackle ?? noFigures], ({ sheaves }) => sheaves),
      lead_blocks: loads?.leads ?? noFigures,
      load_N: workedFrom([loads?.load ?? noFigures], ({ hauled }) => hauled),
      greatest_load_N: workedFrom([loads?.load ?? noFigures], ({ borne }) => borne),
      pull_N: loads?.pull ?? noFigures,
      hands: loads?.hands ?? noFigures,
      strain_N: loads?.strain ?? noFigures,
      breaking_N: workedFrom([loads?.strength ?? noFigures], ({ breaking }) => breaking),
      strength_source: workedFrom([loads?.strength ?? noFigures], ({ source }) => source),
      safety: loads?.safety ?? noFigures,
    },
  )
}

const noFigures = unknown('It has no figures.')

function assumed({ assumptions }: Figures): ReckoningRecord {
  const { wind, offBow, made, strongWind, friction, hands, timber, canvas, end, age } = assumptions
  return {
    wind_m_s: wind,
    off_bow_rad: offBow,
    share_of_wind_made: made,
    strong_wind_m_s: { ...strongWind },
    friction_model: friction.model,
    friction_share: friction.share,
    hand_N: hands.hand,
    loss_beyond_four_hands: hands.loss,
    timber,
    canvas,
    rope_end: end,
    rope_age: age,
  }
}
