import { type Metres, metres } from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { tackleOf } from '../tackle/index.ts'

/** Blocks of one size and number of sheaves. */
export interface Blocks {
  readonly sheaves: number
  /** Length of the shell. */
  readonly size: Metres
  readonly rope: Metres
  readonly count: number
  /** What they serve, each named once. */
  readonly lines: readonly string[]
}

/**
 * A shell is about twelve times as long as its rope is thick: list of R. C. Anderson, The Rigging of Ships 1600-1720,
 * second-hand; a rule to order by only where the maker has no other.
 */
const shellToRope = 12

/** The blocks of all tackles and leads, the most sheaves and the largest first. */
export function blocksOf(rig: Rig): readonly Blocks[] {
  const found = new Map<string, { sheaves: number; rope: Metres; count: number; lines: Set<string> }>()
  for (const line of rig.lines) {
    const rope = line.rope?.diameter
    if (rope === undefined) continue
    for (const sheaves of [...tackleBlocks(line), ...leadBlocks(line)]) {
      const key = `${sheaves} ${rope}`
      const blocks = found.get(key) ?? { sheaves, rope, count: 0, lines: new Set() }
      blocks.count++
      blocks.lines.add(line.label)
      found.set(key, blocks)
    }
  }
  return [...found.values()]
    .sort((a, b) => b.sheaves - a.sheaves || b.rope - a.rope)
    .map(({ sheaves, rope, count, lines }) => ({
      sheaves,
      rope,
      size: metres(shellToRope * rope),
      count,
      lines: [...lines],
    }))
}

/** Of each stage two blocks, that share its sheaves as evenly as they can: a luff is a double and a single. */
function tackleBlocks({ purchase }: Line): readonly number[] {
  const tackle = tackleOf(purchase)
  const stages = tackle.known ? tackle.value.stages : []
  return stages
    .flatMap(({ sheaves }) => [Math.ceil(sheaves / 2), Math.floor(sheaves / 2)])
    .filter(sheaves => sheaves > 0)
}

/** A single block at each point of the lead that is one; the last before the end is the tackle's own, where a tackle lies there. */
function leadBlocks({ lead }: Line): readonly number[] {
  const between = lead.slice(1, -1)
  const alongLast = (lead.at(-1)?.parts ?? 1) > 1
  return (alongLast ? between.slice(0, -1) : between).flatMap(({ what }) =>
    what.endsWith('block') ? [1] : [],
  )
}
