import { purchaseNames, purchaseOf } from '../rig/index.ts'
import { nameKey } from '../syntax/index.ts'
import { bothSides, type SideSaid, sides, withoutSide } from './sides.ts'
import type { Row } from './table.ts'
import type { Side, Space, TableLine, TableRail } from './tables.ts'

/** A row of lines, and which of its lines it tells of: both of a pair, one of a pair, or a single one. */
interface LineRow {
  readonly row: Row
  readonly words: string
  readonly lines: readonly Named[]
}

interface Named {
  readonly id: string
  readonly side: Side | undefined
}

/**
 * The lines of a vessel. The two of a pair are two rows, their sides in their names or in the column of sides, or one row
 * for both; then its rail and its lead are told for one side and mirrored for the other.
 */
export function linesOf(
  rows: readonly Row[],
  leadRows: readonly Row[],
  rails: readonly TableRail[],
): readonly TableLine[] {
  const all = lineRows(rows)
  const called = namesOf(all)
  const codes = new Map(rails.map(({ code }) => [nameKey(code), code]))
  const leads = leadsOf(leadRows, called)
  return all.flatMap(one => {
    const clauses = clausesOf(one.row)
    return one.lines.map(
      (line): TableLine => ({
        ...line,
        words: one.words,
        ...clauses,
        pin: pinOf(one, line.side, codes),
        against: againstOf(one.row, line, called),
        lead: leads.get(line.id) ?? [],
      }),
    )
  })
}

/** One line, or the two of a pair, by each name that they may be called by: id or name, with or without a side. */
type Called = ReadonlyMap<string, readonly Named[]>

function namesOf(rows: readonly LineRow[]): Called {
  const byWords = new Map<string, Named[]>()
  for (const { words, lines } of rows) byWords.set(words, [...(byWords.get(words) ?? []), ...lines])
  const names: readonly (readonly [string, readonly Named[]])[] = [
    ...rows.map(({ row, lines }) => [row.name('id'), lines] as const),
    ...rows.flatMap(({ row, lines }) =>
      lines.flatMap(line => sidedNames(row, line).map(name => [name, [line]] as const)),
    ),
    ...rows.flatMap(({ row, words, lines }) =>
      row.name('name') === words ? [] : [[row.name('name'), lines] as const],
    ),
    ...byWords,
  ]
  // The first that is called by a name keeps it.
  return new Map(names.filter(([name]) => name !== '').toReversed())
}

/** 'jib sheet port', 'jib sheet p', by the id as by the name. */
const sidedNames = (row: Row, { side }: Named) =>
  [row.name('id'), row.name('name')].flatMap(name =>
    name === '' || side === undefined ? [] : [`${name} ${side}`, `${name} ${side.slice(0, 1)}`],
  )

function lineRows(rows: readonly Row[]): readonly LineRow[] {
  const said = rows.map(row => {
    const named = withoutSide(row.name('name'))
    const told = row.one('side', sides, 'side') ?? 'neither'
    if (named.side && isSide(told) && told !== named.side)
      row.amiss('table/wrong-side', 'side', `its name says ${named.side}.`, 'Mend the side, or the name.')
    return { row, told, ...named }
  })
  const bySide = new Map<string, Set<SideSaid>>()
  for (const { words, told } of said) bySide.set(words, (bySide.get(words) ?? new Set()).add(told))
  return said.map(({ row, told, words, side }) => {
    const id = row.name('id') || row.name('name')
    const isBoth = told === 'both' && !side
    const isPair = bySide.get(words)?.has('port') && bySide.get(words)?.has('starboard')
    const isOne = side ?? (isPair && isSide(told) ? told : undefined)
    return {
      row,
      words,
      lines: isBoth
        ? bothSides.map(one => ({ id: `${id} ${one}`, side: one }))
        : [{ id: row.has('id') && row.name('id') ? id : `${words} ${isOne ?? ''}`.trim(), side: isOne }],
    }
  })
}

const isSide = (told: SideSaid): told is Side => told === 'port' || told === 'starboard'

function clausesOf(row: Row) {
  const purchase = row.list('purchase', /\+|,|\//)
  for (const name of purchase)
    if (!purchaseOf(name))
      row.amiss(
        'table/unknown',
        'purchase',
        `there is no purchase "${name}".`,
        row.meant(name, purchaseNames),
      )
  const size = row.number('rope_mm')
  if (size !== undefined && size <= 0)
    row.amiss('table/no-number', 'rope_mm', `a rope of ${size} mm is none.`)
  return {
    kind: row.name('kind'),
    actsOn: row.name('acts_on'),
    purchase,
    millimetres: size,
    material: row.kind('material'),
    travel: row.number('travel_m'),
    hands: row.count('hands', 1, 200),
  }
}

/** Where a line is made fast; undefined, with a finding, where the row doesn't tell it. */
function pinOf(
  { row }: LineRow,
  side: Side | undefined,
  codes: ReadonlyMap<string, string>,
): TableLine['pin'] {
  const code = row.text('rail')
  const number = row.number('pin')
  if (code === '' && row.text('pin') === '')
    row.leaves(
      'rail',
      'no rail and no pin are told; where it is made fast is left to be given.',
      'Enter them, or say it in the text.',
    )
  else if (code === '') row.amiss('table/empty', 'rail', 'a rail is due beside a pin.', 'Enter the rail.')
  else if (row.text('pin') === '')
    row.amiss('table/empty', 'pin', 'a pin is due beside a rail.', 'Enter the pin.')
  if (code === '' || number === undefined) return undefined
  const rail = railCodes(row, code, side)
    .map(one => codes.get(nameKey(one)))
    .find(one => one !== undefined)
  if (rail !== undefined) return { rail, number }
  row.amiss('table/unknown', 'rail', `there is no rail "${code}".`, row.meant(code, [...codes.values()]))
  return undefined
}

/** What the rail of a line may be, likeliest first: told for both sides it is that of its own side. */
function railCodes(row: Row, code: string, side: Side | undefined): readonly string[] {
  if (side === undefined) return [code]
  const mark = side === 'port' ? 'P' : 'S'
  const isBoth = row.one('side', sides, 'side') === 'both'
  return isBoth ? [`${code.replace(/-[PS]$/, '')}-${mark}`, code] : [code, `${code}-${mark}`]
}

/** The lines that are eased: of a pair that of its own side, of itself the other. */
function againstOf(row: Row, self: Named, called: Called): readonly string[] | undefined {
  if (!row.has('opposes')) return undefined
  return row.list('opposes', /[;,|]/).flatMap(name => {
    const meant = called.get(name)
    if (!meant) unknown(row, 'opposes', name, called)
    const others = (meant ?? []).filter(({ id }) => id !== self.id)
    const isSelf = others.length !== meant?.length
    return others
      .filter(({ side }) => isSelf || others.length === 1 || !self.side || side === self.side)
      .map(({ id }) => id)
  })
}

const unknown = (row: Row, column: string, name: string, called: Called) =>
  row.amiss('table/unknown', column, `there is no line "${name}".`, row.meant(name, [...called.keys()]))

type Lead = TableLine['lead']

/** Leads by the ids of their lines, in order. */
function leadsOf(rows: readonly Row[], called: Called): ReadonlyMap<string, Lead> {
  const told = new Map<string, { seq: number; point: Lead[number] }[]>()
  for (const [index, row] of rows.entries()) {
    const name = row.name('line')
    if (!called.has(name)) unknown(row, 'line', name, called)
    const at: Space = [row.needed('x'), row.needed('y'), row.needed('z')]
    const point = { at, what: row.name('what'), parts: row.count('parts', 0, 100) ?? 1 }
    const points = told.get(name) ?? []
    points.push({ seq: row.number('seq') ?? index, point })
    told.set(name, points)
  }
  return new Map(
    [...told].flatMap(([name, points]) => {
      const lead = points.toSorted((a, b) => a.seq - b.seq).map(({ point }) => point)
      const lines = called.get(name) ?? []
      return lines.map(
        ({ id, side }) => [id, lines.length > 1 && side ? lead.map(onSideOf(lead, side)) : lead] as const,
      )
    }),
  )
}

/** A lead that is told for one side, on the side that is due. */
function onSideOf(lead: Lead, side: Side): (point: Lead[number]) => Lead[number] {
  const told = lead.find(({ at: [, y] }) => Math.abs(y) >= 0.005)?.at[1] ?? 0
  const isMirrored = told < 0 !== (side === 'port') && told !== 0
  return isMirrored ? point => ({ ...point, at: [point.at[0], -point.at[1], point.at[2]] }) : point => point
}
