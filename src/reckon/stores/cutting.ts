import type { Metres } from '../../measure/index.ts'

/** How pieces are cut from coils of one length. */
export interface Cutting {
  /** The pieces of each coil, longest first. */
  readonly coils: readonly (readonly Metres[])[]
  /** No cutting needs fewer coils than this: with `coils.length` equal to it, the cutting is the best there is. */
  readonly atLeast: number
}

/** More ways of cutting one coil than this are not looked through; the cutting found by then stands, with its bound. */
const mostPatterns = 5_000

/** Pieces are cut to the full centimetre. */
const centimetres = (length: Metres) => Math.ceil(length * 100 - 1e-6)

/** Solves a model in the LP format of CPLEX: the value of each variable, and the best bound that was proved. */
export type Solve = (model: string) => Promise<{
  readonly values: ReadonlyMap<string, number>
  readonly bound: number
}>

/**
 * The fewest coils that pieces can be cut from, by whole numbers of each way to cut a coil: P. C. Gilmore and
 * R. E. Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9 (1961), 849-859. The
 * solver is asked only where laying the longest pieces first does not already meet the bound.
 *
 * @param pieces no longer than a coil
 */
export async function fewestCoils(pieces: readonly Metres[], coil: Metres, solve: Solve): Promise<Cutting> {
  const first = longestFirst(pieces, coil)
  const sum = pieces.reduce((total, piece) => total + centimetres(piece), 0)
  const bySum = Math.ceil(sum / centimetres(coil))
  if (first.length <= bySum) return { coils: first, atLeast: first.length }
  const wanted = counts(pieces)
  const patterns = patternsOf(wanted, centimetres(coil))
  if (patterns === undefined) return { coils: first, atLeast: bySum }
  const { values, bound } = await solve(model(wanted, patterns))
  const solved = laidOut(pieces, wanted, patterns, values)
  const whole = solved.flat().length === pieces.length
  const coils = whole && solved.length < first.length ? solved : first
  return { coils, atLeast: Math.max(bySum, Math.ceil(bound - 1e-6)) }
}

/** Each piece, longest first, into the first coil that still has room for it. */
function longestFirst(pieces: readonly Metres[], coil: Metres): readonly (readonly Metres[])[] {
  const coils: { left: number; readonly pieces: Metres[] }[] = []
  for (const piece of [...pieces].sort((a, b) => b - a)) {
    const length = centimetres(piece)
    const roomy = coils.find(({ left }) => left >= length)
    const into = roomy ?? { left: centimetres(coil), pieces: [] }
    if (!roomy) coils.push(into)
    into.left -= length
    into.pieces.push(piece)
  }
  return coils.map(({ pieces }) => pieces)
}

/** How many pieces are wanted of each length, longest first. */
const counts = (pieces: readonly Metres[]): ReadonlyMap<number, number> => {
  const wanted = new Map<number, number>()
  for (const length of pieces.map(centimetres).sort((a, b) => b - a))
    wanted.set(length, (wanted.get(length) ?? 0) + 1)
  return wanted
}

/** A way to cut a coil: how many pieces of each length, in the order of the lengths wanted. */
type Pattern = readonly number[]

/** All ways to cut a coil that leave no room for another piece; undefined where there are too many. */
function patternsOf(wanted: ReadonlyMap<number, number>, coil: number): readonly Pattern[] | undefined {
  const lengths = [...wanted]
  const patterns: Pattern[] = []
  const cut = (at: number, left: number, so: Pattern): boolean => {
    const next = lengths[at]
    if (!next) {
      const full = lengths.every(([length, many], i) => length > left || so[i] === many)
      if (full) patterns.push(so)
      return patterns.length <= mostPatterns
    }
    const [length, many] = next
    for (let count = Math.min(many, Math.floor(left / length)); count >= 0; count--)
      if (!cut(at + 1, left - count * length, [...so, count])) return false
    return true
  }
  return cut(0, coil, []) ? patterns : undefined
}

function model(wanted: ReadonlyMap<number, number>, patterns: readonly Pattern[]): string {
  const name = (i: number) => `p${i}`
  const names = patterns.map((_, i) => name(i))
  const rows = [...wanted.values()].map((many, at) => {
    const terms = patterns.flatMap((pattern, i) =>
      (pattern[at] ?? 0) > 0 ? [`${pattern[at]} ${name(i)}`] : [],
    )
    return ` r${at}: ${terms.join(' + ')} >= ${many}`
  })
  return `Minimize\n obj: ${names.join(' + ')}\nSubject To\n${rows.join('\n')}\nGeneral\n ${names.join(' ')}\nEnd\n`
}

/** The pieces themselves, dealt out to the ways of cutting that were chosen; a way may have room for more than are left. */
function laidOut(
  pieces: readonly Metres[],
  wanted: ReadonlyMap<number, number>,
  patterns: readonly Pattern[],
  values: ReadonlyMap<string, number>,
): readonly (readonly Metres[])[] {
  const lengths = [...wanted.keys()]
  const left = lengths.map(length => pieces.filter(piece => centimetres(piece) === length))
  return patterns.flatMap((pattern, i) =>
    Array.from({ length: Math.round(values.get(`p${i}`) ?? 0) }, () =>
      pattern.flatMap((many, at) => left[at]?.splice(0, many) ?? []),
    ),
  )
}
