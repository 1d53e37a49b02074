import type { Mast, MastSection, Rig, Spar } from '../../rig/index.ts'

/** Height of a mast's truck, in metres above the waterline; undefined without geometry. */
export function truckOf(mast: Mast): number | undefined {
  const heights = mast.sections.flatMap(section => section.head?.z ?? [])
  return heights.length > 0 ? Math.max(...heights) : undefined
}

export const mastOf = (rig: Rig, spar: Pick<Spar, 'mast'>): Mast | undefined =>
  spar.mast === undefined ? undefined : rig.mastAt.get(spar.mast)

/**
 * The cap that stops a yard on its way down: the head of the section below the one the yard hoists on. A yard
 * hoists on the uppermost section whose foot is below it.
 */
export function capBelow(mast: Mast, height: number): MastSection | undefined {
  const at = mast.sections.findLastIndex(section => section.foot !== undefined && section.foot.z < height)
  return at > 0 ? mast.sections[at - 1] : undefined
}
