import { strToU8, zipSync } from 'fflate'
import type { Cell, Column, Table } from '../../sheets/table.ts'

/** The first day that an archive can tell: no clock is asked. */
const mtime = new Date(1980, 0, 1)

/**
 * Tables as a workbook (Office Open XML, ECMA-376), a sheet for each. Words are inline strings and never formulas, numbers
 * are numbers; the same tables give the same bytes.
 */
export function workbook(tables: readonly Table[], title: string): Uint8Array {
  const sheets = tables.map((table, i) => ({ table, name: sheetName(table, i, tables), id: i + 1 }))
  const files: Readonly<Record<string, string>> = {
    '[Content_Types].xml': types(sheets.map(({ id }) => id)),
    '_rels/.rels': relations([
      ['rId1', 'officeDocument', 'xl/workbook.xml'],
      ['rId2', 'metadata/core-properties', 'docProps/core.xml'],
    ]),
    'docProps/core.xml': core(title),
    'xl/workbook.xml': book(sheets),
    'xl/_rels/workbook.xml.rels': relations([
      ...sheets.map(({ id }) => [`rId${id}`, 'worksheet', `worksheets/sheet${id}.xml`] as const),
      [`rId${sheets.length + 1}`, 'styles', 'styles.xml'],
    ]),
    'xl/styles.xml': styles,
    ...Object.fromEntries(sheets.map(({ table, id }) => [`xl/worksheets/sheet${id}.xml`, sheet(table)])),
  }
  return zipSync(
    Object.fromEntries(
      Object.entries(files).map(([name, xml]) => [name, [strToU8(head + xml), { mtime, os: 0, level: 6 }]]),
    ),
  )
}

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
const office = 'http://schemas.openxmlformats.org'
const main = `${office}/spreadsheetml/2006/main`

/** At most 31 characters without the marks that a sheet's name may not hold, and no name twice. */
function sheetName({ title }: Table, at: number, all: readonly Table[]): string {
  const name = title
    .replace(/[\\/?*[\]:'\s]+/g, ' ')
    .slice(0, 28)
    .trim()
  return all.findIndex(other => other.title === title) === at ? name : `${name} ${at}`
}

const types = (ids: readonly number[]) =>
  `<Types xmlns="${office}/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
  '<Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>' +
  '<Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>' +
  '<Override PartName="/docProps/core.xml" ContentType="application/vnd.openxmlformats-package.core-properties+xml"/>' +
  ids
    .map(
      id =>
        `<Override PartName="/xl/worksheets/sheet${id}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`,
    )
    .join('') +
  '</Types>'

const relations = (all: readonly (readonly [id: string, type: string, target: string])[]) =>
  `<Relationships xmlns="${office}/package/2006/relationships">${all
    .map(([id, type, target]) => {
      const root = type.startsWith('metadata')
        ? `${office}/package/2006/relationships`
        : `${office}/officeDocument/2006/relationships`
      return `<Relationship Id="${id}" Type="${root}/${type}" Target="${target}"/>`
    })
    .join('')}</Relationships>`

const core = (title: string) =>
  `<cp:coreProperties xmlns:cp="${office}/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>${escaped(title)}</dc:title></cp:coreProperties>`

const book = (sheets: readonly { readonly name: string; readonly id: number }[]) =>
  `<workbook xmlns="${main}" xmlns:r="${office}/officeDocument/2006/relationships"><sheets>${sheets
    .map(({ name, id }) => `<sheet name="${escaped(name)}" sheetId="${id}" r:id="rId${id}"/>`)
    .join('')}</sheets></workbook>`

/** Plain; bold for headings; numbers with none to three decimals. */
const styles =
  `<styleSheet xmlns="${main}"><numFmts count="2"><numFmt numFmtId="164" formatCode="0.0"/><numFmt numFmtId="165" formatCode="0.000"/></numFmts>` +
  '<fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts>' +
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="6">' +
  '<xf xfId="0"/><xf xfId="0" fontId="1" applyFont="1"/>' +
  [1, 164, 2, 165].map(format => `<xf xfId="0" numFmtId="${format}" applyNumberFormat="1"/>`).join('') +
  '</cellXfs></styleSheet>'

const heading = 1
const numberStyle = (decimals: number) => 2 + Math.min(3, decimals)

function sheet({ columns, rows, notes }: Table): string {
  const widths = columns.map((column, i) =>
    Math.min(60, Math.max(8, headOf(column).length, ...rows.map(row => widthOf(row[i])))),
  )
  const lines = [
    columns.map((column, i) => inline(headOf(column), i, 1, heading)).join(''),
    ...rows.map((row, r) => row.map((cell, i) => written(cell, i, r + 2)).join('')),
    ...notes.map((note, n) => inline(note, 0, rows.length + 3 + n, 0)),
  ]
  const numbers = [...rows.map((_, r) => r + 2), ...notes.map((_, n) => rows.length + 3 + n)]
  return (
    `<worksheet xmlns="${main}"><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" state="frozen"/></sheetView></sheetViews>` +
    `<cols>${widths.map((width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width + 2}" customWidth="1"/>`).join('')}</cols>` +
    `<sheetData>${lines.map((line, i) => `<row r="${i === 0 ? 1 : numbers[i - 1]}">${line}</row>`).join('')}</sheetData></worksheet>`
  )
}

const headOf = ({ heading, unit }: Column) => (unit === '' ? heading : `${heading}, ${unit}`)
const widthOf = (cell: Cell | undefined) => (cell?.kind === 'words' ? cell.words.length : 8)

function written(cell: Cell, column: number, row: number): string {
  switch (cell.kind) {
    case 'number':
      return `<c r="${address(column, row)}" s="${numberStyle(cell.decimals)}"><v>${Number(cell.value.toPrecision(12))}</v></c>`
    case 'words':
      return cell.words === '' ? '' : inline(cell.words, column, row, 0)
    case 'unknown':
      return inline('?', column, row, 0)
  }
}

const inline = (words: string, column: number, row: number, style: number) =>
  `<c r="${address(column, row)}" t="inlineStr" s="${style}"><is><t xml:space="preserve">${escaped(words)}</t></is></c>`

/** 'A1', 'AB12'. */
function address(column: number, row: number): string {
  const letter = String.fromCharCode(65 + (column % 26))
  return column < 26
    ? `${letter}${row}`
    : `${address(Math.floor(column / 26) - 1, 0).replace(/0$/, '')}${letter}${row}`
}

/** Marks that XML 1.0 can't hold are left out. */
const escaped = (words: string) =>
  words
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
