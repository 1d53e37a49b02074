import type { Mast, MastSection, Rig, Spar } from '../../rig/index.ts'

/** Height of a mast's truck, in metres above the waterline; undefined without geometry. */
export function truckOf(mast: Mast): number | undefined {
  const heights = mast.sections.flatMap(section => section.head?.z ?? [])
  return heights.length > 0 ? Math.max(...heights) : undefined
}

export const mastOf = (rig: Rig, spar: Pick<Spar, 'mast'>): Mast | undefined =>
  spar.mast === undefined ? undefined : rig.mastAt.get(spar.mast)

/**
 * The cap that stops a yard on its way down: the head of the section below the one the yard hoists on. It hoists on the
 * lowest section that reaches as high: in the doubling the next section stands before the one the parrel slides on.
 */
export function capBelow(mast: Mast, height: number): MastSection | undefined {
  const at = mast.sections.findIndex(section => section.head !== undefined && section.head.z >= height)
  return at > 0 ? mast.sections[at - 1] : undefined
}
