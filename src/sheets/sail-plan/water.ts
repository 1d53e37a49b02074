import type { Rig } from '../../rig/index.ts'
import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { shipLength } from '../measure-words.ts'
import type { Plate } from '../plate.ts'
import { plateType } from '../plate-type.ts'
import type { Mark, Point } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import type { HullLines } from './hull-lines.ts'
import { run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** The waterline from frame to frame, a few still ripples at either end, and its length in words. */
export function waterMarks({ vessel }: Rig, { frame }: Plate, view: View, ruler: Ruler): Mark {
  const y = view.at(0, 0).y
  const [left, right] = [frame.left + 3.4, frame.right - 3.4]
  const level = (from: number, to: number, down: number): Mark =>
    run(
      [
        { x: from, y: y + down },
        { x: to, y: y + down },
      ],
      { ink: ink.faint, width: down === 0 ? weight.b : weight.a },
    )
  const words =
    vessel.waterline === undefined ? 'waterline' : `waterline ${shipLength(vessel.waterline, vessel)}`
  return thing('waterline', words, [
    level(left, right, 0),
    ...[0, 1, 2].flatMap(n => {
      const reach = [42, 33, 22][n] ?? 20
      return [level(left, left + 0.72 * reach, 1.7 * (n + 1)), level(right - reach, right, 1.7 * (n + 1))]
    }),
    lettered(ruler, { x: right, y: y - 1 }, words, plateType.note, ink.rig, { anchor: 'end' }),
  ])
}

/** The perpendiculars under the keel, lettered FP and AP; none where they would run into each other. */
export function perpendiculars(
  { length }: HullLines,
  view: View,
  keelY: number,
  ruler: Ruler,
): readonly Mark[] {
  if (length * view.metre < 20) return []
  const top = keelY + 1.6
  const foot = keelY + 7.6
  const letter = (words: string, { x }: Point, inward: 1 | -1): readonly Mark[] => [
    run(
      [
        { x, y: top },
        { x, y: foot },
      ],
      pen,
    ),
    run(
      [
        { x, y: foot },
        { x: x + inward * 6.4, y: foot },
      ],
      pen,
    ),
    lettered(ruler, { x, y: foot + 3.6 }, words, plateType.mark, ink.rig, { anchor: 'middle' }),
  ]
  const letters = [...letter('FP', view.at(0, 0), -1), ...letter('AP', view.at(length, 0), 1)]
  return [thing('perpendiculars', 'Perpendiculars', letters)]
}

const pen = { ink: ink.faint, width: weight.b } as const
