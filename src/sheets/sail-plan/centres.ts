import type { Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { type Rect, rect, type Stretch } from '../plane.ts'
import type { Point } from '../sheet.ts'
import { isSoberPoint } from './sober.ts'
import type { View } from './view.ts'

/** The two centres on paper, each where it is known, and the height of the line on which the lead is told. */
export interface Centres {
  readonly effort: Point | undefined
  readonly lateral: Point | undefined
  readonly leadY: number
}

/** Where the centres fall; `leadY` is under the keel. */
export function centresOf(rig: Rig, figures: Figures, view: View, leadY: number): Centres {
  const effort = figures.centreOfEffort.known ? figures.centreOfEffort.value : undefined
  const lateral = rig.vessel.lateralCentre
  return {
    effort: effort && isSoberPoint(effort) ? view.at(effort.x, effort.z) : undefined,
    lateral: lateral && isSoberPoint(lateral) ? view.at(lateral.x, lateral.z) : undefined,
    leadY,
  }
}

export const markRadius = 2.4

/** The plumb lines that names keep clear of. */
export function plumbLines({ effort, lateral, leadY }: Centres): readonly Stretch[] {
  return [effort, lateral].flatMap(point =>
    point && point.y < leadY ? [[point, { x: point.x, y: leadY + 1.8 }] as const] : [],
  )
}

/** The room of each centre's mark and letters, which names keep clear of. */
export function centreBoxes({ effort, lateral }: Centres): readonly Rect[] {
  const box = ({ x, y }: Point) => rect(x - 4.6, y - markRadius - 2.6, x + 7.4, y + markRadius + 0.6)
  return [effort, lateral].flatMap(point => (point ? [box(point)] : []))
}
