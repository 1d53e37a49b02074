import { ink, weight } from '../ink.ts'
import type { Mark, Point } from '../sheet.ts'
import type { ChartLayout, PlacedList } from './layout.ts'

/** A line from a pin to its number. */
export interface Leader {
  readonly points: readonly [Point, Point, Point, Point]
  readonly isFree: boolean
}

/** Level from the pin to outside her widest beam, then slanting, then level into the number. */
export function leadersOf(layout: ChartLayout): readonly Leader[] {
  return layout.lists.filter(list => list.group.column === 'inner').flatMap(list => leadersTo(list, layout))
}

function leadersTo(list: PlacedList, { paper, leaderTurn, onSheet }: ChartLayout): readonly Leader[] {
  const out = list.group.side === 'port' ? -1 : 1
  return list.rows.flatMap(({ place, baseline, line }): readonly Leader[] => {
    if (!place?.at) return []
    const pin = onSheet(place.at.x, place.at.y)
    const y = list.top + baseline - 0.97
    const points = [
      { x: pin.x, y: pin.y },
      { x: paper.width / 2 + out * leaderTurn, y: pin.y },
      { x: list.edge - out * 2.2, y },
      { x: list.edge - out * 0.6, y },
    ] as const
    return [{ points, isFree: line === undefined }]
  })
}

/** Leaders are thin and grey, and dashed to places that are free. */
export const leaderMark = ({ points, isFree }: Leader): Mark => ({
  kind: 'line',
  points,
  pen: { ink: isFree ? ink.faint : ink.rig, width: weight.a, ...(isFree ? { dash: [1, 0.7] } : {}) },
})

/** How many pairs of leaders cross: none may. */
export function crossings(leaders: readonly Leader[]): number {
  let count = 0
  leaders.forEach((a, index) => {
    for (const b of leaders.slice(index + 1)) if (doCross(a, b)) count += 1
  })
  return count
}

// Both turn on one upright and end on one upright: they cross if they change order between the two.
function doCross(a: Leader, b: Leader): boolean {
  const [, turnA, endA] = a.points
  const [, turnB, endB] = b.points
  if (turnA.x !== turnB.x) return false
  return (turnA.y - turnB.y) * (endA.y - endB.y) < 0 || turnA.y === turnB.y
}
