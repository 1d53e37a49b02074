import { readFileSync } from 'node:fs'
import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { expect, test, vi } from 'vitest'
import { toPdf } from '../../src/press/pdf/index.ts'
import type { Mark, PaperDocument, Sheet } from '../../src/sheets/index.ts'
import { installedFonts } from '../support/fonts.ts'
import { readPdf, structureOf, wordsOf } from '../support/pdf.ts'
import { alone, everyMark, ink, tagged, taggedBook, words } from '../support/press-scene.ts'
import { elementsOf } from '../support/xml.ts'

// The first use of a face parses it, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const fonts = await installedFonts()
const book = await toPdf(taggedBook(fonts), fonts)

function sheetOf(...marks: readonly Mark[]): Sheet {
  const size = { width: 148, height: 210 }
  return { id: 'sheet', title: 'A sheet', description: 'Some marks.', ...size, ground: undefined, marks }
}

async function firstPage(document: PaperDocument) {
  return (await readPdf(await toPdf(document, fonts))).getPage(1)
}

test('tags are nested as their groups are, in the order of drawing', async () => {
  const structure = await structureOf(await (await readPdf(book)).getPage(1))
  const head = 'THead(TR(TH(4) TH(5)))'
  // The row that follows overleaf is of the same table; its content is not on this page.
  const body = 'TBody(TR(TH(6) TD(7)) TR(TH() TD()))'
  expect(structure).toBe(
    `Root(Document(H1(0) P(1 Span"FR-P 21"(2) 3) Table(${head} ${body}) P(Link"page ii"(8 annotation))))`,
  )
})

test('a table with a key goes on overleaf, and what an artifact holds is not read', async () => {
  const structure = await structureOf(await (await readPdf(book)).getPage(2))
  const table = 'Table(THead(TR(TH() TH())) TBody(TR(TH() TD()) TR(TH(0) TD(1))))'
  const figure = 'Figure"Fore rail, port: two pins."(2)'
  const list = 'L(LI(Lbl(3) LBody(4)))'
  expect(structure).toBe(
    `Root(Document(${table} ${figure} ${list} Link"Back to the register"(5 annotation)))`,
  )
})

test('words come out in reading order, each once, halos notwithstanding', async () => {
  const pdf = await readPdf(book)
  expect((await wordsOf(await pdf.getPage(1))).map(text => text.trim())).toEqual([
    ...['running head', 'Line register', 'Pin', 'FR[P]21', 'is free.'],
    ...['where', 'line and what it does', 'FR-P 1', 'clewline', 'page ii'],
  ])
  expect((await wordsOf(await pdf.getPage(2))).map(text => text.trim())).toEqual([
    ...['where line', 'FR-P 2', 'buntline', '1', '1', 'Haul away.', 'page i'],
  ])
})

test('words that stand apart are read with a space between, and the pieces of one word without', async () => {
  const piece = words(fonts, 'Main', { x: 20, y: 20 })
  const marks = [
    piece,
    words(fonts, 'mast', { x: 20 + piece.width, y: 20 }),
    words(fonts, 'fore', { x: 20, y: 24 }),
    words(fonts, 'mast', { x: 90, y: 24 }),
  ]
  const page = await firstPage(alone(sheetOf({ kind: 'group', tag: { role: 'P' }, marks })))
  const { fnArray, argsArray } = await page.getOperatorList()
  const read = fnArray.flatMap((operator, at) =>
    operator === OPS.showText
      ? (argsArray[at][0] as { unicode?: string }[]).map(glyph => glyph.unicode ?? '')
      : [],
  )
  expect(read.join('')).toBe('Mainmast fore mast ')
})

test('links lead to their page, say so, and lie on their words', async () => {
  const pdf = await readPdf(book)
  const [link] = await (await pdf.getPage(1)).getAnnotations()
  expect(link).toMatchObject({ subtype: 'Link', contentsObj: { str: 'page ii' } })
  const [target] = (await pdf.getDestination(link.dest)) ?? []
  expect(await pdf.getPageIndex(target)).toBe(1)
  const [left, bottom, right, top] = link.rect.map((points: number) => (points * 25.4) / 72)
  expect(left).toBeCloseTo(15, 1)
  expect(210 - bottom).toBeGreaterThan(70)
  expect(210 - top).toBeLessThan(68)
  expect(right - left).toBeCloseTo(fonts.ruler('page ii', { face: 'Fira Sans Condensed', size: 9 }), 1)
})

test('a link to a page of another file is no link, and its words remain', async () => {
  const link: Mark = { kind: 'group', tag: { role: 'Link', alt: 'there' }, goTo: 'elsewhere', marks: [dot] }
  const page = await firstPage(alone(sheetOf(link)))
  expect(await structureOf(page)).toBe('Root(Document(Span"there"(0)))')
  expect(await page.getAnnotations()).toEqual([])
})

test('outline, page labels, language, title and date are those of the document', async () => {
  const pdf = await readPdf(book)
  const outline = (await pdf.getOutline()).map(({ title, items }) => [title, items.map(item => item.title)])
  expect(outline).toEqual([
    ['Line register', ['Overleaf']],
    ['The rail', []],
  ])
  expect(await pdf.getPageLabels()).toEqual(['i', 'ii'])
  const { info, metadata } = await pdf.getMetadata()
  expect(info).toMatchObject({
    Title: 'Register & <rules>',
    Subject: 'A table over two pages',
    Language: 'en',
    PDFFormatVersion: '1.7',
    CreationDate: 'D:20270314000000Z',
  })
  expect(metadata.get('dc:title')).toBe('Register & <rules>')
  expect(metadata.get('pdfuaid:part')).toBe('1')
  expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true })
  expect(await pdf.getViewerPreferences()).toMatchObject({ DisplayDocTitle: true })
})

test('a document without a date carries a fixed one, never the clock', async () => {
  const pdf = await readPdf(await toPdf({ ...taggedBook(fonts), date: undefined }, fonts))
  expect((await pdf.getMetadata()).info).toMatchObject({ CreationDate: 'D:19700101000000Z' })
})

test('attributes of tags are written: scope, columns, expansion, a figure’s box', () => {
  const file = Buffer.from(book).toString('latin1')
  expect(file.match(/\/Scope \/Column/g)).toHaveLength(2)
  expect(file.match(/\/Scope \/Row/g)).toHaveLength(2)
  expect(file).toMatch(/\/Scope \/Column\n\/ColSpan 2/)
  expect(file).toContain('/E (fore rail, port, pin 21)')
  // The figure's disc, of radius 2 at 10,10, was moved by 10,40: its left edge is at 18 mm, or 51.024 points.
  const box = file.match(/\/BBox \[([\d. ]+)\]\n\/?>>|\/BBox \[([\d. ]+)\]/)
  expect(box?.[0]).toContain('[51.024 ')
})

test('a page without any tag is one figure, read out as the sheet’s description', async () => {
  const page = await firstPage(alone(everyMark(fonts)))
  const alt = 'A frame, a sail, lines and names in all the ways they can be drawn.'
  expect(await structureOf(page)).toMatch(new RegExp(`^Root\\(Document\\(Figure"${alt}"\\([\\d ]+\\)\\)\\)$`))
})

test('lines between the cells of a table are artifacts, words there are not lost', async () => {
  const rule: Mark = { kind: 'line', points: [dot.at, { x: 50, y: 9 }], pen: { ink, width: 0.18 } }
  const row = tagged({ role: 'TR' }, rule, tagged({ role: 'TD' }, words(fonts, 'cell', dot.at)), rule)
  const page = await firstPage(alone(sheetOf(tagged({ role: 'Table' }, row))))
  expect(await structureOf(page)).toBe('Root(Document(Table(TR(TD(0)))))')
})

test('a translucent group is one thing; tags inside it are a fault of the drawing', async () => {
  const inside: Mark = { kind: 'group', opacity: 0.5, marks: [tagged({ role: 'P' }, dot)] }
  await expect(toPdf(alone(sheetOf(inside)), fonts)).rejects.toThrow('opacity')
})

test('no character is lost that a face lacks: a box is seen, the word itself is read and copied', async () => {
  const type = { face: 'Spectral', size: 10 } as const
  const page = await firstPage(
    alone(sheetOf(tagged({ role: 'P' }, words(fonts, 'λίνο 帆 😀', dot.at, { type })))),
  )
  expect((await wordsOf(page)).join('')).toBe('□□□□ □ □')
  const { fnArray, argsArray } = await page.getOperatorList()
  const marked = argsArray.filter((_, index) => fnArray[index] === OPS.beginMarkedContentProps)
  expect(marked.map(([tag]) => tag)).toEqual(['P', 'Span'])
})

test('any title, name or tag leaves the file sound', async () => {
  const nasty = [
    '</rdf:li>&<]]>',
    ')\\ (unbalanced',
    '\u202e\u0000\ud800x\uffff',
    '帆 😀 λ',
    '',
    '   ',
    'a'.repeat(3000),
  ]
  for (const text of nasty) {
    const group = tagged(
      { role: 'Span', alt: text, actual: text, expansion: text },
      words(fonts, text, dot.at),
      dot,
    )
    const sheet = {
      ...sheetOf(tagged({ role: 'P', key: text }, group)),
      id: text,
      title: text,
      description: text,
    }
    const document: PaperDocument = {
      ...alone(sheet),
      title: text,
      subject: text,
      pageLabels: [text],
      outline: [{ title: text, page: 0, children: [] }],
    }
    const bytes = await toPdf(document, fonts)
    const pdf = await readPdf(bytes)
    expect(await structureOf(await pdf.getPage(1)), text).toMatch(/^Root\(Document\(P\(Span/)
    const xmp =
      Buffer.from(bytes)
        .toString('utf8')
        .match(/<x:xmpmeta[\s\S]*<\/x:xmpmeta>/)?.[0] ?? ''
    expect(elementsOf(xmp)[0]?.name).toBe('x:xmpmeta')
  }
})

test('the ink of the paper is left bare in print, and so is its ground', async () => {
  const bare: Mark = { kind: 'circle', at: dot.at, radius: 3, fill: { ink: '#FCFAF5' } }
  const page = await firstPage(alone({ ...sheetOf(bare, dot), ground: '#fcfaf5' }))
  const { argsArray } = await page.getOperatorList()
  const inks = argsArray.flat().filter(value => typeof value === 'string' && value.startsWith('#'))
  expect(inks).toEqual(['#ffffff', '#1b1f24'])
})

test('every face is embedded under its own name, with a map to Unicode', async () => {
  const { faceFiles } = await import('../../src/press/fonts/index.ts')
  const faces = Object.keys(faceFiles) as (keyof typeof faceFiles)[]
  const marks = faces.map((face, index) =>
    words(fonts, face, { x: 10, y: 10 + index * 8 }, { type: { face, size: 10 } }),
  )
  const bytes = await toPdf(alone(sheetOf(...marks)), fonts)
  const file = Buffer.from(bytes).toString('latin1')
  const names = Array.from(file.matchAll(/\/FontName \/[A-Z]{6}\+([A-Za-z-]+)/g), ([, name]) => name)
  expect(new Set(names).size).toBe(faces.length)
  expect(file.match(/\/ToUnicode \d+ 0 R/g)).toHaveLength(faces.length)
  expect((await wordsOf(await (await readPdf(bytes)).getPage(1))).join('|')).toBe(faces.join('|'))
})

test('pdfkit is the version whose habits this press allows for', () => {
  const { version } = JSON.parse(
    readFileSync(new URL('../../node_modules/pdfkit/package.json', import.meta.url), 'utf8'),
  )
  expect(version).toBe('0.20.2')
})

const dot = { kind: 'circle', at: { x: 20, y: 20 }, radius: 1, fill: { ink } } as const
