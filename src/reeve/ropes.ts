import type { TableLine, Tables } from './tables.ts'

/** A line of the tables, or the two of a pair as one. */
export interface Rope {
  readonly words: string
  readonly pair: boolean
  /** The line itself; of a pair, the port one. */
  readonly line: TableLine
  readonly lines: readonly TableLine[]
  /** What it hangs on, and its name there: the clewline of the fore royal. */
  readonly host: { readonly kind: 'sail' | 'spar'; readonly name: string } | undefined
  readonly name: string
}

/** The lines of the tables, those of a pair together, each with the sail or spar whose name begins its own; what works a mast hangs on none. */
export function ropesOf({ lines, sails, spars }: Tables): readonly Rope[] {
  const hosts = [
    ...sails.map(({ name }) => ({ kind: 'sail' as const, name })),
    ...spars
      .filter(({ kind }) => kind === 'yard' || kind === 'bowsprit')
      .map(({ name }) => ({ kind: 'spar' as const, name })),
  ].sort((a, b) => Number(a.kind === 'spar') - Number(b.kind === 'spar') || b.name.length - a.name.length)
  const masts = new Set(
    spars.flatMap(({ kind, name, mast }) => (kind === 'mast' ? [name, mast, `${mast} mast`] : [])),
  )
  const byWords = new Map<string, TableLine[]>()
  for (const line of lines) byWords.set(line.words, [...(byWords.get(line.words) ?? []), line])
  return [...byWords].flatMap(([words, twins]) => {
    const isOfMast = twins.some(
      ({ actsOn }) => masts.has(actsOn) && !sails.some(({ name }) => name === actsOn),
    )
    // The mizzen may be a sail, and "mizzen running backstay" is of the mast.
    const host = hosts.find(({ name }) => words.startsWith(`${name} `) && !(isOfMast && masts.has(name)))
    const name = host ? words.slice(host.name.length + 1) : words
    const port = twins.find(({ side }) => side === 'port') ?? twins[0]
    return port ? [{ words, pair: twins.length > 1, line: port, lines: twins, host, name }] : []
  })
}
