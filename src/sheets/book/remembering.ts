import type { Ruler, Typeface } from '../typeface.ts'

/** A ruler that looks up what it has measured before: a book sets the same words many times to see what fits. */
export function remembering(ruler: Ruler): Ruler {
  const measured = new WeakMap<Typeface, Map<string, number>>()
  return (words, type) => {
    let widths = measured.get(type)
    if (!widths) {
      widths = new Map()
      measured.set(type, widths)
    }
    const known = widths.get(words)
    if (known !== undefined) return known
    const width = ruler(words, type)
    widths.set(words, width)
    return width
  }
}
