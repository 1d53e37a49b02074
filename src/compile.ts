import { type Evolutions, evolve } from './evolve/index.ts'
import type { Found } from './findings/index.ts'
import { inFileOrder } from './findings/index.ts'
import { type Figures, reckon } from './reckon/index.ts'
import { buildRig, type Rig } from './rig/index.ts'
import { judge } from './rules/index.ts'
import { type Files, gather } from './syntax/index.ts'
import type { Source } from './text/index.ts'

/** A text compiled as far as the papers: the rig, what is reckoned of it, and all that was found. */
export interface Compiled {
  readonly rig: Rig
  readonly figures: Figures
  readonly evolutions: Evolutions
}

/**
 * Compiles a rig: text to tree, tree to rig, rig to figures and orders, and the judgement of them all. It asks
 * `files` for the texts that the entry brings in, and touches nothing else in the world.
 */
export function compile(files: Files, entry: Source, entryPath?: string): Found<Compiled> {
  const { value: rig, findings: before } = readRig(files, entry, entryPath)
  const figures = reckon(rig)
  const evolutions = evolve(rig)
  const findings = inFileOrder(judge({ rig, figures, evolutions }, before), rig.sources)
  return { value: { rig, figures, evolutions }, findings }
}

/** The rig alone that a text declares, with what was found until there: enough to look a line up. */
export function readRig(files: Files, entry: Source, entryPath?: string): Found<Rig> {
  const gathered = gather(files, entry, entryPath)
  const built = buildRig(gathered.value.pages, gathered.value.sources)
  return { value: built.value, findings: [...gathered.findings, ...built.findings] }
}
