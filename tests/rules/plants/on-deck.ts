import type { Point3 } from '../../../src/measure/index.ts'
import type { Line } from '../../../src/rig/index.ts'
import { anywhere, type Plant, type Plants } from './plant.ts'

/** What covers a point of the deck, with its top at a height. */
export function thing(kind: string, { x, y }: Point3, top: number): string {
  const side = y < 0 ? 'port' : 'starboard'
  const [from, to] = [x - 0.3, x + 0.3].map(n => `${Math.abs(n).toFixed(3)} m${n < 0 ? ' forward' : ''}`)
  const out = [Math.max(0, Math.abs(y) - 0.3), Math.abs(y) + 0.3].map(n => `${n.toFixed(3)} m`)
  const aft = x + 0.3 < 0 ? '' : ' aft'
  return `deck\n  planted ${kind} from ${from} to ${to}${aft}, ${out.join(' to ')} ${side}, top ${top.toFixed(3)} m up\n`
}

/** A house an arm's length before the pin of a halyard at the ship's side. */
const houseBeforeHalyard: Plant = ({ lines, rig }) =>
  rig.lines.flatMap(({ kind, host, belay }) => {
    const lie = rig.railAt.get(belay?.rail ?? '')?.lie
    const at = belay?.at
    if (!host || !at || !kind.includes('halyard') || (lie !== 'port' && lie !== 'starboard')) return []
    if (Math.abs(at.y) < 1.2) return []
    const before = { ...at, y: at.y - Math.sign(at.y) * 0.7 } as Point3
    return [anywhere('belay/no-clear-deck', `${lines.join('\n')}\n${thing('house', before, at.z + 1)}`)]
  })

/** A house between the places of a sheet and its clewline, where the height of the deck is said. */
const houseBetween: Plant = ({ lines, rig }) =>
  rig.lines.flatMap(sheet => {
    const clewline = rig.pairAt
      .get(sheet.pairKey.replace(/sheet$/, 'clewline'))
      ?.find(({ side }) => side === sheet.side)
    const [a, b] = [sheet.belay?.at, clewline?.belay?.at]
    if (sheet.kind !== 'sheet' || !a || !b || rig.vessel.decks.length === 0) return []
    const far = Math.hypot(a.x - b.x, a.y - b.y)
    if (isOfCourse(sheet) || far < 1.5 || far > 6) return []
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: a.z } as Point3
    return [anywhere('reach/out-of-sight', `${lines.join('\n')}\n${thing('house', middle, a.z + 2)}`)]
  })

const isOfCourse = ({ host }: Line) => host?.name.endsWith('course') ?? false

/** Faults of what stands on deck. */
export const onDeck: Plants = {
  'a house before a halyard': houseBeforeHalyard,
  'a house between a sheet and its clewline': houseBetween,
}
