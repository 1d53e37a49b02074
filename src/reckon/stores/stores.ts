import type { Metres } from '../../measure/index.ts'
import type { Rig } from '../../rig/index.ts'
import type { Figures } from '../figures.ts'
import { type Blocks, blocksOf } from './blocks.ts'
import { type Cordage, cordageOf, type Unordered } from './cordage.ts'
import type { Solve } from './cutting.ts'
import { type Canvas, canvasOf, type Pins, pinsOf, thimblesOf } from './fittings.ts'

/** All that is to be ordered for a rig. `stores.md` has the methods. */
export interface Stores {
  readonly coil: Metres
  readonly cordage: readonly Cordage[]
  readonly unordered: readonly Unordered[]
  readonly blocks: readonly Blocks[]
  readonly pins: readonly Pins[]
  readonly thimbles: readonly { readonly rope: Metres; readonly count: number }[]
  readonly canvas: readonly Canvas[]
}

/** What a rig needs of rope, blocks, pins, thimbles and canvas, from coils of one length and cloth of one width. */
export async function storesOf(
  rig: Rig,
  figures: Pick<Figures, 'leads' | 'sails' | 'assumptions'>,
  { coil, clothWidth }: { readonly coil: Metres; readonly clothWidth: Metres },
  solve: Solve,
): Promise<Stores> {
  const { cordage, unordered } = await cordageOf(rig, figures, coil, solve)
  return {
    coil,
    cordage,
    unordered,
    blocks: blocksOf(rig),
    pins: pinsOf(rig),
    thimbles: thimblesOf(cordage),
    canvas: canvasOf(rig, figures, clothWidth),
  }
}
