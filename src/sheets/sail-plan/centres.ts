import type { Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { decimals, shortLength } from '../measure-words.ts'
import { type Rect, rect, type Stretch } from '../plane.ts'
import { plateType } from '../plate-type.ts'
import type { Mark, Pen, Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import { isSoberPoint } from './sober.ts'
import { curveTo, disc, figure, moveTo, run, thing } from './strokes.ts'
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

/** Plumb lines, marks and the lead between them. */
export function centreMarks(centres: Centres, rig: Rig, figures: Figures, ruler: Ruler): readonly Mark[] {
  const { effort, lateral } = centres
  return [
    ...plumbLines(centres).map(line => run(line, plumbPen)),
    ...leadMarks(centres, rig, figures, ruler),
    ...(effort ? [centre('centre-of-effort', 'Centre of effort', 'CE', effort, 'upper', ruler)] : []),
    ...(lateral
      ? [
          centre(
            'centre-of-lateral-resistance',
            'Centre of lateral resistance',
            'CLR',
            lateral,
            'lower',
            ruler,
          ),
        ]
      : []),
  ]
}

/** A centre line's own dash: it tells of no thing, so none of the four dashes of things will do. */
const plumbPen: Pen = { ink: ink.rig, width: weight.b, dash: [2.8, 0.7, 0.5, 0.7] }

function centre(
  id: string,
  title: string,
  letters: string,
  at: Point,
  half: 'upper' | 'lower',
  ruler: Ruler,
): Mark {
  const arm = markRadius + 1.1
  const hair: Pen = { ink: ink.ink, width: weight.a }
  const isEffort = half === 'upper'
  const words = lettered(
    ruler,
    { x: at.x + (isEffort ? 2.9 : -2.6), y: at.y - 2.1 },
    letters,
    plateType.mark,
    ink.ink,
    { anchor: isEffort ? 'start' : 'end', halo: { width: 1.2, ink: ink.paper } },
  )
  return thing(id, title, [
    ...halfDisc(at, markRadius, half),
    run(
      [
        { x: at.x - arm, y: at.y },
        { x: at.x + arm, y: at.y },
      ],
      hair,
    ),
    run(
      [
        { x: at.x, y: at.y - arm },
        { x: at.x, y: at.y + arm },
      ],
      hair,
    ),
    words,
  ])
}

/** A ring with its upper or lower half solid. */
export function halfDisc(at: Point, radius: number, half: 'upper' | 'lower'): readonly Mark[] {
  const up = half === 'upper' ? -1 : 1
  // The usual cubic for a quarter circle, twice.
  const k = 0.5523 * radius
  const { x, y } = at
  const top = { x, y: y + up * radius }
  return [
    disc(at, radius, { ink: ink.paper }, { ink: ink.ink, width: weight.c }),
    {
      kind: 'path',
      steps: [
        moveTo({ x: x - radius, y }),
        curveTo({ x: x - radius, y: y + up * k }, { x: x - k, y: top.y }, top),
        curveTo({ x: x + k, y: top.y }, { x: x + radius, y: y + up * k }, { x: x + radius, y }),
        ['Z'],
      ],
      fill: { ink: ink.ink },
    },
  ]
}

/** The lead as a dimension under the keel, and its words. */
function leadMarks(
  { effort, lateral, leadY }: Centres,
  { vessel }: Rig,
  { lead }: Figures,
  ruler: Ruler,
): readonly Mark[] {
  if (!effort || !lateral || !lead.known) return []
  const { metres, share } = lead.value
  const length = shortLength(Math.abs(metres) as typeof metres, vessel)
  const told = metres < 0 ? `effort ${length} abaft CLR` : `lead ${length}`
  const words = share.known ? `${told}, ${decimals(Math.abs(share.value) * 100, 1)} % of waterline` : told
  const [left, right] = effort.x < lateral.x ? [effort, lateral] : [lateral, effort]
  return [
    thing('lead', words, [
      ...dimensionLine(left.x, right.x, leadY),
      lettered(
        ruler,
        { x: right.x + (right.x - left.x < 6 ? 5.2 : 2.4), y: leadY + 1.1 },
        words,
        plateType.dimension,
        ink.ink,
        {
          halo: { width: 1, ink: ink.paper },
        },
      ),
    ]),
  ]
}

/** A level line between two verticals with an arrowhead at each; where there is no room, the heads point in from outside. */
function dimensionLine(left: number, right: number, y: number): readonly Mark[] {
  const isNarrow = right - left < 6
  const pen: Pen = { ink: ink.ink, width: weight.b }
  const head = (tip: number, toward: 1 | -1) =>
    figure(
      [
        { x: tip, y },
        { x: tip - toward * 2, y: y - 0.55 },
        { x: tip - toward * 2, y: y + 0.55 },
      ],
      { ink: ink.ink },
    )
  const level = (from: number, to: number) =>
    run(
      [
        { x: from, y },
        { x: to, y },
      ],
      pen,
    )
  return isNarrow
    ? [level(left - 4, left - 1.5), level(right + 1.5, right + 4), head(left, 1), head(right, -1)]
    : [level(left + 1.5, right - 1.5), head(left, -1), head(right, 1)]
}
