import { millimetresPerPoint, type Point, type Ruler, type TextMark } from '../sheets/index.ts'

/**
 * Where the first letter's origin stands, for words hung by their middle or end. The gap that tracking
 * leaves after the last letter is not seen, so it is not centred either. Both presses begin here and leave
 * anchoring to no program that opens the file.
 */
export function textStart({ at, width, type, anchor = 'start', turn = 0 }: TextMark): Point {
  if (anchor === 'start') return at
  const shown = width - (type.tracking ?? 0) * type.size * millimetresPerPoint
  const back = anchor === 'middle' ? shown / 2 : shown
  const angle = (turn * Math.PI) / 180
  return { x: at.x - back * Math.cos(angle), y: at.y + back * Math.sin(angle) }
}

/** Refuses words whose width is not what the font makes of them: they were laid out with another ruler. */
export function checkWidth({ words, type, width }: TextMark, ruler: Ruler): void {
  const measured = ruler(words, type)
  if (Math.abs(measured - width) <= 0.001) return
  throw new Error(
    `"${words}" is laid out as ${width} mm wide, but ${type.face} at ${type.size} makes it ${measured}`,
  )
}
