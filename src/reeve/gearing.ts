import type { Kit } from '../rig/index.ts'
import { nameKey } from '../syntax/index.ts'
import type { Rope } from './ropes.ts'
import type { TableSail } from './tables.ts'

/**
 * The gear whose lines are most nearly those of a sail, or of a spar; a gear of the sail's own class is chosen before
 * another. None where a thing has no line of any gear.
 */
export function gearFor(
  ropes: readonly Rope[],
  kits: ReadonlyMap<string, Kit>,
  fits: (kit: Kit) => boolean,
  sailClass = '',
): Kit | undefined {
  const sharedWith = (kit: Kit) =>
    ropes
      .map(({ name, pair }) => ({ line: kit.lines.get(nameKey(name)), pair }))
      .reduce((sum, { line, pair }) => sum + (line ? (line.pair === pair ? 1 : 0.75) : 0), 0)
  const alike = (kit: Kit) => {
    const shared = sharedWith(kit)
    const own = nameKey(kit.name.words)
    const nearness = own === sailClass ? 0.5 : own.endsWith(sailClass) ? 0.25 : 0
    return 2 * shared - kit.lines.size - ropes.length + nearness
  }
  return [...kits.values()]
    .filter(kit => kit.lines.size > 0 && fits(kit) && sharedWith(kit) > 0)
    .reduce<Kit | undefined>((best, kit) => (best && alike(best) >= alike(kit) ? best : kit), undefined)
}

/** Whether a gear says that it fits sails of a class: 'square sail on hoisting yard', 'headsail or staysail on stay'. */
export const fitsSail = (sail: TableSail) => (kit: Kit) =>
  kit.fits.some(({ words }) => {
    const said = nameKey(words)
    return said === sail.class || (sail.square && said === 'square sail')
  })

/** Whether a gear says that it is for a spar of a kind: 'bowsprit', 'fixed yard without sail'. */
export const fitsSpar = (kind: string) => (kit: Kit) =>
  nameKey(kit.fits[0]?.words ?? '')
    .split(' ')
    .includes(kind)
