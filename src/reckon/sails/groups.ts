import type { Figure, SquareMetres } from '../../measure/index.ts'
import type { Rig, Sail } from '../../rig/index.ts'
import type { SailFigures } from './area.ts'
import { balanceOf } from './balance.ts'

/** Some of the sails together, and their area. */
export interface SailGroup {
  readonly name: string
  readonly sails: readonly Sail[]
  readonly area: Figure<SquareMetres>
}

/** The sails by kind and by mast; a group without sails is left out. */
export function groupsOf(
  rig: Rig,
  figures: { readonly sails: ReadonlyMap<string, SailFigures> },
): readonly SailGroup[] {
  const groups: readonly (readonly [string, (sail: Sail) => boolean])[] = [
    ['square sails', sail => sail.kind === 'square'],
    ['fore-and-aft sails', sail => sail.kind === 'fore-and-aft'],
    ['studdingsails, one a side', sail => sail.kind === 'studdingsail'],
    ...rig.masts.map(
      mast =>
        [
          `plain sail of the ${mast.name}`,
          (sail: Sail) => sail.mast === mast.name && sail.kind !== 'studdingsail',
        ] as const,
    ),
  ]
  return groups.flatMap(([name, belongs]) => {
    const sails = rig.sails.filter(belongs)
    if (sails.length === 0) return []
    const { area } = balanceOf(
      rig,
      figures,
      sails.map(sail => sail.name),
    )
    return [{ name, sails, area }]
  })
}
