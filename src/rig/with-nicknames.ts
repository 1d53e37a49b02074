import { byPair } from './build/hung.ts'
import type { Line } from './line.ts'
import type { Rig } from './rig.ts'

/** The rig with what its lines are called aboard to be printed beside their names. */
export function withNicknames(rig: Rig): Rig {
  const lines = rig.lines.map((line): Line => ({ ...line, aside: line.nicknames[0] }))
  return {
    ...rig,
    lines,
    lineAt: new Map(lines.map(line => [line.address, line])),
    pairAt: byPair(lines),
  }
}
