import { compile } from '../compile.ts'
import { fair } from '../fair/index.ts'
import { counted, type Found } from '../findings/index.ts'
import { buildGears, type Kit } from '../rig/index.ts'
import { type Files, gather } from '../syntax/index.ts'
import type { Source } from '../text/index.ts'
import { amendments, framework } from './amend.ts'
import { wholeLine } from './clauses.ts'
import { draft, type Gearing, type GearLine, gearOfOwn } from './draft.ts'
import { fitsSail, fitsSpar, gearFor } from './gearing.ts'
import { readTables } from './read-tables.ts'
import { type Rope, ropesOf } from './ropes.ts'
import type { TableName, Tables } from './tables.ts'

/** A text that brings in nothing but the standard gear: to know what gears there are. */
const standard: Source = { name: 'reeved.rig', text: 'bring in standard gear\n' }

/**
 * A rig in the language from a vessel's tables. Gear that is the standard's is said by its name, and only what differs
 * is said beside it: the text is compiled with the gear as it comes, and compared with the tables line by line.
 * Without a sound table there is no text ('').
 */
export function reeve(sources: ReadonlyMap<TableName, Source>, files: Files): Found<string> {
  const { value: tables, findings } = readTables(sources)
  if (counted(findings).errors > 0) return { value: '', findings }
  const ropes = ropesOf(tables)
  const kits = kitsOf(
    tables,
    ropes,
    buildGears(gather(files, standard).value.pages, () => {}),
  )
  const own = gearsOfOwn(tables, ropes, kits)
  const loose = ropes
    .filter(({ host }) => !host || !(kits.has(host.name) || own.has(host.name)))
    .flatMap(rope => wholeLine({ ...rope, host: undefined, name: rope.words }, ropes))
  const write = (said: (kit: Kit, own: readonly Rope[]) => readonly GearLine[]) =>
    draft(tables, ropes, { gearings: gearingsOf(kits, own, ropes, said), own, loose })
  const first = compile(files, {
    name: standard.name,
    text: write((kit, own) => framework(kit, own, ropes)),
  }).value
  const text = write((kit, own) => amendments(kit, own, { ...first, ropes }))
  return { value: fair({ name: standard.name, text }).value, findings }
}

/** The gear of each sail, and of each spar that has lines but no sail of its own, by name. */
function kitsOf(
  { sails, spars }: Tables,
  ropes: readonly Rope[],
  gears: ReadonlyMap<string, Kit>,
): ReadonlyMap<string, Kit> {
  const bySail = sails.map(
    sail => [sail.name, gearFor(ownOf(ropes, sail.name), gears, fitsSail(sail), sail.class)] as const,
  )
  const bySpar = spars.map(
    ({ name, kind }) => [name, gearFor(ownOf(ropes, name), gears, fitsSpar(kind))] as const,
  )
  return new Map([...bySpar, ...bySail].flatMap(([name, kit]) => (kit ? [[name, kit] as const] : [])))
}

const ownOf = (ropes: readonly Rope[], host: string) => ropes.filter(rope => rope.host?.name === host)

/** The lines of sails that no gear of the standard is like, each sail's as a gear of its own, by the sail's name. */
function gearsOfOwn(
  { sails }: Tables,
  ropes: readonly Rope[],
  kits: ReadonlyMap<string, Kit>,
): ReadonlyMap<string, readonly string[]> {
  const without = sails.filter(({ name }) => !kits.has(name) && ownOf(ropes, name).length > 0)
  return new Map(
    without.map(({ name }) => [name, ownOf(ropes, name).flatMap(rope => wholeLine(rope, ropes))]),
  )
}

function gearingsOf(
  kits: ReadonlyMap<string, Kit>,
  own: ReadonlyMap<string, readonly string[]>,
  ropes: readonly Rope[],
  said: (kit: Kit, own: readonly Rope[]) => readonly GearLine[],
): ReadonlyMap<string, Gearing> {
  return new Map([
    ...[...own.keys()].map(name => [name, { gear: gearOfOwn(name), said: [] }] as const),
    ...[...kits].map(
      ([name, kit]) => [name, { gear: kit.name.words, said: said(kit, ownOf(ropes, name)) }] as const,
    ),
  ])
}
