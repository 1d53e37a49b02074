import type { LineDeed, LineFunction } from './line.ts'

const corners = new Set(['clew', 'tack', 'head', 'throat', 'peak', 'earing', 'outer clew', 'inner clew'])

/**
 * What a haul does, from the deed as the text says it. "Raises" and "gathers" are told apart by their object:
 * a corner is clewed up, an edge gathered, a reef cringle reefed.
 */
export function functionOf({
  verb,
  object,
  direction,
}: Pick<LineDeed, 'verb' | 'object' | 'direction'>): LineFunction {
  switch (verb) {
    case 'hoists':
    case 'cocks':
    case 'tops':
      return 'hoists'
    case 'lowers':
      return 'lowers'
    case 'swings':
      return 'turns'
    case 'steadies':
      return 'keeps'
    case 'brings':
      return direction === 'out' ? 'extends' : 'clews'
    case 'raises':
    case 'gathers':
      if (object.includes('reef')) return 'reefs'
      return corners.has(object) ? 'clews' : 'gathers'
    default:
      return 'extends'
  }
}
