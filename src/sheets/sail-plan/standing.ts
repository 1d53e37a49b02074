import type { Rig, Shrouds, Stay } from '../../rig/index.ts'
import { dash, ink, weight } from '../ink.ts'
import type { Mark, Pen } from '../sheet.ts'
import { capAt, type HullLines } from './hull-lines.ts'
import { type StandingLine, standingLines } from './standing-lines.ts'
import { addressOf, disc, run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** From 26 mm up a stay is drawn heavier: fore, main and mizzen stays stand out from those of the light sails. */
const heavy = 0.026

const ropePen = (diameter: number | undefined, conjectural: boolean): Pen => ({
  ink: ink.rig,
  width: diameter !== undefined && diameter >= heavy ? weight.c : weight.b,
  ...(conjectural ? { dash: dash.conjectural } : {}),
})

/** A stay as recorded; nothing where an end is not known. */
export function stayMarks(stay: Stay, rig: Rig, { at }: View): readonly Mark[] {
  const [line] = standingLines(stay, rig)
  if (!line) return []
  const { name, label, diameter, conjectural } = stay
  const points = [at(line.from.x, line.from.z), at(line.to.x, line.to.z)]
  return [thing(addressOf('stay', name), label, [run(points, ropePen(diameter, conjectural))])]
}

/** Shrouds or backstays as recorded, with ratlines by rule across the shrouds. */
export function shroudMarks(bank: Shrouds, rig: Rig, view: View): readonly Mark[] {
  const lines = standingLines(bank, rig)
  if (lines.length === 0) return []
  const pen = { ...ropePen(bank.diameter, bank.conjectural), width: weight.b }
  return [
    thing(addressOf(bank.kind, bank.name), bank.label, [
      ...(bank.kind === 'shrouds' ? ratlines(lines, view) : []),
      ...lines.map(({ from, to }) => run([view.at(from.x, from.z), view.at(to.x, to.z)], pen)),
    ]),
  ]
}

const ratlineStep = 0.42

/** Ratlines between the first and the last shroud, from above the lower ends to under the masthead. */
export function ratlines(lines: readonly StandingLine[], { at }: View): readonly Mark[] {
  const [first, last] = [lines[0], lines[lines.length - 1]]
  if (!first || !last || lines.length < 2) return []
  const low = Math.max(first.to.z, last.to.z) + ratlineStep
  const high = Math.min(first.from.z, last.from.z) - 1.2
  const count = Math.max(0, Math.min(80, Math.floor((high - low) / ratlineStep)))
  const xAt = ({ from, to }: StandingLine, z: number) =>
    to.x + ((from.x - to.x) * (z - to.z)) / (from.z - to.z)
  return Array.from({ length: count + 1 }, (_, i) => low + i * ratlineStep).map(z => ({
    kind: 'line',
    detail: 'ratline',
    points: [at(xAt(first, z), z), at(xAt(last, z), z)],
    pen: { ink: ink.faint, width: weight.a },
  }))
}

/** Deadeyes at the lower ends of shrouds and backstays, and under them channel and chain plates, by rule. */
export function chainPlates(bank: Shrouds, rig: Rig, hull: HullLines, { at }: View): readonly Mark[] {
  const lines = standingLines(bank, rig)
  const [first, last] = [lines[0], lines[lines.length - 1]]
  if (!first || !last || !hull.isRecorded) return []
  const channel = (x: number) => capAt(hull, x) - 0.62 * hull.bulwark
  const [fore, aft] = [first.to.x - 0.35, last.to.x + 0.35]
  const pen: Pen = { ink: ink.ink, width: weight.b }
  return [
    run([at(fore, channel(fore)), at(aft, channel(aft))], { ink: ink.ink, width: weight.f }),
    ...lines.map(({ to }) => run([at(to.x, to.z), at(to.x, channel(to.x) - 1.05 * hull.bulwark)], pen)),
    ...lines.map(({ to }) => disc(at(to.x, to.z), 0.34, { ink: ink.ink })),
  ]
}

/** What is drawn by rule: thin and dashed. */
export const byRulePen: Pen = { ink: ink.rig, width: weight.a, dash: dash.byRule }
