import { dash, ink, weight } from '../ink.ts'
import type { Mark, Pen } from '../sheet.ts'
import { seams, tabling } from './cloths.ts'
import { foreAndAftGround, squareGround } from './ground.ts'
import { hoops } from './hoops.ts'
import { reefBand } from './reef-band.ts'
import type { SailShape } from './sail-shape.ts'
import { addressOf, disc } from './strokes.ts'
import type { View } from './view.ts'

/**
 * A sail: one group with its name, in it one closed outline that has its address, then seams, tabling, reef bands
 * and the rings at its corners, all of them open runs or discs.
 */
export function sailMarks(drawn: SailShape, view: View): Mark {
  const { sail, steps, corners } = drawn
  const isSquare = sail.kind !== 'fore-and-aft'
  const isHeavy = isSquare || corners.length > 3 || sail.class === 'gaff topsail'
  const rope: Pen = {
    ink: ink.ink,
    width: isHeavy ? weight.d : weight.c,
    join: 'round',
    ...(sail.conjectural ? { dash: dash.conjectural } : {}),
  }
  return {
    kind: 'group',
    title: sail.label,
    marks: [
      {
        kind: 'path',
        id: addressOf('sail', sail.name),
        steps,
        fill: isSquare ? squareGround : foreAndAftGround,
        pen: rope,
      },
      ...hoops(drawn, view),
      ...seams(drawn, view),
      ...tabling(drawn),
      ...sail.reefs.slice(0, 6).flatMap(reef => reefBand(reef, drawn, view)),
      ...corners.map(corner => disc(corner, 0.38, { ink: ink.paper }, { ink: ink.ink, width: weight.b })),
    ],
  }
}
