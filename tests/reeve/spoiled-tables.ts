import fc from 'fast-check'
import { type TableName, tableNames } from '../../src/reeve/index.ts'

/** A table as rows of cells, the first its heading. */
export type Cells = readonly (readonly string[])[]
export type Tables = ReadonlyMap<TableName, Cells>

/** What nobody should enter into a cell. */
const nasty = fc.oneof(
  fc.constantFrom(
    ...[
      '',
      ' ',
      '0',
      '-0',
      '1e9',
      '1e-9',
      'NaN',
      'Infinity',
      '-',
      '12,5',
      '1,250',
      '1.250,5',
      '12 m',
      '12 kg',
      '3/0',
    ],
    ...[
      '=1+2',
      '=HYPERLINK("x")',
      '+cmd',
      '@SUM(A1)',
      '-2+3',
      '__proto__',
      'constructor',
      'toString',
      'hasOwnProperty',
    ],
    ...[
      '"',
      '""',
      "'",
      '#',
      '# a remark',
      'port',
      'fore port',
      'the',
      'single',
      'gear',
      'vessel',
      'to',
      'a\nb',
      'a\r\nb',
      '\0',
    ],
    ...[
      'a\u0000b',
      '\u202eabc',
      '\ufeff',
      '\ud800',
      'é',
      '帆',
      '<b>&amp;',
      '$' + '{x}',
      '\\',
      '|',
      ';',
      'a;b',
      'P+S',
      'both',
      '99999',
    ],
    'x'.repeat(130),
    'wire with spun polyester fall',
    'very '.repeat(4000),
  ),
  fc.string({ maxLength: 30, unit: 'binary' }),
)

type Spoil = (tables: Map<TableName, Cells>) => void

const table = fc.constantFrom(...tableNames)
const at = fc.nat({ max: 400 })

/** One change for the worse. */
const spoil: fc.Arbitrary<Spoil> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.tuple(table, at, at, nasty).map(
      ([name, row, column, words]): Spoil =>
        tables =>
          change(tables, name, cells => withCell(cells, row % cells.length, column, words)),
    ),
  },
  fc.tuple(table, at, at).map(
    ([name, row, from]): Spoil =>
      tables => {
        // A name of one row in another: it stands twice, and what was meant by it is gone.
        change(tables, name, cells =>
          withCell(cells, row % cells.length, 0, cells[from % cells.length]?.[0] ?? ''),
        )
      },
  ),
  fc.tuple(table, at).map(
    ([name, column]): Spoil =>
      tables =>
        change(tables, name, cells => cells.map(row => row.filter((_, i) => i !== column % row.length))),
  ),
  fc.tuple(table, at, at).map(
    ([name, a, b]): Spoil =>
      tables =>
        change(tables, name, ([head = [], ...rows]) => [head, ...rows.map(row => swapped(row, a, b))]),
  ),
  fc.tuple(table, at).map(
    ([name, row]): Spoil =>
      tables =>
        change(tables, name, cells => cells.filter((_, i) => i !== row % cells.length)),
  ),
  fc.tuple(table, at).map(
    ([name, row]): Spoil =>
      tables =>
        change(tables, name, cells => [
          ...cells,
          ...cells.slice(row % cells.length, (row % cells.length) + 1),
        ]),
  ),
  table.map(
    (name): Spoil =>
      tables =>
        change(tables, name, cells => cells.slice(0, 1)),
  ),
  table.map(
    (name): Spoil =>
      tables =>
        change(tables, name, () => []),
  ),
  table.map(
    (name): Spoil =>
      tables =>
        void tables.delete(name),
  ),
)

const change = (tables: Map<TableName, Cells>, name: TableName, to: (cells: Cells) => Cells) => {
  const cells = tables.get(name)
  if (cells && cells.length > 0) tables.set(name, to(cells))
}

const withCell = (cells: Cells, row: number, column: number, words: string): Cells =>
  cells.map((line, i) =>
    i === row ? line.map((cell, j) => (j === column % line.length ? words : cell)) : line,
  )

function swapped(row: readonly string[], a: number, b: number): readonly string[] {
  const [one, other] = [a % row.length, b % row.length]
  return row.map((cell, i) => (i === one ? (row[other] ?? '') : i === other ? (row[one] ?? '') : cell))
}

/** The texts of tables that were changed for the worse in some places. */
export const spoiled = (sound: Tables): fc.Arbitrary<ReadonlyMap<TableName, string>> =>
  fc.array(spoil, { minLength: 1, maxLength: 6 }).map(spoils => {
    const tables = new Map(sound)
    for (const one of spoils) one(tables)
    return new Map([...tables].map(([name, cells]) => [name, written(cells)]))
  })

const written = (cells: Cells) =>
  cells
    .map(row =>
      row.map(words => (/[",\r\n]/.test(words) ? `"${words.replaceAll('"', '""')}"` : words)).join(','),
    )
    .join('\n')
