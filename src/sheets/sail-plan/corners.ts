import type { Rig } from '../../rig/index.ts'
import { cartouche, type SetCartouche } from '../cartouche.ts'
import { ink } from '../ink.ts'
import { keyMarks } from '../key.ts'
import { lettered } from '../lettered.ts'
import { type Rect, rect } from '../plane.ts'
import type { Plate } from '../plate.ts'
import { plateType } from '../plate-type.ts'
import type { Setting } from '../setting.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import { endsUnderSails, spread, type TableForm, tableForm } from './areas-table.ts'
import { keyEntries } from './key-entries.ts'
import { planNotes } from './notes.ts'
import { onPlan } from './on-plan.ts'
import type { Ship } from './ship.ts'

const inset = { left: 11.5, right: 9.5, cartouche: 14.6, key: 16 } as const
const keyWidth = 62

/** The cartouche, aft and high. */
export function cartoucheOf(ship: Ship, { frame }: Plate, { ruler, imprint }: Setting): SetCartouche {
  const { vessel } = ship.rig
  return cartouche(
    {
      vessel: vessel.name,
      rig: vessel.rig,
      title: 'Sail plan, starboard profile',
      notes: planNotes(ship, ruler),
      errors: imprint.errors,
    },
    { x: frame.left + inset.left, y: frame.top + inset.cartouche },
    ruler,
  )
}

/** The key, forward and high; nothing but its place where there is nothing to explain. */
export function keyOf(
  ship: Ship,
  { frame }: Plate,
  { ruler }: Setting,
): { mark: Mark | undefined; bounds: Rect } {
  const at = { x: frame.right - inset.right - keyWidth, y: frame.top + inset.key }
  const entries = keyEntries(onPlan(ship))
  if (entries.length === 0) return { mark: undefined, bounds: rect(at.x, at.y, at.x + keyWidth, at.y) }
  return keyMarks('key', entries, { at, width: keyWidth }, ruler)
}

/** The table of areas as a strip above the band: as many columns as the plate's breadth holds. */
export function stripForm(rig: Rig, { frame }: Plate, { ruler }: Setting): TableForm {
  const breadth = frame.right - frame.left - inset.left - inset.right
  const forms = [8, 7, 6, 5, 4, 3, 2].map(columns => tableForm(rig, columns, ruler))
  const fitting = forms.filter(({ width }) => width <= breadth)
  const form = fitting.find(one => endsUnderSails(rig, one)) ?? fitting[0] ?? tableForm(rig, 1, ruler)
  return spread(form, breadth)
}

/** What stands in the middle of a plate on which nothing can be drawn. */
export function nothingDrawn({ room }: Plate, { ruler }: Setting): Mark {
  const middle = { x: (room.left + room.right) / 2, y: (room.top + room.bottom) / 2 }
  const words = 'Nothing is recorded that could be drawn to scale'
  return tagged('P', [lettered(ruler, middle, words, plateType.rig, ink.rig, { anchor: 'middle' })])
}
