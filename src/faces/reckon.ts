import { compile } from '../compile.ts'
import { counted, inFileOrder } from '../findings/index.ts'
import { jsonFigures } from '../press/figures/index.ts'
import { plainTables } from '../press/table/index.ts'
import { type Assumptions, reckon, underCanvas } from '../reckon/index.ts'
import type { Canvas, Rig } from '../rig/index.ts'
import { reckoningRecord, reckoningTables } from '../sheets/reckoning/index.ts'
import { nearest } from '../text/index.ts'
import { Complaint } from './complaint.ts'
import { readEntry } from './read-text.ts'
import { type ByHandOptions, isByHand, reckonByHand } from './reckon-by-hand.ts'
import { type AssumptionOptions, assumptionsOf } from './reckon-options.ts'
import { told } from './tell.ts'

/** How the figures of a rig are to be reckoned and told. */
export interface ReckonOptions {
  readonly format: 'plain' | 'json'
  readonly name: string
  /** A working sail plan of the text, or sails to be balanced as one set: 'fore course and main course'. */
  readonly set?: string
}

/** Reckons what is asked for: a rig, or without one what stands in the options. */
export function reckonAsked(
  file: string | undefined,
  options: ReckonOptions & ByHandOptions & AssumptionOptions,
  version: string,
): number {
  const assumptions = assumptionsOf(options)
  if (file !== undefined) return reckonRig(file, options, assumptions, version)
  if (!isByHand(options))
    throw new Complaint(
      'name a rig file, or say --purchase, --blocks, --rope, --beam, --height or --sail to reckon by hand.',
    )
  reckonByHand(options, assumptions)
  return 0
}

/** Reckons a rig and tells the figures on standard output. The exit code is 1 where its text has errors. */
function reckonRig(
  file: string,
  { format, name, set }: ReckonOptions,
  assumptions: Assumptions,
  version: string,
): number {
  const entry = readEntry(file, name)
  const compiled = compile(entry.files, entry.read.source, entry.path)
  const { rig } = compiled.value
  const chosen = set === undefined ? undefined : underCanvas(rig, canvasNamed(set, rig))
  const figures = reckon(rig, assumptions)
  process.stdout.write(
    format === 'json'
      ? jsonFigures(reckoningRecord(rig, figures, chosen))
      : plainTables(reckoningTables(rig, figures, chosen)),
  )
  const errors = [...entry.read.findings, ...compiled.findings].filter(one => one.severity === 'error')
  if (errors.length > 0) {
    process.stderr.write(
      told(inFileOrder(errors, rig.sources), rig.sources, {
        format: 'plain',
        version,
        stream: process.stderr,
      }),
    )
  }
  return counted(errors).errors > 0 ? 1 : 0
}

/** The working sail plan of that name; else the sails that the user names, apart by commas or "and". */
function canvasNamed(set: string, rig: Rig): Pick<Canvas, 'label' | 'sails'> {
  const plan = rig.canvas.find(({ name }) => name === keyOf(set))
  if (plan) return plan
  const sails = set.split(/\s*,\s*|\s+(?:and|then)\s+/).map(said => {
    const sail = rig.sailAt.get(keyOf(said))
    if (sail) return sail
    const near = nearest(keyOf(said), [...rig.sailAt.keys(), ...rig.canvas.map(({ name }) => name)])
    const offer = near.length > 0 ? ` Nearest: ${near.join(', ')}.` : ''
    throw new Complaint(`--set: she has no sail called "${said}".${offer}`)
  })
  const carried = [...new Set(sails)]
  return {
    label: carried.map(({ label }) => label).join(', '),
    sails: carried.map(({ name }) => ({ sail: name, reefs: 0 })),
  }
}

const keyOf = (said: string): string => said.trim().toLowerCase().replace(/\s+/g, ' ')
