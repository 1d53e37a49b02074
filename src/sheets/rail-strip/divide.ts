import type { StripPin } from './content.ts'

/**
 * Pins divided into `count` runs of about one length, each border moved to where one sail's gear ends, if that
 * is within a fifth of a run.
 */
export function divided(pins: readonly StripPin[], count: number): readonly (readonly StripPin[])[] {
  const length = pins.length / count
  const borders = Array.from({ length: count - 1 }, (_, index) =>
    nearestBorder(pins, (index + 1) * length, length / 5),
  )
  const ends = [0, ...borders, pins.length]
  return ends.slice(1).map((end, index) => pins.slice(ends[index], end))
}

function nearestBorder(pins: readonly StripPin[], wanted: number, reach: number): number {
  const middle = Math.round(wanted)
  for (let away = 0; away <= reach; away += 1) {
    for (const at of [middle - away, middle + away]) if (isBorder(pins, at)) return at
  }
  return middle
}

const isBorder = (pins: readonly StripPin[], at: number): boolean => {
  const before = pins[at - 1]
  const after = pins[at]
  return (
    before !== undefined && after !== undefined && (before.host === undefined || before.host !== after.host)
  )
}
