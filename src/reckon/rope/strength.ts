import {
  type Figure,
  known,
  type Metres,
  metres,
  type Newtons,
  newtons,
  unknown,
} from '../../measure/index.ts'
import { nearest } from '../../text/index.ts'
import { otherWords, type StrengthTable, strengthTables } from './tables.ts'

/** What a new rope breaks at, straight and unknotted, and who says so. */
export interface Strength {
  readonly breaking: Newtons
  readonly source: string
  /** False where it is common practice, with no table read. */
  readonly isRead: boolean
}

/** Names of all materials with a table of their own. */
export const materials: readonly string[] = strengthTables.map(table => table.material)

const tableAt = new Map(strengthTables.map(table => [table.material, table]))

/** Breaking load of a new rope by its material and diameter. Of "wire with manila fall" it is the fall's. */
export function strengthOf(material: string | undefined, diameter: Metres): Figure<Strength> {
  const table = tableOf(material)
  if (!table.known) return table
  if (!(diameter > 0)) return unknown('Its rope has no thickness.')
  return known({
    breaking: newtons(interpolated(table.value.points, diameter)),
    source: table.value.source,
    isRead: table.value.isRead,
  })
}

/** The thinnest rope of a material that breaks at no less than a load. */
export function thicknessFor(material: string, breaking: Newtons): Figure<Metres> {
  const table = tableOf(material)
  if (!table.known) return table
  const turned = table.value.points.map(([diameter, load]) => [load, diameter] as const)
  return known(metres(interpolated(turned, breaking, 1 / 2)))
}

/** Whether there is a table for a material as a text names it. */
export const knowsMaterial = (material: string): boolean => tableOf(material).known

function tableOf(material: string | undefined): Figure<StrengthTable> {
  if (material === undefined) return unknown('The material of its rope is not said.')
  const said = material.toLowerCase()
  const fall = / with (.+) fall$/.exec(said)?.[1] ?? said
  const table = tableAt.get(otherWords.get(fall) ?? fall)
  return table ? known(table) : unknown(unknownMaterial(material))
}

function unknownMaterial(material: string): string {
  const near = nearest(material, materials)
  return `There is no table of strength for "${material}".${near.length > 0 ? ` Nearest: ${near.join(', ')}.` : ''}`
}

/**
 * Between two sizes along the line that is straight on logarithmic axes; beyond the last with the square of the
 * diameter, as strength goes with the section.
 */
function interpolated(points: StrengthTable['points'], at: number, power = 2): number {
  const after = points.findIndex(([size]) => size >= at)
  const [size, value] = points[after] ?? points.at(-1) ?? [Number.NaN, Number.NaN]
  const [below, valueBelow] = points[after - 1] ?? [Number.NaN, Number.NaN]
  if (after <= 0 || size === at) return value * (at / size) ** power
  return valueBelow * (value / valueBelow) ** (Math.log(at / below) / Math.log(size / below))
}
