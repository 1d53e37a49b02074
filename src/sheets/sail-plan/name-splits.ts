/**
 * The words in one line, two lines and so on up to `most`, each time broken where the longest line has the fewest
 * letters. A name of fewer words has fewer ways; one of very many is broken no more than once.
 */
export function narrowSplits(words: string, most: number): readonly (readonly string[])[] {
  const parts = words.split(/\s+/).filter(part => part !== '')
  const lines = Math.min(most, parts.length, parts.length > 12 ? 2 : most)
  return Array.from({ length: Math.max(1, lines) }, (_, i) => narrowest(parts, i + 1))
}

function narrowest(parts: readonly string[], lines: number): readonly string[] {
  if (lines <= 1 || parts.length <= 1) return [parts.join(' ')]
  let best: readonly string[] | undefined
  for (let cut = 1; cut <= parts.length - (lines - 1); cut++) {
    const split = [parts.slice(0, cut).join(' '), ...narrowest(parts.slice(cut), lines - 1)]
    if (!best || longest(split) < longest(best)) best = split
  }
  return best ?? [parts.join(' ')]
}

const longest = (lines: readonly string[]): number =>
  lines.reduce((most, line) => Math.max(most, [...line].length), 0)
