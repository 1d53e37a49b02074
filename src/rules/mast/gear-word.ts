import type { Line, Mast, Rig } from '../../rig/index.ts'

/**
 * What a line is called on every mast alike: 'upper topsail clewline' for the fore's and the main's. A sail whose
 * name doesn't begin with its mast's word ("mainsail") goes by its class.
 */
export function gearWord(rig: Rig, mast: Mast, line: Line): string {
  const own = line.labelOnSail.toLowerCase()
  const { host } = line
  if (!host) return withoutMast(line.words, mast) ?? line.words
  const bare = withoutMast(host.name, mast)
  if (bare !== undefined) return `${bare} ${own}`
  return `${classOf(rig, host.name)} ${own}`
}

function withoutMast(name: string, mast: Mast): string | undefined {
  return name.toLowerCase().startsWith(`${mast.word.toLowerCase()} `)
    ? name.slice(mast.word.length + 1)
    : undefined
}

const classOf = (rig: Rig, name: string) => rig.sailAt.get(name)?.class ?? rig.sparAt.get(name)?.kind ?? name
