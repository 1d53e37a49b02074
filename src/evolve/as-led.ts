import type { Phase, PhaseAct, Rig, WorkedLine } from '../rig/index.ts'

/**
 * A phase with its braces called as they lead. The text speaks of braces that lead aft: hauling the weather brace
 * squares the yard. Where a pair leads forward the lee brace does that, and the other of the two is called throughout
 * (R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. XI: lee main and weather crossjack braces are let go
 * in one breath).
 */
export function asLed(rig: Rig, phase: Phase): Phase {
  return {
    ...phase,
    acts: phase.acts.map((act): PhaseAct => ({ ...act, lines: act.lines.map(line => ledLine(rig, line)) })),
  }
}

function ledLine(rig: Rig, line: WorkedLine): WorkedLine {
  const pair = rig.pairAt.get(line.pairKey) ?? []
  const leadsForward = pair.length > 0 && pair.every(({ swings }) => swings === 'forward')
  if (!leadsForward) return line
  if (line.reach === 'weather') return { ...line, reach: 'lee' }
  return line.reach === 'lee' ? { ...line, reach: 'weather' } : line
}
