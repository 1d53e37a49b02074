import type { Shrouds, Stay } from '../../rig/index.ts'
import { dash, ink, weight } from '../ink.ts'
import type { Mark, Pen } from '../sheet.ts'
import { capAt, type HullLines } from './hull-lines.ts'
import { isSober, isSoberPoint } from './sober.ts'
import { addressOf, run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** From 26 mm up a stay is drawn heavier: fore, main and mizzen stays stand out from those of the light sails. */
const heavy = 0.026

const ropePen = (diameter: number | undefined, conjectural: boolean): Pen => ({
  ink: ink.rig,
  width: diameter !== undefined && diameter >= heavy ? weight.c : weight.b,
  ...(conjectural ? { dash: dash.conjectural } : {}),
})

/** A stay as recorded; nothing where an end is not known. */
export function stayMarks(
  { from, to, name, label, diameter, conjectural }: Stay,
  { at }: View,
): readonly Mark[] {
  if (!from || !to || !isSoberPoint(from) || !isSoberPoint(to)) return []
  return [
    thing(addressOf('stay', name), label, [
      run([at(from.x, from.z), at(to.x, to.z)], ropePen(diameter, conjectural)),
    ]),
  ]
}

/** One part of a bank, from aloft to below, in metres. */
export interface ShroudLine {
  readonly from: { readonly x: number; readonly z: number }
  readonly to: { readonly x: number; readonly z: number }
}

/** The parts of a recorded bank as the starboard profile shows them, foremost first. */
export function shroudLines({ from, to, count, apart }: Shrouds): readonly ShroudLine[] {
  if (!from || !to || !isSoberPoint(from) || !isSoberPoint(to)) return []
  const step = apart !== undefined && isSober(apart) ? apart : 0
  return Array.from({ length: Math.max(1, Math.min(12, count)) }, (_, i) => ({
    from,
    to: { x: to.x + i * step, z: to.z },
  }))
}

/** Shrouds or backstays as recorded, with ratlines by rule across the shrouds. */
export function shroudMarks(bank: Shrouds, view: View): readonly Mark[] {
  const lines = shroudLines(bank)
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
export function ratlines(lines: readonly ShroudLine[], { at }: View): readonly Mark[] {
  const [first, last] = [lines[0], lines[lines.length - 1]]
  if (!first || !last || lines.length < 2) return []
  const low = Math.max(first.to.z, last.to.z) + ratlineStep
  const high = Math.min(first.from.z, last.from.z) - 1.2
  const count = Math.max(0, Math.min(80, Math.floor((high - low) / ratlineStep)))
  const xAt = ({ from, to }: ShroudLine, z: number) => to.x + ((from.x - to.x) * (z - to.z)) / (from.z - to.z)
  return Array.from({ length: count + 1 }, (_, i) => low + i * ratlineStep).map(z =>
    run([at(xAt(first, z), z), at(xAt(last, z), z)], { ink: ink.faint, width: weight.a }),
  )
}

/** The channel and the chain plates under the lower ends of shrouds, on the hull, by rule. */
export function chainPlates(lines: readonly ShroudLine[], hull: HullLines, { at }: View): readonly Mark[] {
  const [first, last] = [lines[0], lines[lines.length - 1]]
  if (!first || !last || !hull.isRecorded) return []
  const channel = (x: number) => capAt(hull, x) - 0.62 * hull.bulwark
  const aft = last.to.x + 0.35
  const fore = first.to.x - 0.35
  return [
    run([at(fore, channel(fore)), at(aft, channel(aft))], { ink: ink.ink, width: weight.f }),
    ...lines.map(({ to }) =>
      run([at(to.x, Math.min(to.z, capAt(hull, to.x))), at(to.x, channel(to.x) - 1.05 * hull.bulwark)], {
        ink: ink.ink,
        width: weight.b,
      }),
    ),
  ]
}

export const byRulePen: Pen = { ink: ink.rig, width: weight.a, dash: dash.byRule }
