import { millimetresPerPoint, type Point, type TextMark } from '../sheets/index.ts'

/**
 * Where the first letter's origin stands, for words hung by their middle or end. The gap that tracking
 * leaves after the last letter is not seen, so it is not centred either. Both presses begin here and leave
 * anchoring to no program that opens the file.
 */
export function textStart({ at, width, type, anchor = 'start', turn = 0 }: TextMark): Point {
  if (anchor === 'start') return at
  const seen = width - (type.tracking ?? 0) * type.size * millimetresPerPoint
  const back = anchor === 'middle' ? seen / 2 : seen
  const angle = (turn * Math.PI) / 180
  return { x: at.x - back * Math.cos(angle), y: at.y + back * Math.sin(angle) }
}
