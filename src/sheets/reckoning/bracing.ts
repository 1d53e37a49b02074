import { known, type Radians, units } from '../../measure/index.ts'
import type { BracedYard, Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { nothing, type Table, words } from '../table.ts'
import { cell, column, type Shown, type TableUnits } from './units.ts'

const degrees: Shown = { unit: '°', si: units.deg.si, decimals: 1 }

/** How the yards of each mast stand on a course, by the rule of the handbooks and by the wind's own gradient. */
export function bracingTable(rig: Rig, figures: Figures, { length }: TableUnits): Table {
  return {
    id: 'bracing',
    title: 'Bracing of the yards',
    columns: [
      column('yard'),
      column('up', length),
      column('wind felt', degrees),
      column('sharpest', degrees),
      column('stopped by'),
      column('by the rule', degrees),
      column('by half points', degrees),
      column('by the gradient', degrees),
    ],
    rows: figures.bracing().flatMap(({ mast, yards }) => {
      if (!yards.known) return [[words(mast), { kind: 'unknown', because: yards.because } as const]]
      return yards.value.map(yard => rowOf(rig, yard, length))
    }),
    notes: [course(figures), ways, limits],
  }
}

function rowOf(
  rig: Rig,
  { yard, height, apparent, limit, byRule, byHalfPoints, byGradient }: BracedYard,
  length: Shown,
) {
  const at = (angle: Radians) => cell(known(Math.abs(angle)), degrees)
  return [
    words(rig.sparAt.get(yard)?.label ?? yard),
    cell(known(height), length),
    at(apparent.angle),
    limit.known ? at(limit.value.angle) : nothing,
    words(limit.known ? limit.value.stoppedBy : 'not told'),
    at(byRule),
    byHalfPoints.known ? at(byHalfPoints.value) : nothing,
    at(byGradient),
  ]
}

const course = ({ assumptions: { wind, offBow, made } }: Figures): string =>
  `True wind of ${wind} m/s at 10 m, ${(offBow / units.deg.si).toFixed(1)}° off the bow, the ship making ${made * 100} % of it. Angles of yards are from fore and aft; 90° is square.`

const ways =
  "The rule sets the lower yard by the wind felt and each above it squarer, to warn the helm and spare the spars; half points are Dana's, of a ship by the wind in a stiff breeze (The Seaman's Friend, 1847, ch. XI); the gradient gives every yard the same angle to the wind it feels. They differ by far, and none follows from another."

const limits =
  'What stops a yard is not told where it hangs on a truss or a crane, and the text doesn’t say how sharp it goes, or where no shroud or backstay comes in its way; a lowest yard is then taken to go to 36°.'
