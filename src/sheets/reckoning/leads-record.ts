import { known } from '../../measure/index.ts'
import type { Figures, Way } from '../../reckon/index.ts'
import { type Plain, type ReckoningRecord, record } from './plain.ts'

/** How a line turns at each lead, from its pin outward. */
export const turnsRecord = ({ turns }: Way): Plain =>
  turns.map(({ what, turn }) => ({ at: what, turn_rad: turn }))

/** Where leads pass close, and what is led through a mast. */
export function foulsRecord(figures: Figures): readonly ReckoningRecord[] {
  const { crossings, chafes, braced, throughMasts } = figures.fouls()
  const passings = [
    { yards: 'square', crossings, chafes },
    { yards: 'sharp', ...braced },
  ].flatMap(({ yards, crossings, chafes }) =>
    [
      ...crossings.map(one => ({ ...one, passes: one.other.address })),
      ...chafes.map(one => ({ ...one, passes: one.part.name })),
    ].map(({ line, passes, clear, at }) =>
      record({ line: line.address, passes, yards, up_m: at.z }, { clear_m: known(clear) }),
    ),
  )
  return [...passings, ...throughMasts.map(({ line, mast }) => ({ line: line.address, through: mast.name }))]
}
