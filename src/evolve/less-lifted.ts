import type { Phase, Rig } from '../rig/index.ts'

/** A phase without the lines that are sent down: nobody can work them. An act that is left with none falls away. */
export const lessLifted = (rig: Rig, phase: Phase): Phase => ({
  ...phase,
  acts: phase.acts.flatMap(act => {
    const lines = act.lines.filter(({ pairKey }) => !isLifted(rig, pairKey))
    return lines.length > 0 ? [{ ...act, lines }] : []
  }),
})

/** Whether the line, or both of the pair, are sent down for a time. */
export const isLifted = (rig: Rig, pairKey: string): boolean =>
  rig.pairAt.get(pairKey)?.[0]?.lifted !== undefined
