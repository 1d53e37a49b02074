import { expect, test, vi } from 'vitest'
import { toPdf } from '../../src/press/pdf/index.ts'
import { toSvg } from '../../src/press/svg/index.ts'
import type { Sheet } from '../../src/sheets/index.ts'
import { installedFonts } from '../support/fonts.ts'
import { type Drawn, drawnInPdf, drawnInSvg } from '../support/geometry.ts'
import { readPdf } from '../support/pdf.ts'
import { alone, everyMark } from '../support/press-scene.ts'

// The first use of a face parses it, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const fonts = await installedFonts()

async function bothOf(sheet: Sheet) {
  const pdf = await readPdf(await toPdf(alone(sheet), fonts))
  return {
    inSvg: drawnInSvg(await toSvg(sheet, fonts)),
    inPdf: await drawnInPdf(await pdf.getPage(1)),
  }
}

test('SVG and PDF draw one sheet at the same places, to a hundredth of a millimetre', async () => {
  const scene = everyMark(fonts)
  const { inSvg, inPdf } = await bothOf({ ...scene, marks: scene.marks.map(withoutHalo) })
  expect(inSvg).toHaveLength(12)
  expect(inPdf.map(named)).toEqual(inSvg.map(named))
  inSvg.forEach((drawn, index) => {
    expect(apart(drawn, inPdf[index] as Drawn), named(drawn)).toBeLessThan(0.01)
  })
})

test('the page itself is as large in both', async () => {
  const scene = everyMark(fonts)
  const page = await (await readPdf(await toPdf(alone(scene), fonts))).getPage(1)
  const [, , width = 0, height = 0] = page.view
  expect(await toSvg(scene, fonts)).toContain('width="148mm" height="105mm" viewBox="0 0 148 105"')
  expect([(width * 25.4) / 72, (height * 25.4) / 72]).toEqual([
    expect.closeTo(148, 3),
    expect.closeTo(105, 3),
  ])
})

test('a halo lies under its words: in the PDF as outlines, so that the words are there once', async () => {
  const scene = everyMark(fonts)
  const marks = scene.marks.filter(mark => mark.kind === 'text' && mark.halo)
  const { inSvg, inPdf } = await bothOf({ ...scene, marks })
  expect(inSvg.map(named)).toEqual(['Fore upper topsail'])
  expect(inPdf.map(named)).toEqual(['shape', 'Fore upper topsail'])
  const [outlines] = inPdf
  const letters = outlines?.kind === 'shape' ? outlines.points : []
  // Upright words from 112,92: the letters stand between there and their width above, left of the baseline.
  const { width } = marks[0] as { width: number }
  expect(Math.max(...letters.map(([, y]) => y))).toBeLessThanOrEqual(92)
  expect(Math.min(...letters.map(([, y]) => y))).toBeGreaterThan(92 - width)
  expect(Math.min(...letters.map(([x]) => x))).toBeGreaterThan(112 - 3)
  expect(Math.max(...letters.map(([x]) => x))).toBeLessThan(112 + 1)
})

function withoutHalo(mark: Sheet['marks'][number]): Sheet['marks'][number] {
  if (mark.kind !== 'text') return mark
  const { halo, ...rest } = mark
  return rest
}

function named(drawn: Drawn): string {
  return drawn.kind === 'words' ? drawn.words : 'shape'
}

function apart(one: Drawn, other: Drawn): number {
  const [a, b] = [flat(one), flat(other)]
  if (a.length !== b.length) return Number.POSITIVE_INFINITY
  return Math.max(...a.map((value, index) => Math.abs(value - (b[index] as number))))
}

function flat(drawn: Drawn): readonly number[] {
  return drawn.kind === 'shape' ? drawn.points.flat() : [...drawn.from, ...drawn.along, drawn.width]
}
