import fc from 'fast-check'
import { expect, test, vi } from 'vitest'
import { toSvg } from '../../src/press/svg/index.ts'
import type { Mark, Sheet } from '../../src/sheets/index.ts'
import { installedFonts } from '../support/fonts.ts'
import { golden } from '../support/golden.ts'
import { everyMark, ink, words } from '../support/press-scene.ts'
import { elementsOf } from '../support/xml.ts'

// The first use of a face parses it, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const fonts = await installedFonts()

function sheetOf(...marks: readonly Mark[]): Sheet {
  const size = { width: 100, height: 50 }
  return { id: 'sheet', title: 'A sheet', description: 'Some marks.', ...size, ground: undefined, marks }
}

const dot = (id: string): Mark => ({ kind: 'circle', id, at: { x: 1, y: 1 }, radius: 1, fill: { ink } })

test('every kind of mark is drawn as the golden file has it', async () => {
  const svg = await toSvg(everyMark(fonts), fonts)
  const before = golden('press/every-mark.svg', svg)
  expect(withoutFonts(svg)).toBe(withoutFonts(before))
  expect(svg === before, 'the fonts in it').toBe(true)
})

test('the root tells its size in millimetres, its language, its role, its title and what it shows', async () => {
  const [root, title, description] = elementsOf(await toSvg(sheetOf(), fonts, { language: 'nb' }))
  expect(root?.attributes).toMatchObject({
    width: '100mm',
    height: '50mm',
    viewBox: '0 0 100 50',
    role: 'graphics-document',
    lang: 'nb',
  })
  expect([title?.path, title?.text]).toEqual(['svg/title', 'A sheet'])
  expect([description?.path, description?.text]).toEqual(['svg/desc', 'Some marks.'])
})

test("a group's address is its id, its name its title", async () => {
  const pin: Mark = {
    kind: 'group',
    id: 'pin.FR-P.21',
    title: 'fore rail, port, pin 21',
    marks: [dot('dot')],
  }
  const elements = elementsOf(await toSvg(sheetOf(pin), fonts))
  expect(elements.find(({ name }) => name === 'g')?.attributes.id).toBe('pin.FR-P.21')
  expect(elements.find(({ path }) => path === 'svg/g/title')?.text).toBe('fore rail, port, pin 21')
})

test('ids are valid, and each is there once, whatever the addresses are', async () => {
  const addresses = [
    'line.fore.course.tack.port',
    'a b',
    'a_b',
    'a_b',
    '',
    '7',
    'ny-rå',
    '<"&>',
    '__proto__',
    '😀',
  ]
  const svg = await toSvg(sheetOf(...addresses.map(dot)), fonts)
  const ids = elementsOf(svg).flatMap(({ attributes }) =>
    attributes.id === undefined ? [] : [attributes.id],
  )
  expect(ids).toEqual([
    ...['line.fore.course.tack.port', 'a_b', 'a_b..2', 'a_b..3'],
    ...['_', '_7', 'ny-rå', '____', '__proto__', '_..2'],
  ])
})

test('any words at all leave the file well-formed, and are all there', async () => {
  const nasty = [
    '<script>alert(1)</script>',
    ']]> & &amp; "quoted" \'too\'',
    '\u202egnol\u202c\u0000\u0007',
    'tab\tand\nline',
    'half \ud800 a pair',
    '\ufffe\uffff\u2028',
    '--><!--',
    '😀',
    '  two  spaces  ',
  ]
  const svg = await toSvg(
    {
      ...sheetOf(...nasty.map(text => words(fonts, text, { x: 5, y: 5 }, { id: text }))),
      title: nasty.join(),
      description: nasty.join(),
    },
    fonts,
  )
  const texts = elementsOf(svg).filter(({ name }) => name === 'text')
  expect(texts.map(({ text }) => text)).toEqual([
    '<script>alert(1)</script>',
    ']]> & &amp; "quoted" \'too\'',
    'gnol',
    'tab and line',
    'half \ufffd a pair',
    ' ',
    '--><!--',
    '😀',
    '  two  spaces  ',
  ])
  expect(elementsOf(svg).some(({ name }) => name === 'script')).toBe(false)
})

test('words of any characters give well-formed XML', async () => {
  const anything = fc.array(fc.string({ unit: 'binary' }), { minLength: 10, maxLength: 20 })
  await fc.assert(
    fc.asyncProperty(anything, async texts => {
      const marks = texts.map(
        (text): Mark => ({
          kind: 'group',
          id: text,
          title: text,
          marks: [words(fonts, text, { x: 1, y: 9 })],
        }),
      )
      const groups = elementsOf(await toSvg(sheetOf(...marks), fonts)).filter(({ name }) => name === 'g')
      expect(groups).toHaveLength(texts.length)
    }),
    { numRuns: 4, seed: 1 },
  )
})

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a coordinate of %s is refused', async x => {
  await expect(toSvg(sheetOf({ kind: 'circle', at: { x, y: 1 }, radius: 1 }), fonts)).rejects.toThrow(
    'no number',
  )
})

test('an ink that is no colour, or a width not measured with these fonts, is refused', async () => {
  const badInk = sheetOf({ kind: 'circle', at: { x: 1, y: 1 }, radius: 1, fill: { ink: 'red" onload="' } })
  await expect(toSvg(badInk, fonts)).rejects.toThrow('no colour')
  const badWidth = sheetOf({ ...words(fonts, 'Haul away', { x: 1, y: 1 }), width: 3 })
  await expect(toSvg(badWidth, fonts)).rejects.toThrow('"Haul away" is laid out as 3 mm wide')
})

test('numbers are rounded to a thousandth, and none is minus nought', async () => {
  const svg = await toSvg(
    sheetOf({
      kind: 'path',
      steps: [['M', -0.0001, 1 / 3], ['L', 2.00049, 1e-9], ['Z']],
      pen: { ink, width: 0.1 + 0.2 },
    }),
    fonts,
  )
  expect(svg).toContain('d="M0 0.333L2 0Z"')
  expect(svg).toContain('stroke-width="0.3"')
})

test('nothing but presentation attributes: no style, no class, no variable, no script', async () => {
  const allowed =
    /^(id|role|lang|xml:lang|xmlns|xmlns:xlink|version|width|height|viewBox|points|d|cx|cy|r|x|y|transform|textLength|lengthAdjust|xml:space|aria-hidden|opacity|clip-path|text-rendering|fill|fill-opacity|stroke|stroke-(width|dasharray|linecap|linejoin|opacity)|font-(family|size|style|weight|variant)|letter-spacing)$/
  for (const { name, attributes } of elementsOf(await toSvg(everyMark(fonts), fonts))) {
    expect(name).toMatch(/^(svg|title|desc|style|rect|polygon|polyline|path|circle|g|clipPath|text)$/)
    for (const key of Object.keys(attributes)) expect(key).toMatch(allowed)
  }
})

test('the fonts in use are in the file, and no others, and nothing is fetched', async () => {
  const svg = await toSvg(everyMark(fonts), fonts)
  const [style] = elementsOf(svg).filter(({ name }) => name === 'style')
  const families = Array.from(
    style?.text.matchAll(/font-family:'([^']+)';font-weight:(\d+);font-style:(\w+)/g) ?? [],
  )
  expect(families.map(([, ...parts]) => parts.join(' '))).toEqual([
    'Fira Sans Condensed 400 normal',
    'Fira Sans Condensed 600 normal',
    'Spectral 400 italic',
    'Spectral 500 italic',
    'Spectral SC 500 normal',
  ])
  expect(withoutFonts(svg).replaceAll('http://www.w3.org/', '')).not.toMatch(/https?:|\/\//)
  expect(svg.length).toBeLessThan(45_000)
})

test('marks that leave no ink are not outlined by a printer’s thinnest line', async () => {
  const svg = await toSvg(
    sheetOf({ kind: 'circle', at: { x: 1, y: 1 }, radius: 1, pen: { ink, width: 0 } }),
    fonts,
  )
  expect(svg).not.toContain('stroke=')
})

// Letters in the hundreds of thousands help nobody who reads a failing test.
function withoutFonts(svg: string): string {
  return svg.replaceAll(/base64,[A-Za-z0-9+/=]+/g, 'base64,')
}
