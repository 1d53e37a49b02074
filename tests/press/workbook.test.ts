import ExcelJS from 'exceljs'
import { describe, expect, it } from 'vitest'
import { csvTable } from '../../src/press/table/index.ts'
import { workbook } from '../../src/press/workbook/index.ts'
import type { Table } from '../../src/sheets/table.ts'

const table: Table = {
  id: 'cordage',
  title: 'Cordage: [all]',
  columns: [
    { heading: 'rope', unit: '' },
    { heading: 'length', unit: 'm' },
  ],
  rows: [
    [
      { kind: 'words', words: '=1+1' },
      { kind: 'number', value: 12.345, decimals: 2 },
    ],
    [
      { kind: 'words', words: '<b> & "Großsegel" 帆\u0000' },
      { kind: 'number', value: -3, decimals: 0 },
    ],
    [
      { kind: 'words', words: '@home, "so"' },
      { kind: 'unknown', because: 'Its lead is not given.' },
    ],
  ],
  notes: ['Planning figures.'],
}

describe('a workbook, read back by another library', () => {
  const bytes = workbook([table, { ...table, id: 'again' }], 'Grey Plover: stores')

  it('has a sheet for each table, numbers as numbers and words as words', async () => {
    const book = new ExcelJS.Workbook()
    await book.xlsx.load(bytes.buffer as ArrayBuffer)
    expect(book.worksheets.map(({ name }) => name)).toEqual(['Cordage all', 'Cordage all 1'])
    const values = book.worksheets[0]?.getSheetValues().map(row => (Array.isArray(row) ? row.slice(1) : row))
    expect(values?.slice(1)).toEqual([
      ['rope', 'length, m'],
      ['=1+1', 12.345],
      ['<b> & "Großsegel" 帆', -3],
      ['@home, "so"', '?'],
      undefined,
      ['Planning figures.'],
    ])
    expect(book.worksheets[0]?.getCell('A2').type).toBe(ExcelJS.ValueType.String)
  })

  it('is the same bytes every time', () => {
    expect(workbook([table, { ...table, id: 'again' }], 'Grey Plover: stores')).toEqual(bytes)
  })
})

it('CSV keeps numbers plain, quotes what holds a comma and disarms formulas', () => {
  expect(csvTable(table)).toBe(
    'rope,"length, m"\r\n\'=1+1,12.345\r\n"<b> & ""Großsegel"" 帆\u0000",-3\r\n"\'@home, ""so""",\r\n',
  )
})
