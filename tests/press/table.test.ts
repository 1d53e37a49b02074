import { expect, test } from 'vitest'
import { plainTables } from '../../src/press/table/index.ts'
import { nothing, type Table, words } from '../../src/sheets/table.ts'

const table: Table = {
  id: 'sails',
  title: 'Sails',
  columns: [
    { heading: 'sail', unit: '' },
    { heading: 'area', unit: 'm²' },
    { heading: 'weight', unit: 'kg' },
  ],
  rows: [
    [
      words('Jib'),
      { kind: 'number', value: 16.04, decimals: 1 },
      { kind: 'number', value: 112, decimals: 0 },
    ],
    [words('Vorbramsegel\u0007'), { kind: 'number', value: -0.01, decimals: 1 }, nothing],
    [
      words('Ring-tail'),
      { kind: 'unknown', because: 'It has no corners.' },
      { kind: 'unknown', because: 'It has no corners.' },
    ],
  ],
  notes: ['A note that runs on and on, '.repeat(6).trim()],
}

test('a table ranges numbers right and words left, and gives each reason once', () => {
  expect(plainTables([table]).split('\n')).toEqual([
    'Sails',
    'sail               area, m²  weight, kg',
    '-----------------  --------  ----------',
    'Jib                    16.0         112',
    'Vorbramsegel\\u{7}       0.0',
    'Ring-tail                 ?           ?',
    '? Ring-tail (area, weight): It has no corners.',
    'A note that runs on and on, A note that runs on and on, A note that runs on and on, A note that runs',
    'on and on, A note that runs on and on, A note that runs on and on,',
    '',
  ])
})
