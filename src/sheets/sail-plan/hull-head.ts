import { ink, weight } from '../ink.ts'
import { type Curve, onCurve } from '../plane.ts'
import type { Mark } from '../sheet.ts'
import type { HullLines } from './hull-lines.ts'
import { curveStep, disc, lineTo, moveTo, run } from './strokes.ts'
import type { View } from './view.ts'

/**
 * The head: a cutwater that leaves the stem at the waterline and sweeps out to the billet, where it ends in one
 * closed curl; and one trail line along it. Nothing where the text gives no billet.
 */
export function headMarks(lines: HullLines, view: View): readonly Mark[] {
  const { billet, stemHead } = lines
  if (!billet) return []
  const { at, metre } = view
  const curl = 0.16 + 0.0045 * lines.length
  // The under edge comes up to the billet from below and behind, the upper edge runs back to the stem head.
  const under: Curve = [
    at(0, 0.1),
    at(0.16 * billet.x, 0.3 * billet.z),
    at(0.54 * billet.x, 0.63 * billet.z),
    at(billet.x - 0.45 * curl, billet.z - 0.8 * curl),
  ]
  const upper: Curve = [
    at(billet.x + 0.2 * curl, billet.z + 0.95 * curl),
    at(billet.x + 0.28 * (stemHead.x - billet.x), billet.z + 0.5 * curl),
    at(billet.x + 0.6 * (stemHead.x - billet.x), stemHead.z - 0.1),
    at(stemHead.x, stemHead.z - 0.02),
  ]
  const trail: Curve = [
    at(0.05 * billet.x, 0.17 * billet.z),
    at(0.2 * billet.x, 0.46 * billet.z),
    at(0.56 * billet.x, 0.73 * billet.z),
    at(billet.x + 1.1 * curl, billet.z - 0.25 * curl),
  ]
  const centre = at(billet.x, billet.z)
  return [
    {
      kind: 'path',
      steps: [
        moveTo(at(0, 0.1)),
        curveStep(under),
        lineTo(upper[0]),
        curveStep(upper),
        lineTo(at(0.4, 0.5 * stemHead.z)),
        ['Z'],
      ],
      fill: { ink: ink.hull },
      pen: { ink: ink.ink, width: weight.d, join: 'round' },
    },
    disc(centre, curl * metre, { ink: ink.hull }, { ink: ink.ink, width: weight.d }),
    disc(centre, 0.42 * curl * metre, { ink: ink.paper }),
    run(
      Array.from({ length: 17 }, (_, i) => onCurve(trail, i / 16)),
      { ink: ink.paper, width: weight.b, opacity: 0.85 },
    ),
  ]
}
