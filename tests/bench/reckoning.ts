import { compiledRig } from '../support/compiled.ts'
import { fleet } from '../support/fleet.ts'
import { median, milliseconds, slopeOf, worked } from './measure.ts'
import type * as stages from './stages.ts'

/** What it costs to reckon everything of the barque, and of barques moored side by side: rows of the table. */
export function reckoningRows({
  reckon,
  reckoningRecord,
}: Pick<typeof stages, 'reckon' | 'reckoningRecord'>): readonly (readonly [string, string, string])[] {
  const { rig } = compiledRig('barque-harrow-tansy').value
  const points = [1, 2, 4, 8, 16].map(count => {
    const many = fleet(rig, count)
    const whole = () => {
      const figures = reckon(many)
      figures.fouls()
      return reckoningRecord(many, figures)
    }
    for (let i = 0; i < 40 / count; i++) whole()
    return { x: many.lines.length, y: median(Array.from({ length: 7 }, () => worked(whole))) }
  })
  const [first] = points
  return [
    [
      `reckoning everything of the barque, ${first?.x} lines, warm`,
      milliseconds(first?.y ?? Number.NaN),
      '150 ms',
    ],
    ['slope of that time over lines, both as logarithms', slopeOf(points).toFixed(2), '1, linear'],
  ]
}
