import { metres } from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { limitOf, usualLimit } from '../brace/index.ts'
import type { Field } from './field.ts'
import { yardOf } from './load.ts'
import { planIndex } from './plan-index.ts'
import type { RunningStrand } from './strand.ts'
import { turned } from './swing.ts'

/**
 * The braces from their last blocks to their yardarms, every yard braced as sharp as it goes: with the starboard arms aft, and with
 * the port arms aft.
 */
export const bracedFields = (field: Field): readonly Field[] =>
  [1, -1].map(way => {
    const strands = field.rig.lines.flatMap(line => bracedSharp(line, field.rig, way))
    return { ...field, strands, near: planIndex(strands) }
  })

function bracedSharp(line: Line, rig: Rig, way: number): readonly RunningStrand[] {
  if (line.deed?.verb !== 'swings' || line.deed.object !== 'yard') return []
  const yard = yardOf(line, rig)
  const [from, arm] = line.lead.slice(-2)
  if (!yard?.middle || !from || !arm || line.leadUnknown !== undefined) return []
  const limit = limitOf(yard, rig)
  const swing = Math.PI / 2 - (limit.known ? limit.value.angle : usualLimit)
  const radius = metres((line.rope?.diameter ?? 0) / 2)
  return [{ line, isFixed: true, from: from.at, to: turned(arm.at, yard.middle, way * swing), radius }]
}
