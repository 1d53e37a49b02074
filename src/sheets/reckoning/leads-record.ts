import { known } from '../../measure/index.ts'
import type { Figures, Way } from '../../reckon/index.ts'
import { type Plain, type ReckoningRecord, record } from './plain.ts'

/** How a line turns at each lead, from its pin outward. */
export const turnsRecord = ({ turns }: Way): Plain =>
  turns.map(({ what, turn }) => ({ at: what, turn_rad: turn }))

/** Where leads pass close, and what is led through a mast. */
export function foulsRecord(figures: Figures): readonly ReckoningRecord[] {
  const { crossings, chafes, throughMasts } = figures.fouls()
  return [
    ...crossings.map(({ line, other, clear, at }) =>
      record({ line: line.address, passes: other.address, up_m: at.z }, { clear_m: known(clear) }),
    ),
    ...chafes.map(({ line, part, clear, at }) =>
      record({ line: line.address, passes: part.name, up_m: at.z }, { clear_m: known(clear) }),
    ),
    ...throughMasts.map(({ line, mast }) => ({ line: line.address, through: mast.name })),
  ]
}
