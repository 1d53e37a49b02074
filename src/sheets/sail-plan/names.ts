import type { Finding } from '../../findings/index.ts'
import type { Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { uprightBox } from '../label-box.ts'
import { type Obstacle, placeLabel, type TakenBox } from '../label-place.ts'
import { areaFigure } from '../measure-words.ts'
import type { Rect, Stretch } from '../plane.ts'
import type { Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import type { SeenEdge } from './hidden-edges.ts'
import { nameForms } from './name-forms.ts'
import { placeInSky, type Sky, seenPoint } from './name-leader.ts'
import type { PlacedName } from './placed-name.ts'
import type { SailShape } from './sail-shape.ts'

/** What names keep clear of, beside the sails themselves. */
export interface Surroundings {
  readonly edges: readonly SeenEdge[]
  /** Outlines of yards, gaffs and booms. */
  readonly spars: readonly (readonly Point[])[]
  /** Runs of stays that no sail covers, and those that ghost through a square sail. */
  readonly stays: readonly (readonly Point[])[]
  readonly ghosts: readonly (readonly Point[])[]
  /** Reef bands with their points, tops and crosstrees: each as a closed run. */
  readonly reefs: readonly (readonly Point[])[]
  readonly platforms: readonly (readonly Point[])[]
  readonly plumbLines: readonly Stretch[]
  readonly centres: readonly Rect[]
  readonly sky: Sky
}

export interface PlacedNames {
  readonly names: readonly PlacedName[]
  readonly findings: readonly Finding[]
}

const cost = {
  ownEdge: 40,
  otherEdge: 10,
  spar: 12,
  stay: 5,
  reef: 6,
  plumbLine: 14,
  hiddenEdge: 1.2,
  ghost: 0.6,
  platform: 3,
  label: 200,
  centre: 100,
} as const

/** Places the names of all sails, those with the least room first; one without a place goes into the sky. */
export function placeNames(
  drawn: readonly SailShape[],
  { rig, figures }: { readonly rig: Rig; readonly figures: Figures },
  around: Surroundings,
  ruler: Ruler,
): PlacedNames {
  const names: PlacedName[] = []
  const findings: Finding[] = []
  for (const shape of inPlacingOrder(drawn, figures)) {
    const area = areaFigure(
      figures.sails.get(shape.sail.name)?.area ?? { known: false, because: '' },
      rig.vessel,
    )
    const forms = nameForms(shape, area, ruler)
    const nearer = drawn.slice(drawn.indexOf(shape) + 1).map(other => other.shape)
    const anchor = seenPoint(shape, nearer)
    if (!anchor) {
      findings.push(noPlace(shape, 'lies wholly behind other sails on this plan, and goes without its name'))
      continue
    }
    const taken = [...names.map(({ box }) => ({ box, cost: cost.label })), ...centresTaken(around)]
    const found = placeLabel(forms, {
      within: shape.shape,
      nearer,
      obstacles: obstaclesOf(shape, around),
      taken,
      home: shape.home,
    })
    if (found?.isClear) {
      names.push({ ...found, drawn: shape, leader: undefined })
      continue
    }
    const place = placeInSky(shape, area, { anchor, sky: { ...around.sky, names } }, ruler)
    if (place) names.push({ ...place, drawn: shape })
    findings.push(
      noPlace(
        shape,
        place
          ? 'has its name beside the ship, on a leader: it finds no clear place in the sail'
          : 'finds no place for its name on this plan',
      ),
    )
  }
  return { names, findings }
}

/** Staysails first, then headsails, then the rest by rising area: who has least room chooses first. */
function inPlacingOrder(drawn: readonly SailShape[], { sails }: Figures): readonly SailShape[] {
  const rank = ({ sail }: SailShape) =>
    sail.kind !== 'fore-and-aft' ? 2 : sail.class === 'staysail' ? 0 : sail.class === 'headsail' ? 1 : 2
  const area = ({ sail }: SailShape) => {
    const figure = sails.get(sail.name)?.area
    return figure?.known ? figure.value : 0
  }
  return drawn
    .map((shape, i) => ({ shape, i }))
    .sort((a, b) => rank(a.shape) - rank(b.shape) || area(a.shape) - area(b.shape) || a.i - b.i)
    .map(({ shape }) => shape)
}

const centresTaken = ({ centres }: Surroundings): readonly TakenBox[] =>
  centres.map(box => ({ box: uprightBox(box), cost: cost.centre }))

function obstaclesOf({ sail }: SailShape, around: Surroundings): readonly Obstacle[] {
  const obstacle = (points: readonly Point[], price: number, isHard: boolean): Obstacle => ({
    points,
    cost: price,
    isHard,
  })
  const own = (edge: SeenEdge) => edge.sail === sail.name
  return [
    ...around.edges.flatMap(edge =>
      edge.seen.map(points => obstacle(points, own(edge) ? cost.ownEdge : cost.otherEdge, true)),
    ),
    ...around.edges.flatMap(edge =>
      edge.hidden.map(points => obstacle(points, own(edge) ? cost.ownEdge : cost.hiddenEdge, own(edge))),
    ),
    ...around.spars.map(points => obstacle([...points, ...points.slice(0, 1)], cost.spar, true)),
    ...around.stays.map(points => obstacle(points, cost.stay, false)),
    ...around.ghosts.map(points => obstacle(points, cost.ghost, false)),
    ...around.reefs.map(points => obstacle(points, cost.reef, false)),
    ...around.platforms.map(points => obstacle(points, cost.platform, false)),
    ...around.plumbLines.map(points => obstacle(points, cost.plumbLine, false)),
  ]
}

const noPlace = ({ sail }: SailShape, what: string): Finding => ({
  rule: 'sheet/label-no-place',
  severity: 'note',
  at: sail.span,
  message: `${sail.label} ${what}.`,
  remedy: 'Draw the plan on a larger sheet.',
  related: [],
})
