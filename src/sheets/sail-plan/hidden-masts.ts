import { partsOf } from '../clip.ts'
import { ink, weight } from '../ink.ts'
import type { Mark } from '../sheet.ts'
import { mastOutlines } from './masts.ts'
import type { Ship } from './ship.ts'
import { run } from './strokes.ts'

/** Masts behind square sails, dashed: for a style in which they don't show through. */
export function hiddenMasts({ rig, view, sails }: Ship): readonly Mark[] {
  const shapes = (isNear: boolean) =>
    sails.filter(({ sail }) => (sail.kind === 'fore-and-aft') === isNear).map(({ shape }) => shape)
  const [squares, nearer] = [shapes(false), shapes(true)]
  const runs = rig.masts
    .flatMap(mast => mastOutlines(mast, view))
    .flatMap(outline => partsOf(outline, squares).inside)
    .flatMap(part => partsOf(part, nearer).outside)
  if (runs.length === 0) return []
  return [
    {
      kind: 'group',
      id: 'hidden-masts',
      title: 'Masts behind square sails',
      detail: 'hidden spar',
      marks: runs.map(points => run(points, { ink: ink.ink, width: weight.b, dash: [0.9, 0.9] })),
    },
  ]
}
