import type { Ruler, Typeface } from './typeface.ts'

/** Words set in at most `most` lines, broken at spaces so that the longest line is as short as it can be. */
export function narrowest(words: string, most: number, type: Typeface, ruler: Ruler): readonly string[] {
  const parts = words.split(' ').filter(part => part !== '')
  if (parts.length < 2 || most < 2) return [parts.join(' ')]
  let tooNarrow = 0
  let enough = ruler(words, type)
  let best = [parts.join(' ')]
  // Sixteen halvings settle the measure within a hundredth of a millimetre on any sheet.
  for (let halving = 0; halving < 16; halving += 1) {
    const measure = (tooNarrow + enough) / 2
    const lines = setTo(measure, parts, type, ruler)
    if (lines.length <= most && widthOf(lines, type, ruler) <= measure) {
      best = lines
      enough = measure
    } else tooNarrow = measure
  }
  return best
}

/** Words set to a measure in as few lines as it takes, and those of like length. A word longer than it stands out. */
export function setWithin(words: string, measure: number, type: Typeface, ruler: Ruler): readonly string[] {
  const parts = words.split(' ').filter(part => part !== '')
  return narrowest(words, setTo(measure, parts, type, ruler).length, type, ruler)
}

/** The longest of the lines, in millimetres. */
export const widthOf = (lines: readonly string[], type: Typeface, ruler: Ruler): number =>
  lines.reduce((longest, line) => Math.max(longest, ruler(line, type)), 0)

/** The words, or as many letters of them as fit the measure, with an ellipsis. */
export function cutTo(measure: number, words: string, type: Typeface, ruler: Ruler): string {
  if (ruler(words, type) <= measure) return words
  const letters = [...words]
  let kept = 0
  let over = letters.length
  while (kept + 1 < over) {
    const half = (kept + over) >> 1
    if (ruler(`${letters.slice(0, half).join('').trimEnd()}…`, type) <= measure) kept = half
    else over = half
  }
  return `${letters.slice(0, kept).join('').trimEnd()}…`
}

function setTo(measure: number, parts: readonly string[], type: Typeface, ruler: Ruler): string[] {
  const lines: string[] = []
  for (const part of parts) {
    const last = lines.at(-1)
    const longer = last === undefined ? part : `${last} ${part}`
    if (last !== undefined && ruler(longer, type) <= measure) lines[lines.length - 1] = longer
    else lines.push(part)
  }
  return lines
}
