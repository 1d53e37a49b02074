import type { Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { decimals, shortLength } from '../measure-words.ts'
import { plateType } from '../plate-type.ts'
import type { Mark, Pen, Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import { type Centres, markRadius, plumbLines } from './centres.ts'
import { groundAt } from './ground.ts'
import type { Ship } from './ship.ts'
import { curveTo, disc, figure, moveTo, run, thing } from './strokes.ts'

/** Plumb lines, marks and the lead between them. */
export function centreMarks(ship: Ship, ruler: Ruler): readonly Mark[] {
  const { centres, rig, figures } = ship
  const { effort, lateral } = centres
  return [
    ...plumbLines(centres).map(line => run(line, plumbPen)),
    ...leadMarks(centres, rig, figures, ruler),
    ...(effort ? [centre(effortWords, effort, ship, ruler)] : []),
    ...(lateral ? [centre(lateralWords, lateral, ship, ruler)] : []),
  ]
}

interface CentreWords {
  readonly id: string
  readonly title: string
  readonly letters: string
  readonly half: 'upper' | 'lower'
  /** Where the letters begin, or end, beside the middle of the mark. */
  readonly lettersAt: number
  readonly anchor: 'start' | 'end'
}

const effortWords: CentreWords = {
  id: 'centre-of-effort',
  title: 'Centre of effort',
  letters: 'CE',
  half: 'upper',
  lettersAt: 2.9,
  anchor: 'start',
}

const lateralWords: CentreWords = {
  id: 'centre-of-lateral-resistance',
  title: 'Centre of lateral resistance',
  letters: 'CLR',
  half: 'lower',
  lettersAt: -2.6,
  anchor: 'end',
}

/** A centre line's own dash: it tells of no thing, so none of the four dashes of things will do. */
const plumbPen: Pen = { ink: ink.rig, width: weight.b, dash: [2.8, 0.7, 0.5, 0.7] }

function centre(
  { id, title, letters, half, lettersAt, anchor }: CentreWords,
  at: Point,
  ship: Ship,
  ruler: Ruler,
): Mark {
  const arm = markRadius + 1.1
  const start = { x: at.x + lettersAt, y: at.y - 2.1 }
  const halo = { width: 1.2, ink: groundAt(ship, start) }
  return thing(id, title, [
    ...halfDisc(at, markRadius, half),
    hair({ x: at.x - arm, y: at.y }, { x: at.x + arm, y: at.y }),
    hair({ x: at.x, y: at.y - arm }, { x: at.x, y: at.y + arm }),
    lettered(ruler, start, letters, plateType.mark, ink.ink, { anchor, halo }),
  ])
}

const hair = (a: Point, b: Point): Mark => run([a, b], { ink: ink.ink, width: weight.a })

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
