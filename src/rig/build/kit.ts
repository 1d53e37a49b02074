import type { Clause, Name, Place, Reference, Statement } from '../../syntax/index.ts'
import { nameKey } from '../../syntax/index.ts'
import type { Span } from '../../text/index.ts'
import type { Day } from '../day.ts'
import type { Shackled } from '../sail.ts'
import { marksOf } from './block.ts'
import { clause, clausesOf } from './clauses.ts'
import { type Leave, leavesOf } from './leave.ts'
import { moved } from './place.ts'
import { sayUnknownPurchases } from './purchases.ts'
import { finding, type Say, unknownName } from './say.ts'

/** A gear, written once: the blocks, lines and evolutions of one kind of sail or spar, before it is hung on one. */
export interface Kit {
  readonly name: Name
  readonly fits: readonly Name[]
  readonly blocks: ReadonlyMap<string, KitBlock>
  readonly lines: ReadonlyMap<string, KitLine>
  readonly shackled: readonly Shackled[]
  readonly toSet: Statement | undefined
  readonly toDouse: Statement | undefined
  readonly leaves: readonly Leave[]
  /** Keys of lines once in the kit and since left out: what is said of them falls away without a word. */
  readonly left: ReadonlySet<string>
}

/** A named place of the gear. `place` is undefined while it is to be given by the vessel. */
export interface KitBlock {
  readonly name: Name
  readonly place: Place | undefined
  readonly number: string | undefined
  readonly inspected: Day | undefined
  readonly span: Span
}

/** A line of the gear, slot by slot; a slot not yet said is undefined. */
export interface KitLine {
  readonly name: Name
  readonly pair: boolean
  readonly rope: Extract<Clause, { kind: 'rope' }> | undefined
  readonly rove: readonly Name[]
  /** Whether its tackle is said to stand below. */
  readonly below: boolean
  readonly hands: number | undefined
  readonly deed: Extract<Clause, { kind: 'deed' }> | undefined
  readonly against: readonly Reference[]
  readonly notAgainst: readonly Reference[]
  readonly answeredBy: string | undefined
  readonly through: readonly Place[]
  readonly to: Place | undefined
  readonly travels: number | undefined
  readonly cut: number | undefined
  readonly shifts: 'weather' | 'lee' | undefined
  /** The horse its block slides on. */
  readonly horse: Name | undefined
  readonly called: string | undefined
  readonly short: string | undefined
  readonly nicknames: readonly string[]
  /** The line that is the other half of its rope. */
  readonly middledWith: Name | undefined
  readonly whipped: string | undefined
  readonly coloured: string | undefined
  readonly conjectural: boolean
  readonly credited: string | undefined
  readonly leaves: readonly Leave[]
  /** Blocks of a loose line: those of a gear's line belong to the gear. */
  readonly blocks: ReadonlyMap<string, KitBlock>
  readonly span: Span
}

export const emptyKit = (name: Name): Kit => ({
  name,
  fits: [],
  blocks: new Map(),
  lines: new Map(),
  shackled: [],
  toSet: undefined,
  toDouse: undefined,
  leaves: [],
  left: new Set(),
})

/** How strictly a new name is taken: a gear's own page may add lines; a sail must say "with" to add one. */
export type Strictness = 'own page' | 'hung'

/** A kit while it is being altered: a copy of the one it is made from. */
type Draft = {
  -readonly [K in keyof Kit]: Kit[K] extends ReadonlyMap<string, infer V>
    ? Map<string, V>
    : Kit[K] extends ReadonlySet<string>
      ? Set<string>
      : Kit[K]
}

/** The kit as altered by what is said under it, in the order said. */
export function altered(kit: Kit, statements: readonly Statement[], strictness: Strictness, say: Say): Kit {
  if (statements.length === 0) return kit
  const draft: Draft = {
    ...kit,
    blocks: new Map(kit.blocks),
    lines: new Map(kit.lines),
    left: new Set(kit.left),
  }
  for (const statement of statements) alter(draft, statement, strictness, say)
  return draft
}

function alter(kit: Draft, statement: Statement, strictness: Strictness, say: Say): void {
  const { kind, name } = statement
  switch (kind) {
    case 'sequence':
      if (name?.words === 'douse') kit.toDouse = statement
      else kit.toSet = statement
      return
    case 'block':
      if (name && kit.lines.has(nameKey(name.words))) sayLine(kit, statement, name, strictness, say)
      else sayBlock(kit, statement, say)
      return
    case 'line':
      if (name) sayLine(kit, statement, name, strictness, say)
      return
    default:
      sayParticulars(kit, statement, say)
  }
}

/** "fits ...", "without ...", "tack shackled to stay foot". */
function sayParticulars(kit: Draft, statement: Statement, say: Say): void {
  kit.leaves = [...kit.leaves, ...leavesOf(statement)]
  kit.fits = clause(statement, 'fits')?.names ?? kit.fits
  const shackled = clause(statement, 'shackled')
  if (shackled && statement.name) {
    const part = { part: statement.name.words, by: shackled.by, to: shackled.to.words }
    kit.shackled = [...kit.shackled.filter(other => other.part !== part.part), part]
  }
  for (const { names } of clausesOf(statement, 'without')) {
    for (const name of names) leaveOut(kit, name, say)
  }
}

function leaveOut(kit: Draft, name: Name, say: Say): void {
  const key = nameKey(name.words)
  const dropped = kitLinesOf(kit, key)
  if (dropped.length === 0 && !kit.left.has(key)) say(notOfTheGear(kit, name))
  for (const line of dropped) {
    kit.lines.delete(line)
    kit.left.add(line)
  }
}

function sayBlock(kit: Draft, statement: Statement, say: Say): void {
  const { name } = statement
  if (!name) return
  const model = likeBlock(kit, statement, say)
  const key = nameKey(name.words)
  const before = model ?? kit.blocks.get(key)
  const at = clause(statement, 'at')?.place
  const steps = clause(statement, 'coords')?.steps ?? []
  const base = at ?? before?.place
  const place = base ? (steps.length > 0 ? moved(base, steps) : base) : absolute(steps, statement.span)
  const marks = marksOf(statement)
  kit.blocks.set(key, {
    name,
    place,
    number: marks.number ?? before?.number,
    inspected: marks.inspected ?? before?.inspected,
    span: statement.span,
  })
}

function likeBlock(kit: Kit, statement: Statement, say: Say): KitBlock | undefined {
  const like = clause(statement, 'like')
  if (!like) return undefined
  const model = kit.blocks.get(nameKey(like.name.words))
  if (!model) say(unknownName(`block in the ${kit.name.words}'s gear`, like.name, kit.blocks.keys()))
  return model
}

const absolute = (steps: Place['steps'], span: Span): Place | undefined =>
  steps.length > 0 ? { from: undefined, steps, abreast: undefined, span } : undefined

function sayLine(kit: Draft, statement: Statement, name: Name, strictness: Strictness, say: Say): void {
  const key = nameKey(name.words)
  const like = clause(statement, 'like')
  const before = kit.lines.get(key)
  if (!before && strictness === 'hung' && !statement.added) {
    if (!kit.left.has(key)) say(notOfTheGear(kit, name))
    return
  }
  const model = like ? kit.lines.get(nameKey(like.name.words)) : undefined
  if (like && !model) say(notOfTheGear(kit, like.name))
  sayUnknownPurchases(statement, say)
  const base = model ? { ...model, name } : (before ?? freshLine(name, statement.span))
  kit.lines.set(key, spokenLine(base, statement))
  // "With tack" unshackles a tack that the kit shackles.
  if (statement.added) kit.shackled = kit.shackled.filter(({ part }) => nameKey(part) !== key)
  kit.left.delete(key)
  sayNamedBlocks(kit, statement, say)
}

/** Blocks may be moved in the lines set in under a line. */
function sayNamedBlocks(kit: Draft, { block }: Statement, say: Say): void {
  for (const statement of block) if (statement.kind === 'block') sayBlock(kit, statement, say)
}

const freshLine = (name: Name, span: Span): KitLine => ({
  name,
  pair: false,
  rope: undefined,
  rove: [],
  below: false,
  hands: undefined,
  deed: undefined,
  against: [],
  notAgainst: [],
  answeredBy: undefined,
  through: [],
  to: undefined,
  travels: undefined,
  cut: undefined,
  shifts: undefined,
  horse: undefined,
  called: undefined,
  short: undefined,
  nicknames: [],
  middledWith: undefined,
  whipped: undefined,
  coloured: undefined,
  conjectural: false,
  credited: undefined,
  leaves: [],
  blocks: new Map(),
  span,
})

/** A line with each slot that is said anew replaced, and all others kept. */
export function spokenLine(base: KitLine, statement: Statement): KitLine {
  const line = { ...base, leaves: [...base.leaves, ...leavesOf(statement)], span: statement.span }
  for (const said of statement.clauses) saySlot(line, said)
  return line
}

/** A line while its slots are being said. */
type Slots = { -readonly [K in keyof KitLine]: KitLine[K] }

function saySlot(line: Slots, said: Clause): void {
  switch (said.kind) {
    case 'pair':
      line.pair = true
      line.shifts = undefined
      return
    case 'single':
      line.pair = false
      return
    case 'rope':
      line.rope = said.material ? said : { ...said, material: line.rope?.material }
      return
    case 'rove':
      line.rove = said.parts
      line.below = said.below
      return
    case 'count':
      line.hands = said.count.value
      return
    case 'deed':
      line.deed = said
      return
    case 'against':
      sayAnswers(line, said)
      return
    case 'answered':
      line.answeredBy = said.by.text
      line.against = []
      line.notAgainst = []
      return
    case 'through':
      line.through = said.places
      line.to = said.to ?? line.to
      return
    case 'leadTo':
      line.to = said.place
      return
    case 'travels':
      line.travels = said.measure.value
      return
    case 'cut':
      line.cut = said.measure.value
      return
    case 'shifts':
      line.pair = false
      line.shifts = said.to
      return
    case 'on':
      line.horse = said.names[0]
      return
    case 'nicknamed':
      line.nicknames = said.names.map(({ text }) => text)
      return
    case 'middled':
      line.middledWith = said.with
      return
    case 'whipped':
    case 'coloured':
      line[said.kind] = said.label.text
      return
    case 'conjectural':
      line.conjectural = true
      line.credited = said.by?.text
      return
    case 'called':
    case 'short':
      line[said.kind] = said.label.text
  }
}

function sayAnswers(line: Slots, { mode, lines }: Extract<Clause, { kind: 'against' }>): void {
  switch (mode) {
    case 'only':
      line.against = lines
      line.notAgainst = []
      line.answeredBy = undefined
      return
    case 'also':
      line.against = [...line.against, ...lines]
      line.notAgainst = line.notAgainst.filter(one => !lines.some(other => isSameName(one, other)))
      line.answeredBy = undefined
      return
    case 'not':
      line.notAgainst = [...line.notAgainst, ...lines]
  }
}

const isSameName = (a: Reference, b: Reference) => nameKey(a.name.words) === nameKey(b.name.words)

/** A line that stands by itself on the page of lines, with the blocks set in under it. */
export function looseLine(statement: Statement, name: Name, say: Say): KitLine {
  const { blocks } = altered(
    emptyKit(name),
    statement.block.filter(({ kind }) => kind === 'block'),
    'hung',
    say,
  )
  sayUnknownPurchases(statement, say)
  return { ...spokenLine(freshLine(name, statement.span), statement), blocks }
}

/**
 * Keys of the kit's lines that a name stands for: the one of that name or, for a plural, every line of that
 * last word ("buntlines": inner and outer; "reef tackles").
 */
export function kitLinesOf(kit: Pick<Kit, 'lines'>, key: string): readonly string[] {
  if (kit.lines.has(key)) return [key]
  return [...kit.lines.keys()].filter(line => isPluralOf(key, line))
}

/** Whether a plural takes in a line: "brails" the "peak brail", "boom guys" the "boom guy". */
export function isPluralOf(plural: string, line: string): boolean {
  if (!plural.endsWith('s')) return false
  const one = plural.slice(0, -1)
  return line === one || line.endsWith(` ${one}`)
}

/** Whether a name stands for a line that is in the gear, or was. */
export function isOfTheGear({ lines, left }: Kit, { words }: Name): boolean {
  const key = nameKey(words)
  return lines.has(key) || left.has(key) || [...lines.keys(), ...left].some(line => isPluralOf(key, line))
}

export function notOfTheGear(kit: Kit, name: Name) {
  const lines = [...kit.lines.values()].map(line => line.name.words)
  const near = unknownName('line', name, lines)
  return finding(
    'name/not-of-the-gear',
    name.span,
    `"${name.words}" is no line of the ${kit.name.words}'s gear.`,
    {
      remedy: `${near.remedy?.startsWith('Did') ? `${near.remedy} ` : ''}It has ${lines.join(', ')}. A new line is said "with ${name.words}".`,
    },
  )
}
