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

/** The kit as altered by what is said under it, in the order said. */
export function altered(kit: Kit, statements: readonly Statement[], strictness: Strictness, say: Say): Kit {
  return statements.reduce((so, statement) => alteredBy(so, statement, strictness, say), kit)
}

function alteredBy(kit: Kit, statement: Statement, strictness: Strictness, say: Say): Kit {
  switch (statement.kind) {
    case 'sequence':
      return statement.name?.words === 'douse' ? { ...kit, toDouse: statement } : { ...kit, toSet: statement }
    case 'block':
      return statement.name && kit.lines.has(nameKey(statement.name.words))
        ? withLine(kit, statement, statement.name, strictness, say)
        : withBlock(kit, statement, say)
    case 'line':
      return statement.name ? withLine(kit, statement, statement.name, strictness, say) : kit
    default:
      return withParticulars(kit, statement, say)
  }
}

/** "fits ...", "without ...", "tack shackled to stay foot". */
function withParticulars(kit: Kit, statement: Statement, say: Say): Kit {
  let so: Kit = { ...kit, leaves: [...kit.leaves, ...leavesOf(statement)] }
  for (const { names } of clausesOf(statement, 'fits')) so = { ...so, fits: names }
  const shackled = clause(statement, 'shackled')
  if (shackled && statement.name) {
    const part = { part: statement.name.words, by: shackled.by, to: shackled.to.words }
    so = { ...so, shackled: [...so.shackled.filter(other => other.part !== part.part), part] }
  }
  for (const { names } of clausesOf(statement, 'without')) {
    for (const name of names) so = withoutLine(so, name, say)
  }
  return so
}

function withoutLine(kit: Kit, name: Name, say: Say): Kit {
  const dropped = kitLinesOf(kit, nameKey(name.words))
  if (dropped.length === 0) {
    if (!kit.left.has(nameKey(name.words))) say(notOfTheGear(kit, name))
    return kit
  }
  const lines = new Map([...kit.lines].filter(([key]) => !dropped.includes(key)))
  return { ...kit, lines, left: new Set([...kit.left, ...dropped]) }
}

function withBlock(kit: Kit, statement: Statement, say: Say): Kit {
  const { name } = statement
  if (!name) return kit
  const model = likeBlock(kit, statement, say)
  const key = nameKey(name.words)
  const before = model ?? kit.blocks.get(key)
  const at = clause(statement, 'at')?.place
  const steps = clause(statement, 'coords')?.steps ?? []
  const base = at ?? before?.place
  const place = base ? (steps.length > 0 ? moved(base, steps) : base) : absolute(steps, statement.span)
  const marks = marksOf(statement)
  const blocks = new Map(kit.blocks).set(key, {
    name,
    place,
    number: marks.number ?? before?.number,
    inspected: marks.inspected ?? before?.inspected,
    span: statement.span,
  })
  return { ...kit, blocks }
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

function withLine(kit: Kit, statement: Statement, name: Name, strictness: Strictness, say: Say): Kit {
  const key = nameKey(name.words)
  const like = clause(statement, 'like')
  const before = kit.lines.get(key)
  if (!before && strictness === 'hung' && !statement.added) {
    if (!kit.left.has(key)) say(notOfTheGear(kit, name))
    return kit
  }
  const model = like ? kit.lines.get(nameKey(like.name.words)) : undefined
  if (like && !model) say(notOfTheGear(kit, like.name))
  sayUnknownPurchases(statement, say)
  const base = model ? { ...model, name } : (before ?? freshLine(name, statement.span))
  const lines = new Map(kit.lines).set(key, spokenLine(base, statement))
  // "With tack" unshackles a tack that the kit shackles.
  const shackled = kit.shackled.filter(({ part }) => !(statement.added && nameKey(part) === key))
  const left = new Set([...kit.left].filter(gone => gone !== key))
  return { ...withNamedBlocks({ ...kit, lines, shackled, left }, statement, say) }
}

/** Blocks may be moved in the lines set in under a line. */
function withNamedBlocks(kit: Kit, { block }: Statement, say: Say): Kit {
  return block.reduce(
    (so, statement) => (statement.kind === 'block' ? withBlock(so, statement, say) : so),
    kit,
  )
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
export const spokenLine = (base: KitLine, statement: Statement): KitLine =>
  statement.clauses.reduce(withSaid, {
    ...base,
    leaves: [...base.leaves, ...leavesOf(statement)],
    span: statement.span,
  })

function withSaid(line: KitLine, said: Clause): KitLine {
  switch (said.kind) {
    case 'pair':
      return { ...line, pair: true, shifts: undefined }
    case 'single':
      return { ...line, pair: false }
    case 'rope':
      return { ...line, rope: said.material ? said : { ...said, material: line.rope?.material } }
    case 'rove':
      return { ...line, rove: said.parts, below: said.below }
    case 'count':
      return { ...line, hands: said.count.value }
    case 'deed':
      return { ...line, deed: said }
    case 'against':
      return withAnswers(line, said)
    case 'answered':
      return { ...line, answeredBy: said.by.text, against: [], notAgainst: [] }
    case 'through':
      return { ...line, through: said.places, to: said.to ?? line.to }
    case 'leadTo':
      return { ...line, to: said.place }
    case 'travels':
      return { ...line, travels: said.measure.value }
    case 'cut':
      return { ...line, cut: said.measure.value }
    case 'shifts':
      return { ...line, pair: false, shifts: said.to }
    case 'on':
      return { ...line, horse: said.names[0] }
    case 'nicknamed':
      return { ...line, nicknames: said.names.map(({ text }) => text) }
    case 'middled':
      return { ...line, middledWith: said.with }
    case 'whipped':
    case 'coloured':
      return { ...line, [said.kind]: said.label.text }
    case 'conjectural':
      return { ...line, conjectural: true, credited: said.by?.text }
    case 'called':
      return { ...line, called: said.label.text }
    case 'short':
      return { ...line, short: said.label.text }
    default:
      return line
  }
}

function withAnswers(line: KitLine, { mode, lines }: Extract<Clause, { kind: 'against' }>): KitLine {
  switch (mode) {
    case 'only':
      return { ...line, against: lines, notAgainst: [], answeredBy: undefined }
    case 'also':
      return {
        ...line,
        against: [...line.against, ...lines],
        notAgainst: line.notAgainst.filter(one => !lines.some(other => isSameName(one, other))),
        answeredBy: undefined,
      }
    case 'not':
      return { ...line, notAgainst: [...line.notAgainst, ...lines] }
  }
}

const isSameName = (a: Reference, b: Reference) => nameKey(a.name.words) === nameKey(b.name.words)

/** A line that stands by itself on the page of lines, with the blocks set in under it. */
export function looseLine(statement: Statement, name: Name, say: Say): KitLine {
  const { blocks } = withNamedBlocks(emptyKit(name), statement, say)
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
