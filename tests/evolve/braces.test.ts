import { describe, expect, it } from 'vitest'
import { compiledRig } from '../support/compiled.ts'

// R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. XI: in tacking the lee main and the WEATHER crossjack
// braces are let go at one order, since the after yards' braces lead forward. Which of a pair is hauled to spill a sail
// therefore follows from its lead.
const { rig, evolutions } = compiledRig('ship-sorrel-wend').value

const bracesHauled = (sail: string) => {
  const spill = evolutions.ordersAt.get(sail)?.douse?.phases[0]
  return {
    haul: spill?.haul.filter(({ pairKey }) => pairKey.endsWith('.brace')).map(({ reach }) => reach),
    ease: spill?.ease.filter(({ pairKey }) => pairKey.endsWith('.brace')).map(({ reach }) => reach),
  }
}
const swings = (words: string) => rig.lines.find(line => line.words === words)?.swings

describe('the brace that is hauled', () => {
  it('is told from its lead: aft on fore and main, forward on the mizzen of a ship', () => {
    const braces = rig.lines.filter(({ kind }) => kind === 'brace')
    const forward = braces.filter(line => line.swings === 'forward')
    expect(new Set(forward.map(({ mast }) => mast))).toEqual(new Set(['mizzen mast']))
    expect(forward).toHaveLength(braces.filter(({ mast }) => mast === 'mizzen mast').length)
    expect(braces.filter(line => line.swings === undefined)).toEqual([])
    expect([swings('fore course brace'), swings('crossjack brace')]).toEqual(['aft', 'forward'])
  })

  it('is the weather one where it leads aft, and the lee one where it leads forward', () => {
    expect(bracesHauled('main royal')).toEqual({ haul: ['weather'], ease: ['lee'] })
    expect(bracesHauled('mizzen royal')).toEqual({ haul: ['lee'], ease: ['weather'] })
  })

  it('is the same in the two lines of one name, were the block led the other way', () => {
    const vangs = rig.lines.filter(({ kind }) => kind === 'vang')
    expect(vangs.map(line => line.swings)).toEqual([undefined, undefined])
  })
})
