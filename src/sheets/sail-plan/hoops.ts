import { ink, weight } from '../ink.ts'
import { between, distance } from '../plane.ts'
import type { Mark } from '../sheet.ts'
import type { SailShape } from './sail-shape.ts'
import { run } from './strokes.ts'
import type { View } from './view.ts'

/** Hoops stand so far apart, in metres, and no nearer than so many millimetres on paper (common practice, no source). */
const apart = { metres: 0.9, onPaper: 2.4 }

/** How far a hoop reaches forward round its mast, in metres. */
const reach = 0.34

/** The hoops of a luff that is hooped to its mast: a short stroke each, across the mast. */
export function hoops({ sail, edges }: SailShape, view: View): readonly Mark[] {
  const luff = edges.find(({ name }) => name === 'luff')
  const isHooped = sail.shackled.some(({ part, by }) => part === 'luff' && by === 'hooped')
  if (!luff || !isHooped) return []
  const [top, , , foot] = luff.curve
  const spaces = Math.floor(distance(top, foot) / Math.max(apart.onPaper, apart.metres * view.metre))
  return Array.from({ length: Math.max(0, Math.min(60, spaces) - 1) }, (_, i) => {
    const at = between(top, foot, (i + 1) / Math.min(60, spaces))
    return run([at, { x: at.x + reach * view.metre, y: at.y - 0.12 * reach * view.metre }], {
      ink: ink.rig,
      width: weight.b,
    })
  })
}
