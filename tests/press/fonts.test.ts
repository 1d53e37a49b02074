import { readFileSync } from 'node:fs'
import { create, type Font } from 'fontkit'
import { expect, test, vi } from 'vitest'
import { faceFiles, loadFonts, missingGlyphs } from '../../src/press/fonts/index.ts'
import type { Face, Typeface } from '../../src/sheets/index.ts'
import { installedFonts } from '../support/fonts.ts'
import { alone, everyMark, tagged, words } from '../support/press-scene.ts'

// The first use of a face parses it, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const fonts = await installedFonts()
const faces = Object.keys(faceFiles) as Face[]
const millimetresPerPoint = 25.4 / 72

function opened(face: Face): Font {
  const file = new URL(`../../node_modules/${faceFiles[face].path}`, import.meta.url)
  return create(readFileSync(file)) as Font
}

// Words such as sheets set: kerned pairs across spaces, ligatures, figures, fractions, measures, ships' letters.
const usual = [
  'Fore upper topsail clewline, port',
  'To Yard, V. AVA “Tye” f’c’sle',
  'office waffle fjord affix',
  '41′ 6″ ½ 12.40 m 3 × 24 1:200',
  'LIMA 4.10 kN, 71 lines; 163 T. W. A. Y',
  'Ærøskøbing Łódź Ñandú Þór',
  'A “V” – W… (T) f) 11 71 7.7',
]

test.each(faces)('the ruler gives %s the width the font itself gives the whole of the words', face => {
  const font = opened(face)
  for (const text of usual) {
    for (const tabular of [false, true]) {
      const features = tabular ? { tnum: true, lnum: true } : {}
      const whole = font.layout(fonts.settable(text, face), features as unknown as string[]).advanceWidth
      const type: Typeface = { face, size: 10, tabular }
      expect(fonts.ruler(text, type), text).toBeCloseTo(
        (whole / font.unitsPerEm) * 10 * millimetresPerPoint,
        9,
      )
    }
  }
})

test('kerning is in the width, and size and tracking change it as they should', () => {
  const type: Typeface = { face: 'Spectral', size: 10 }
  const apart = fonts.ruler('A', type) + fonts.ruler('V', type)
  expect(fonts.ruler('AV', type)).toBeLessThan(apart - 0.1)
  expect(fonts.ruler('AV', { ...type, size: 20 })).toBeCloseTo(2 * fonts.ruler('AV', type), 9)
  // After every letter, the last too: two gaps of a tenth of ten points.
  const gaps = 2 * 0.1 * 10 * millimetresPerPoint
  expect(fonts.ruler('AV', { ...type, tracking: 0.1 })).toBeCloseTo(fonts.ruler('AV', type) + gaps, 9)
  expect(fonts.ruler('', type)).toBe(0)
})

test('letters set apart are not joined: a gap for each letter of "ffi"', () => {
  const type: Typeface = { face: 'Spectral', size: 10 }
  const font = opened('Spectral')
  const letters = font.layout('ffi', { liga: false } as unknown as string[]).advanceWidth / font.unitsPerEm
  expect(fonts.ruler('ffi', { ...type, tracking: 0.1 })).toBeCloseTo(
    (letters + 0.3) * 10 * millimetresPerPoint,
    9,
  )
})

test('tabular figures are all of one width, in every face', () => {
  for (const face of faces) {
    const widths = Array.from('0123456789', figure => fonts.ruler(figure, { face, size: 10, tabular: true }))
    expect(new Set(widths).size, face).toBe(1)
  }
  const plain = ['1', '0'].map(figure => fonts.ruler(figure, { face: 'Fira Sans Condensed', size: 10 }))
  expect(plain[0]).not.toBe(plain[1])
})

test('what a face lacks is known: no Greek in Spectral, no ideographs in either', () => {
  expect(fonts.covers('λίνο', 'Fira Sans Condensed')).toBe(true)
  expect(fonts.covers('λίνο', 'Spectral')).toBe(false)
  expect(fonts.covers('帆', 'Fira Sans Condensed')).toBe(false)
  expect(fonts.covers('\u0000\u202e\ufeff', 'Spectral')).toBe(true)
})

test('a thin space, a hyphen that holds, a prime: their near twins stand for them where they lack', () => {
  expect(fonts.covers('a\u202fb\u2011c', 'Spectral')).toBe(true)
  expect(fonts.settable('a\u202fb\u2011c', 'Spectral')).toBe('a b-c')
  expect(fonts.settable('41′ 6″', 'Spectral')).toBe('41′ 6″')
  expect(fonts.covers('41′ 6″', 'Fira Sans Condensed')).toBe(true)
  expect(fonts.settable('41′ 6″', 'Fira Sans Condensed')).toBe(`41' 6"`)
  expect(fonts.spelled('帆′', 'Fira Sans Condensed')).toBe("帆'")
})

test('a box stands for each character a face lacks, and is measured as a box', () => {
  expect(fonts.settable('λ帆x', 'Spectral')).toBe('□□x')
  const type: Typeface = { face: 'Spectral', size: 10 }
  expect(fonts.ruler('帆', type)).toBe(fonts.ruler('□', type))
  expect(fonts.settable('帆', 'Fira Sans Condensed')).toBe('◊')
})

test('the words a document can’t show whole are listed once, with what is missing', () => {
  const type: Typeface = { face: 'Spectral', size: 10 }
  const name = words(fonts, 'Λ-sail 帆 帆', { x: 10, y: 10 }, { type })
  const page = {
    ...everyMark(fonts),
    marks: [tagged({ role: 'P' }, name), name, words(fonts, 'sail', name.at)],
  }
  expect(missingGlyphs(alone(page), fonts.covers)).toEqual([
    { face: 'Spectral', words: 'Λ-sail 帆 帆', characters: ['Λ', '帆'] },
  ])
  expect(missingGlyphs(alone(everyMark(fonts)), fonts.covers)).toEqual([])
})

test.each(faces)(
  'a browser’s subset of %s shapes words into the same outlines at the same places',
  async face => {
    const whole = opened(face)
    for (const text of usual.map(line => fonts.settable(line, face))) {
      const small = create(Buffer.from(await fonts.forBrowser(face, new Set(text)))) as Font
      for (const features of [{}, { tnum: true, lnum: true }, { liga: false, clig: false }]) {
        const [a, b] = [whole, small].map(font => font.layout(text, features as unknown as string[]))
        const placed = (run: typeof a) =>
          run?.positions.map(({ xAdvance, xOffset, yOffset }) => [xAdvance, xOffset, yOffset])
        const drawn = (run: typeof a) => run?.glyphs.map(glyph => glyph.path.toSVG())
        expect(placed(b), text).toEqual(placed(a))
        expect(drawn(b), text).toEqual(drawn(a))
      }
    }
  },
)

test('a subset is small, and the same each time', async () => {
  const characters = new Set('Fore upper topsail clewline, port 0123456789')
  const once = await fonts.forBrowser('Spectral', characters)
  expect(once.length).toBeLessThan(9_000)
  expect(Buffer.from(await fonts.forBrowser('Spectral', new Set([...characters].reverse())))).toEqual(
    Buffer.from(once),
  )
})

test('fonts are read through the path handed in, and a failing read is told', async () => {
  await expect(loadFonts(path => Promise.reject(new Error(`no ${path}`)))).rejects.toThrow(
    /no .*\.(ttf|wasm)/,
  )
})
