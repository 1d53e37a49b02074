/**
 * The candidates nearest to a word as written, best first, four at most: what to offer when a name is unknown.
 * Distance counts letters put in, left out, changed or swapped with their neighbour (optimal string
 * alignment); a candidate further away than a third of the longer word is no help and is left out.
 */
export function nearest(word: string, candidates: Iterable<string>, most = 4): readonly string[] {
  return ranked(word, candidates)
    .slice(0, most)
    .map(({ candidate }) => candidate)
}

/**
 * The one candidate that a word as written surely means: a single letter from it, with no other near. Undefined
 * where a figure would change: "fore rail 2" is as good a name as "fore rail 3".
 */
export function surelyMeant(word: string, candidates: Iterable<string>): string | undefined {
  const [first, second] = ranked(word, candidates)
  if (!first || first.far > 1 || (second && second.far < 3)) return undefined
  return digitsOf(word) === digitsOf(first.candidate) ? first.candidate : undefined
}

/** The candidate nearer to a word as written than all others; undefined where none is near, or two are equally so. */
export function clearlyNearest(word: string, candidates: Iterable<string>): string | undefined {
  const [first, second] = ranked(word, candidates)
  return first && first.far !== second?.far ? first.candidate : undefined
}

const digitsOf = (word: string) => word.replace(/[^0-9]/g, '')

interface Ranked {
  readonly candidate: string
  readonly far: number
}

function ranked(word: string, candidates: Iterable<string>): readonly Ranked[] {
  const wanted = word.toLowerCase().slice(0, longestCompared)
  const near: Ranked[] = []
  for (const candidate of new Set(candidates)) {
    const other = candidate.toLowerCase().slice(0, longestCompared)
    const limit = Math.max(1, Math.floor(Math.max(wanted.length, other.length) / 3))
    if (Math.abs(wanted.length - other.length) > limit) continue
    const far = editDistance(wanted, other, limit)
    if (far <= limit) near.push({ candidate, far })
  }
  return near.sort((a, b) => a.far - b.far || (a.candidate < b.candidate ? -1 : 1))
}

/** A name longer than this is compared by its beginning, so that a hostile text costs little. */
const longestCompared = 60

/** Distance between two words, or limit + 1 as soon as it must exceed the limit. */
function editDistance(a: string, b: string, limit: number): number {
  let before: number[] = []
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    let least = i
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      let cost = Math.min(
        (previous[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (previous[j - 1] ?? 0) + (same ? 0 : 1),
      )
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      if (swapped) cost = Math.min(cost, (before[j - 2] ?? 0) + 1)
      row.push(cost)
      least = Math.min(least, cost)
    }
    if (least > limit) return limit + 1
    before = previous
    previous = row
  }
  return previous[b.length] ?? 0
}
