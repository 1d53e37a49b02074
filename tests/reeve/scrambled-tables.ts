import fc from 'fast-check'
import type { TableName } from '../../src/reeve/index.ts'
import type { RigTable } from '../support/rig-tables.ts'

type Cells = readonly string[]
type Rows = readonly Readonly<Record<string, string>>[]

/** Metres in one of each unit, and how a heading tells of it. */
const lengths = { m: 1, cm: 0.01, ft: 0.3048 } as const
const headings = [
  (name: string, unit: string) => `${name} (${unit})`,
  (name: string, unit: string) => `${name.toUpperCase()} [${unit}]`,
  (name: string, unit: string) => `${name}_${unit}`,
]
const isPlace =
  /^([xyz][01]?|z_top|z_lowered|roach|[xy]_(first|last)|(head|foot)_[wz]|(tack|clew|throat)_[xz]|head_x|headpt_z)$/

/**
 * The tables of a vessel as another spreadsheet might have them: rows and columns in another order, columns besides,
 * other units, other marks between cells, decimal commas, other words for sides, pairs in one row where they mirror.
 */
export function scrambledTables(
  tables: ReadonlyMap<TableName, RigTable>,
): fc.Arbitrary<ReadonlyMap<TableName, string>> {
  return fc
    .record({
      mark: fc.constantFrom(',', ';', '\t'),
      eol: fc.constantFrom('\n', '\r\n', '\r'),
      bom: fc.constantFrom('', '\ufeff'),
      unit: fc.constantFrom('m', 'cm', 'ft' as keyof typeof lengths),
      heading: fc.constantFrom(...headings),
      paired: fc.boolean(),
      port: fc.constantFrom('P', 'port', 'Port'),
      shuffles: fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
    })
    .map(({ mark, eol, bom, unit, heading, paired, port, shuffles }) => {
      const draw = () => shuffles.next().value as number
      const shuffled = <T>(list: readonly T[]): T[] =>
        list
          .map(one => [draw(), one] as const)
          .sort(([a], [b]) => a - b)
          .map(([, one]) => one)
      const all = paired ? pairsInOneRow(tables) : tables
      return new Map(
        [...all].map(([name, { columns, rows }]) => {
          const order = shuffled([...columns.keys(), -1])
          const hasUnit = (column: number) => isPlace.test(columns[column] ?? '') && name !== 'hull'
          const head = order.map(at =>
            at < 0 ? 'shelf mark' : hasUnit(at) ? heading(columns[at] ?? '', unit) : (columns[at] ?? ''),
          )
          const cell = (words: string, column: number) => {
            const number = hasUnit(column) && words !== '' ? String(Number(words) / lengths[unit]) : words
            const side = columns[column] === 'side' && words === 'P' ? port : number
            return mark !== ',' && /^-?\d+\.\d+$/.test(side) && !/^-?[1-9]\d{0,2}\.\d{3}$/.test(side)
              ? side.replace('.', ',')
              : side
          }
          const body = shuffled(rows).map(row => order.map(at => (at < 0 ? 'B/7' : cell(row[at] ?? '', at))))
          const quoted = (words: string) =>
            words.includes(mark) || /["\r\n]/.test(words) ? `"${words.replaceAll('"', '""')}"` : words
          const lines = [head, ...body].map((row: Cells) => row.map(quoted).join(mark))
          return [name, bom + lines.join(eol) + eol] as const
        }),
      )
    })
}

/** The same tables with each pair that mirrors in one row, told for port. */
export function pairsInOneRow(tables: ReadonlyMap<TableName, RigTable>): ReadonlyMap<TableName, RigTable> {
  const lines = recordsOf(tables.get('lines'))
  const leads = recordsOf(tables.get('leads'))
  const byId = new Map(lines.map(line => [line.id ?? '', line]))
  const leadOf = (id: string) => leads.filter(({ line }) => line === id)
  const pairs = new Set(
    lines.flatMap(({ id = '' }) => {
      const [port, starboard] = ['p', 's'].map(side => byId.get(`${base(id)}-${side}`))
      const mirrors = port && starboard && alike(port, starboard)
      return mirrors && mirror(leadOf(`${base(id)}-p`), leadOf(`${base(id)}-s`)) ? [base(id)] : []
    }),
  )
  const isPaired = (id: string) => isSided(id) && pairs.has(base(id))
  const inOne = (line: Rows[number]) => ({
    ...line,
    id: base(line.id ?? ''),
    name: withoutSide(line.name),
    side: 'P+S',
    rail: (line.rail ?? '').replace(/-P$/, ''),
    opposes: opposedByBoth(line, byId),
  })
  const isTold = (id: string) => !(isPaired(id) && id.endsWith('-s'))
  const told = lines
    .filter(({ id = '' }) => isTold(id))
    .map(line => (isPaired(line.id ?? '') ? inOne(line) : line))
  const ways = leads
    .filter(({ line = '' }) => isTold(line))
    .map(row => (isPaired(row.line ?? '') ? { ...row, line: base(row.line ?? '') } : row))
  return new Map(
    [...tables].map(([name, table]) => [
      name,
      name === 'lines' ? tableOf(table, told) : name === 'leads' ? tableOf(table, ways) : table,
    ]),
  )
}

const base = (id: string) => id.replace(/-[ps]$/, '')
const isSided = (id: string) => /-[ps]$/.test(id)
const withoutSide = (name = '') => name.replace(/ (port|starboard)$/, '')

/** What both of a pair ease: a pair by its name where each eases that of its own side, by its ids where each eases both. */
function opposedByBoth(
  { id = '', opposes = '' }: Rows[number],
  byId: ReadonlyMap<string, Rows[number]>,
): string {
  const ids = opposes.split(';').filter(Boolean)
  return ids
    .map(one => {
      if (base(one) === base(id)) return base(id)
      const other = one.endsWith('-p') ? `${base(one)}-s` : `${base(one)}-p`
      return isSided(one) && !ids.includes(other) ? withoutSide(byId.get(one)?.name) : one
    })
    .join(';')
}

const recordsOf = (table: RigTable | undefined): Rows =>
  (table?.rows ?? []).map(row =>
    Object.fromEntries((table?.columns ?? []).map((column, i) => [column, row[i] ?? ''])),
  )

const tableOf = ({ columns }: RigTable, rows: Rows): RigTable => ({
  columns,
  rows: rows.map(row => columns.map(column => row[column] ?? '')),
})

/** Whether two rows say the same of both sides. */
function alike(port: Rows[number], starboard: Rows[number]): boolean {
  const other: Readonly<Record<string, string>> = { p: 's', s: 'p' }
  const swapped = (words: string) => words.replace(/-([ps])(?=;|$)/g, (_, side: string) => `-${other[side]}`)
  const same = ['kind', 'acts_on', 'pin', 'purchase', 'rope_mm', 'material', 'travel_m', 'hands']
  const sorted = (words: string | undefined) => (words ?? '').split(';').sort().join(';')
  return (
    same.every(column => port[column] === starboard[column]) &&
    (port.rail ?? '').endsWith('-P') &&
    port.rail?.replace(/-P$/, '') === starboard.rail?.replace(/-S$/, '') &&
    sorted(swapped(port.opposes ?? '')) === sorted(starboard.opposes)
  )
}

const mirror = (a: Rows = [], b: Rows = []) =>
  a.length === b.length &&
  a.every(({ x, y, z, parts, what }, i) => {
    const other = b[i]
    return (
      x === other?.x &&
      z === other?.z &&
      parts === other?.parts &&
      what === other?.what &&
      Number(y) === -Number(other?.y)
    )
  })
