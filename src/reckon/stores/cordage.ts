import {
  type Figure,
  type Kilograms,
  kilograms,
  type Metres,
  metres,
  unknown,
  workedFrom,
} from '../../measure/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import type { Figures } from '../figures.ts'
import type { Piece } from '../leads/index.ts'
import { ropeWeight } from '../rope/index.ts'
import { type Cutting, fewestCoils, type Solve } from './cutting.ts'

/** Rope of one material and thickness: what it is cut into, and from how many coils. */
export interface Cordage {
  readonly material: string
  readonly diameter: Metres
  /** Longest first. */
  readonly cuts: readonly Cut[]
  readonly length: Metres
  readonly mass: Figure<Kilograms>
  /** Of the cuts that are no longer than a coil. */
  readonly cutting: Cutting
  /** Cuts longer than a coil, to be ordered at their length. */
  readonly special: readonly Cut[]
}

export interface Cut {
  readonly line: string
  readonly length: Metres
}

/** A line whose rope can't be ordered, and why. */
export interface Unordered {
  readonly line: string
  readonly because: string
}

/** A coil as it is bought: 120 fathoms, to the metre. Common practice, no source. */
export const coilOf120Fathoms = metres(220)

const noLead = unknown('Its lead is not given.')

/** All running rigging by material and thickness, the thickest first. */
export async function cordageOf(
  rig: Rig,
  figures: Pick<Figures, 'leads'>,
  coil: Metres,
  solve: Solve,
): Promise<{ readonly cordage: readonly Cordage[]; readonly unordered: readonly Unordered[] }> {
  const unordered: Unordered[] = []
  const byRope = new Map<string, { material: string; diameter: Metres; cuts: Cut[] }>()
  for (const lines of ropesOf(rig)) {
    const [{ rope }] = lines
    const name = nameOf(lines)
    const pieces = workedFrom(
      lines.map((line): Figure<readonly Piece[]> => figures.leads().get(line.address)?.pieces ?? noLead),
      (...all: (readonly Piece[])[]) => all.flat(),
    )
    if (!rope?.material || !pieces.known) {
      unordered.push({ line: name, because: pieces.known ? 'Its rope is not said.' : pieces.because })
      continue
    }
    for (const { part, length } of lines.length > 1 ? [inOne(pieces.value)] : pieces.value) {
      const material = materialOf(rope.material, part)
      const key = `${material} ${rope.diameter}`
      const ordered = byRope.get(key) ?? { material, diameter: rope.diameter, cuts: [] }
      ordered.cuts.push({ line: name, length })
      byRope.set(key, ordered)
    }
  }
  const cordage: Cordage[] = []
  for (const { material, diameter, cuts } of [...byRope.values()].sort(thickestFirst)) {
    const ordered = [...cuts].sort((a, b) => b.length - a.length || (a.line < b.line ? -1 : 1))
    const length = metres(cuts.reduce((sum, cut) => sum + cut.length, 0))
    const fitting = ordered.filter(cut => cut.length <= coil)
    cordage.push({
      material,
      diameter,
      cuts: ordered,
      length,
      mass: workedFrom([ropeWeight(material, diameter)], weight => kilograms(weight * length)),
      cutting: await fewestCoils(
        fitting.map(cut => cut.length),
        coil,
        solve,
      ),
      special: ordered.filter(cut => cut.length > coil),
    })
  }
  return { cordage, unordered }
}

/** Each rope with the line it is, or the two lines: a tack and a sheet may be middled in one. */
function ropesOf({ lines, lineAt }: Rig): readonly (readonly [Line, ...Line[]])[] {
  const halves = new Set(lines.flatMap(line => (line.middledWith ? [line.middledWith] : [])))
  return lines
    .filter(({ address }) => !halves.has(address))
    .map(line => {
      const other = lineAt.get(line.middledWith ?? '')
      return other ? [line, other] : [line]
    })
}

const nameOf = ([first, ...others]: readonly [Line, ...Line[]]) =>
  [first.label, ...others.map(({ labelOnSail }) => labelOnSail.toLowerCase())].join(' and ') +
  (first.side ? `, ${first.side}` : '')

const inOne = (pieces: readonly Piece[]): Piece => ({
  part: 'rope',
  length: metres(pieces.reduce((sum, piece) => sum + piece.length, 0)),
})

const thickestFirst = (
  a: { readonly material: string; readonly diameter: Metres },
  b: { readonly material: string; readonly diameter: Metres },
) => (a.material === b.material ? b.diameter - a.diameter : a.material < b.material ? -1 : 1)

/** 'wire with spun polyester fall' is two ropes; of a line that is rove with a wire and says one material, the wire is said to be wire. */
function materialOf(said: string, part: Piece['part']): string {
  const [, upper, fall] = /^(.*?) with (.*?)(?: fall)?$/.exec(said) ?? []
  if (part === 'wire') return upper ?? 'wire'
  if (part === 'pendant') return upper ?? said
  return part === 'fall' ? (fall ?? said) : said
}
