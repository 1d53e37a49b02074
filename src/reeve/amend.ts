import type { Figures } from '../reckon/index.ts'
import { aboveTackle, type Kit, type Line, type Rig } from '../rig/index.ts'
import { nameKey } from '../syntax/index.ts'
import {
  answeredBy,
  answersOf,
  apart,
  leadOf,
  ropeOf,
  roveOf,
  sideOf,
  standsBelow,
  wholeLine,
} from './clauses.ts'
import type { GearLine } from './draft.ts'
import { movedTo } from './moved.ts'
import type { Rope } from './ropes.ts'
import { hands, metres, place, spoken } from './spoken.ts'
import type { TableLine } from './tables.ts'

/** Places nearer than this are one: tables are kept to the centimetre. */
const within = 0.02

/** Travels as near as this to one that is said are one; to one that is reckoned, within a tenth: both are measured by rules of thumb. */
const travelWithin = { said: 0.05, reckoned: 0.08 }

/**
 * What must be said under a gear before it can be compared: the blocks it leaves to be given, at the points where the
 * tables lead lines through them, and which lines are left out, added, or a pair where the gear has one.
 */
export function framework(kit: Kit, own: readonly Rope[], ropes: readonly Rope[]): readonly GearLine[] {
  const paired = own
    .filter(rope => isOtherwise(kit, rope))
    .map(rope => ({ name: spoken(rope.name), said: pairOrSingle(rope) }))
  return [...blocksToGive(kit, own), ...paired, ...leftOut(kit, own), ...added(kit, own, ropes)]
}

/** What must be said under a gear for its lines to be those of the tables, from a rig compiled with no more than the framework. */
export function amendments(kit: Kit, own: readonly Rope[], soFar: SoFar): readonly GearLine[] {
  const compiled = new Map(soFar.rig.lines.map(line => [nameOf(line), line]))
  const known = own.flatMap(rope => {
    const line = compiled.get(fullName(rope.line))
    return kit.lines.has(nameKey(rope.name)) && line ? [{ rope, line }] : []
  })
  const moved = movedBlocks(kit, known)
  return [
    ...blocksToGive(kit, own),
    ...moved.values(),
    ...known.flatMap(({ rope, line }) => {
      const said = [
        ...(isOtherwise(kit, rope) ? [pairOrSingle(rope)] : []),
        ...differences(rope, line, soFar, moved),
      ]
      return said.length === 0 ? [] : [{ name: spoken(rope.name), said: said.join(', ') }]
    }),
    ...leftOut(kit, own),
    ...added(kit, own, soFar.ropes),
    ...leftToGive(kit, own),
  ]
}

const isOtherwise = (kit: Kit, { name, pair }: Rope) => (kit.lines.get(nameKey(name))?.pair ?? pair) !== pair
const pairOrSingle = ({ pair }: Rope) => (pair ? 'pair' : 'single')

const leftOut = (kit: Kit, own: readonly Rope[]) =>
  [...kit.lines.values()]
    .filter(({ name }) => !own.some(rope => nameKey(rope.name) === nameKey(name.words)))
    .map(({ name }) => ({ name: '', said: `without ${spoken(name.words)}` }))

const added = (kit: Kit, own: readonly Rope[], ropes: readonly Rope[]) =>
  own
    .filter(({ name }) => !kit.lines.has(nameKey(name)))
    .flatMap(rope => {
      const [head = '', ...rest] = wholeLine(rope, ropes)
      return [`with ${head}`, ...rest].map(said => ({ name: '', said }))
    })

function blocksToGive(kit: Kit, own: readonly Rope[]): readonly GearLine[] {
  const given = new Map<string, GearLine>()
  for (const rope of own) {
    const way = wayOf(kit, rope)
    if (way.length !== rope.line.lead.length - 1) continue
    way.forEach((block, i) => {
      const point = rope.line.lead[i + 1]
      if (!block || kit.blocks.get(nameKey(block))?.place || !point) return
      given.set(block, { name: spoken(block), said: `at ${place(point.at, sideOf(rope.line))}` })
    })
  }
  return [...given.values()]
}

/** Blocks that the gear leaves to be given, and no lead of the tables tells. */
function leftToGive(kit: Kit, own: readonly Rope[]): readonly GearLine[] {
  const given = new Set(blocksToGive(kit, own).map(({ name }) => name))
  const open = own.flatMap(rope =>
    wayOf(kit, rope).flatMap(block =>
      block && !kit.blocks.get(nameKey(block))?.place ? [spoken(block)] : [],
    ),
  )
  const left = [...new Set(open)].filter(name => !given.has(name))
  return left.length === 0 ? [] : [{ name: '', said: `# to be given: ${left.join(', ')}` }]
}

/** The blocks that a line of the gear goes through, in order; undefined where it goes to a place with steps of its own. */
function wayOf(kit: Kit, { name }: Rope): readonly (string | undefined)[] {
  const line = kit.lines.get(nameKey(name))
  const way = line ? [...line.through, ...(line.to ? [line.to] : [])] : []
  return way.map(({ from, steps }) =>
    from && steps.length === 0 ? kit.blocks.get(nameKey(from.words))?.name.words : undefined,
  )
}

/** The rig as her text has it so far, and all her lines as the tables have them. */
export interface SoFar {
  readonly rig: Rig
  readonly figures: Figures
  readonly ropes: readonly Rope[]
}

interface Known {
  readonly rope: Rope
  readonly line: Line
}

const nameOf = ({ words, side }: Line) => (side ? `${words} ${side}` : words)
const fullName = ({ words, side }: TableLine) => (side ? `${words} ${side}` : words)

/** Blocks of the gear that stand elsewhere than the gear has them, where all lines through them agree on it; what is said of each. */
function movedBlocks(kit: Kit, known: readonly Known[]): ReadonlyMap<string, GearLine> {
  const wanted = new Map<string, { readonly said: string; readonly moved: boolean }[]>()
  for (const { rope, line } of known) {
    const way = wayOf(kit, rope)
    if (line.lead.length !== rope.line.lead.length || way.length !== line.lead.length - 1) continue
    way.forEach((block, i) => {
      const [had, due] = [line.lead[i + 1], rope.line.lead[i + 1]]
      if (!block || !had || !due) return
      const said = movedTo(kit.blocks.get(nameKey(block))?.place, had.at, due.at, sideOf(rope.line))
      wanted.set(block, [...(wanted.get(block) ?? []), { said, moved: apart(due.at, had.at) > within }])
    })
  }
  return new Map(
    [...wanted].flatMap(([block, [first, ...others]]) =>
      first?.moved && others.every(({ said }) => said === first.said)
        ? [[block, { name: spoken(block), said: first.said }]]
        : [],
    ),
  )
}

/** The clauses in which a line of the tables differs from the line as compiled. */
function differences(
  rope: Rope,
  line: Line,
  soFar: SoFar,
  moved: ReadonlyMap<string, GearLine>,
): readonly string[] {
  const { line: due } = rope
  const size = sameRope(line, due) ? undefined : ropeOf(due, line.rope?.material)
  return [
    ...(size ? [size] : []),
    ...(due.purchase.length === 0 || sameTackle(line, due) ? [] : [roveOf(due)]),
    ...(due.hands === undefined || line.hands === due.hands ? [] : [hands(due.hands)]),
    ...(due.travel === undefined || sameTravel(line, due.travel, soFar)
      ? []
      : [`travels ${metres(due.travel)}`]),
    ...(isAstray(line, due, moved) ? [leadOf(due)] : []),
    // Last, since what answers a line is told to the end of its row.
    ...(sameAnswers(line, due, soFar) ? [] : [answersOf(rope, soFar.ropes) ?? answeredBy(due)]),
  ]
}

/** Of a brace the whole swing is reckoned, whatever travel is told. */
function sameTravel(line: Line, due: number, { figures }: SoFar): boolean {
  const travel = figures.leads().get(line.address)?.travel
  if (!travel?.known) return false
  if (line.kind === 'brace') return true
  const within = line.travel === undefined ? travelWithin.reckoned * due : 0
  return Math.abs(travel.value - due) <= Math.max(travelWithin.said, within)
}

const sameRope = ({ rope }: Line, { millimetres, material }: TableLine) =>
  millimetres === undefined ||
  (Math.round((rope?.diameter ?? 0) * 10_000) === Math.round(millimetres * 10) &&
    (material === '' || rope?.material === material))

const sameTackle = (line: Line, due: TableLine) =>
  line.purchase.join('+') === due.purchase.join('+') &&
  (aboveTackle(line.purchase) !== undefined || line.tackleBelow === standsBelow(due))

/** Whether a lead goes otherwise than the tables', even with the moved blocks where they are due. */
function isAstray(line: Line, due: TableLine, moved: ReadonlyMap<string, GearLine>): boolean {
  if (due.lead.length < 2) return false
  if (line.lead.length !== due.lead.length) return true
  return due.lead.some(({ at }, i) => {
    const had = line.lead[i]
    return i > 0 && had !== undefined && apart(at, had.at) > within && !moved.has(had.what)
  })
}

function sameAnswers(line: Line, { against }: TableLine, { rig, ropes }: SoFar): boolean {
  if (!against) return true
  const names = new Map(rig.lines.map(one => [one.address, nameOf(one)]))
  const due = ropes.flatMap(({ lines }) => lines).filter(({ id }) => against.includes(id))
  const had = line.counterparts.map(address => names.get(address))
  if (due.length === 0 && had.length === 0) return line.answeredBy !== undefined
  return had.length === due.length && due.every(one => had.includes(fullName(one)))
}
