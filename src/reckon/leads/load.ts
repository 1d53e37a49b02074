import type { Metres, Point3 } from '../../measure/index.ts'
import type { Boom, Line, Rig, Yard } from '../../rig/index.ts'

/** Where a line's load stands at both ends of its travel, as distances from the last lead before it. */
export interface Ends {
  /** Hauled home. */
  readonly home: Metres
  /** Eased as far as it goes. */
  readonly slack: Metres
  /** How far the load itself moves. */
  readonly travel: Metres
}

/** The yard that a line works: the one its sail is bent to, or the one its gear is hung on. */
export function yardOf(line: Line, rig: Rig): Yard | undefined {
  const { host } = line
  const sail = host?.kind === 'sail' ? rig.sailAt.get(host.name) : undefined
  const spar = rig.sparAt.get(sail?.kind === 'square' ? sail.yard : (host?.name ?? ''))
  return spar?.kind === 'yard' ? spar : undefined
}

/** The yard that a halyard hoists, square or slung: its place when set, and its height when lowered. */
export function hoistingYard(
  line: Line,
  rig: Rig,
): { readonly at: Point3 | undefined; readonly loweredHeight: Metres | undefined } | undefined {
  const yard = yardOf(line, rig)
  if (yard) return { at: yard.middle, loweredHeight: yard.loweredHeight }
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  const spars = sail?.kind === 'fore-and-aft' ? sail.on.map(name => rig.sparAt.get(name)) : []
  const slung = spars.find((spar): spar is Boom => spar?.kind === 'slung yard')
  return slung && { at: slung.slings, loweredHeight: slung.loweredHeight }
}

/** Whether the load is a boom or a gaff: that swings, where a mast that a line steadies doesn't. */
export const isSwung = ({ deed }: Line): boolean => /(?:^| )(?:boom|gaff)$/.test(deed?.object ?? '')

/** Why a travel is unknown. */
export const unsaid = ({ deed }: Line): string => `How far the ${deed?.object} travels is not said.`
