import type { Line, LineDeed, Rig, Sail, Spar } from '../../rig/index.ts'

/** What a line works on: the sail, and the spar it moves or that the sail is bent to. */
export interface Work {
  readonly line: Line
  readonly deed: LineDeed
  readonly sail: Sail | undefined
  readonly spar: Spar | undefined
  /** How many lines gather the same sail, this one with them. */
  readonly gathering: number
}

/** What each line of a rig works on; undefined where the text doesn't say what it does. */
export function workOf(rig: Rig): (line: Line) => Work | undefined {
  const squares = rig.sails.filter(sail => sail.kind === 'square')
  // A yard that no sail is bent to bears the sail that is sheeted to it, as the fore yard of a topsail schooner does.
  const bentTo = new Map([
    ...squares.flatMap(sail => (sail.footYard === undefined ? [] : [[sail.footYard, sail] as const])),
    ...squares.map(sail => [sail.yard, sail] as const),
  ])
  const gathering = new Map<string, number>()
  for (const { deed, host } of rig.lines) {
    if (deed?.verb === 'gathers' && host) gathering.set(host.name, (gathering.get(host.name) ?? 0) + 1)
  }
  return line => {
    const { deed, host } = line
    if (!deed) return undefined
    const sail = host?.kind === 'sail' ? rig.sailAt.get(host.name) : bentTo.get(host?.name ?? '')
    return {
      line,
      deed,
      sail,
      spar: sparOf(rig, line, sail),
      gathering: gathering.get(host?.name ?? '') ?? 1,
    }
  }
}

function sparOf(rig: Rig, { deed, host }: Line, sail: Sail | undefined): Spar | undefined {
  if (host?.kind === 'spar') return rig.sparAt.get(host.name)
  if (sail?.kind === 'square') return rig.sparAt.get(sail.yard)
  if (sail?.kind !== 'fore-and-aft') return undefined
  const kinds = deed?.object === 'boom' ? ['boom'] : ['gaff', 'slung yard']
  return sail.on.map(name => rig.sparAt.get(name)).find(spar => spar && kinds.includes(spar.kind))
}
