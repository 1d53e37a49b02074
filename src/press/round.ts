/**
 * A number as both presses write it: rounded once, to a thousandth of a millimetre (or of a degree), and
 * never minus nought. Anything but a finite number is a fault of the drawing and is refused here, before it
 * can become a nought in one format and a broken file in the other.
 */
export function round(value: number): number {
  if (!Number.isFinite(value)) throw new Error(`A sheet holds a coordinate that is no number: ${value}`)
  return Math.round(value * 1000) / 1000 || 0
}
