import { purchaseNames, purchaseOf } from '../rig/index.ts'
import { nameKey } from '../syntax/index.ts'
import { bothSides, type SideSaid, sides, withoutSide } from './sides.ts'
import type { Row } from './table.ts'
import type { Side, Space, TableLine, TableRail } from './tables.ts'

/** A row of lines, and which of its lines it tells of: both of a pair, one of a pair, or a single one. */
interface LineRow {
  readonly row: Row
  readonly words: string
  readonly lines: readonly { readonly id: string; readonly side: Side | undefined }[]
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
  const called = new Map<string, LineRow>()
  for (const one of all)
    for (const name of [one.row.name('id'), one.row.name('name')])
      if (!called.has(name)) called.set(name, one)
  const codes = new Map(rails.map(({ code }) => [nameKey(code), code]))
  const leads = leadsOf(leadRows, called)
  return all.flatMap(one => {
    const shared = clausesOf(one.row)
    return one.lines.map(({ id, side }): TableLine => {
      const lead = leads.get(one.row) ?? []
      return {
        id,
        words: one.words,
        side,
        ...shared,
        pin: pinOf(one, side, codes),
        against: againstOf(one, id, side, called),
        lead: one.lines.length === 2 && side ? lead.map(onSideOf(lead, side)) : lead,
      }
    })
  })
}

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
    material: row.text('material'),
    travel: row.number('travel_m'),
    hands: row.count('hands', 1, 200),
  }
}

function pinOf(
  { row }: LineRow,
  side: Side | undefined,
  codes: ReadonlyMap<string, string>,
): TableLine['pin'] {
  const code = row.text('rail')
  const number = row.number('pin')
  if (code === '' || number === undefined) {
    if (code === '' && number === undefined)
      row.leaves(
        'rail',
        'no rail and no pin are told; where it is made fast is left to be given.',
        'Enter them, or say it in the text.',
      )
    else if (code === '') row.amiss('table/empty', 'rail', 'a rail is due beside a pin.', 'Enter the rail.')
    else if (row.text('pin') === '')
      row.amiss('table/empty', 'pin', 'a pin is due beside a rail.', 'Enter the pin.')
    return undefined
  }
  const base = code.replace(/-[PS]$/, '')
  const mark = side === 'port' ? 'P' : 'S'
  const isPair = row.one('side', sides, 'side') === 'both'
  const wanted = side && isPair ? [`${base}-${mark}`, code] : [code, ...(side ? [`${code}-${mark}`] : [])]
  const rail = wanted.map(one => codes.get(nameKey(one))).find(one => one !== undefined)
  if (rail !== undefined) return { rail, number }
  row.amiss('table/unknown', 'rail', `there is no rail "${code}".`, row.meant(code, [...codes.values()]))
  return undefined
}

/** The lines that are eased: of a pair told in one row those of its own side, of itself the other. */
function againstOf(
  self: LineRow,
  id: string,
  side: Side | undefined,
  called: ReadonlyMap<string, LineRow>,
): readonly string[] | undefined {
  if (!self.row.has('opposes')) return undefined
  return self.row.list('opposes', /[;,|]/).flatMap(name => {
    const meant = called.get(name)
    if (!meant) {
      self.row.amiss(
        'table/unknown',
        'opposes',
        `there is no line "${name}".`,
        self.row.meant(name, [...called.keys()]),
      )
      return []
    }
    const ids = meant.lines.map(line => line.id)
    if (meant === self) return ids.filter(other => other !== id)
    return meant.lines
      .filter(line => !side || !line.side || meant.lines.length === 1 || line.side === side)
      .map(line => line.id)
  })
}

type Lead = TableLine['lead']

function leadsOf(rows: readonly Row[], called: ReadonlyMap<string, LineRow>): ReadonlyMap<Row, Lead> {
  const leads = new Map<Row, { seq: number; point: Lead[number] }[]>()
  for (const [index, row] of rows.entries()) {
    const name = row.name('line')
    const line = called.get(name)
    if (!line)
      row.amiss('table/unknown', 'line', `there is no line "${name}".`, row.meant(name, [...called.keys()]))
    const at: Space = [row.needed('x'), row.needed('y'), row.needed('z')]
    const point = { at, what: row.name('what'), parts: row.count('parts', 0, 100) ?? 1 }
    const seq = row.number('seq') ?? index
    if (!line) continue
    const points = leads.get(line.row) ?? []
    points.push({ seq, point })
    leads.set(line.row, points)
  }
  return new Map(
    [...leads].map(([line, points]) => [
      line,
      points.toSorted((a, b) => a.seq - b.seq).map(({ point }) => point),
    ]),
  )
}

/** A lead that is told for one side, on the side that is due. */
function onSideOf(lead: Lead, side: Side): (point: Lead[number]) => Lead[number] {
  const told = lead.find(({ at: [, y] }) => Math.abs(y) >= 0.005)?.at[1] ?? 0
  const isMirrored = told < 0 !== (side === 'port') && told !== 0
  return isMirrored ? point => ({ ...point, at: [point.at[0], -point.at[1], point.at[2]] }) : point => point
}
