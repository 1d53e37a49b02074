import type { Line, Rig, Sail, Spar, Yard } from '../rig/index.ts'

/** The lines of each sail and spar, found by their host or, for loose lines, by what they act on. */
export interface Gear {
  /** Lines hung on a sail or a spar of this name, or acting on it. */
  readonly on: (name: string) => readonly Line[]
  /** Lines that work a sail: its own, and those of the yard, gaff or boom it is bent to. */
  readonly ofSail: (sail: Sail) => readonly Line[]
  /** Lines that work a spar: its own, and those of the sails bent to it. */
  readonly ofSpar: (spar: Spar) => readonly Line[]
}

/** Sorts the lines of a rig by what they work. */
export function gearOf(rig: Rig): Gear {
  const lines = new Map<string, Line[]>()
  for (const line of rig.lines) {
    const name = line.host?.name ?? line.deed?.object
    if (name !== undefined) put(lines, name, line)
  }
  const sailsOn = new Map<string, Sail[]>()
  for (const sail of rig.sails) for (const spar of sparsOf(sail)) put(sailsOn, spar, sail)
  const on = (name: string): readonly Line[] => lines.get(name) ?? []
  return {
    on,
    ofSail: sail => [sail.name, ...sparsOf(sail)].flatMap(on),
    ofSpar: spar => [spar.name, ...(sailsOn.get(spar.name) ?? []).map(sail => sail.name)].flatMap(on),
  }
}

/** Names of the spars (or the stay) a sail is bent to. The yard its foot is sheeted to is another sail's. */
export const sparsOf = (sail: Sail): readonly string[] => (sail.kind === 'square' ? [sail.yard] : sail.on)

/** The yards of a rig. */
export const yardsOf = (rig: Rig): readonly Yard[] => rig.spars.filter(spar => spar.kind === 'yard')

/**
 * The yards that cross the mast, with a square sail or bare. Not those of a lugsail, a lateen or a jackyard topsail, which
 * come down by their own weight and are not braced, nor those of studdingsails.
 */
export function squareYardsOf(rig: Rig): readonly Yard[] {
  const others = new Set(rig.sails.flatMap(sail => (sail.kind === 'fore-and-aft' ? sail.on : [])))
  return yardsOf(rig).filter(({ name }) => !others.has(name) && !name.includes('studding'))
}

/** Whether a corner is shackled, and so wants no line: 'clews to foot yard'. */
export const isShackled = (sail: Sail, corner: string): boolean =>
  sail.shackled.some(({ part }) => part === corner || part === `${corner}s`)

/** Adds to the list that is kept under a key. */
export function put<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key)
  if (list) list.push(value)
  else map.set(key, [value])
}
