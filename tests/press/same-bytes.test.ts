import { execFile } from 'node:child_process'
import { createHash } from 'node:crypto'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { expect, test, vi } from 'vitest'
import { toPdf } from '../../src/press/pdf/index.ts'
import { toSvg } from '../../src/press/svg/index.ts'
import { freshFonts, installedFonts } from '../support/fonts.ts'
import { alone, everyMark, taggedBook } from '../support/press-scene.ts'

// The first use of a face parses it, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const fonts = await installedFonts()
const digest = (bytes: string | Uint8Array) => createHash('sha256').update(bytes).digest('hex')

test('the same sheet gives the same bytes, also when drawn among others', async () => {
  const alongside = await Promise.all([
    toSvg(everyMark(fonts), fonts),
    toPdf(taggedBook(fonts), fonts),
    toSvg({ ...everyMark(fonts), marks: [] }, fonts),
    toPdf(alone(everyMark(fonts)), fonts),
    toSvg(everyMark(fonts), fonts),
    toPdf(taggedBook(fonts), fonts),
  ])
  const [svg, pdf, , , svgAgain, pdfAgain] = alongside.map(digest)
  expect([svgAgain, pdfAgain]).toEqual([svg, pdf])
})

test('another time zone and another language of the machine change no byte', {
  timeout: 60_000,
}, async () => {
  const here = [digest(await toSvg(everyMark(fonts), fonts)), digest(await toPdf(taggedBook(fonts), fonts))]
  const program = fileURLToPath(new URL('../support/print-digests.ts', import.meta.url))
  const elsewhere = { ...process.env, TZ: 'Pacific/Chatham', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' }
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', program], {
    env: elsewhere,
  })
  expect(stdout.trim().split('\n')).toEqual(here)
})

test('a document has the same bytes whichever documents of the same faces were made before it', async () => {
  const [fresh, others] = [await freshFonts(), await freshFonts()]
  await toPdf(alone(everyMark(others)), others)
  expect(digest(await toPdf(taggedBook(others), others))).toBe(digest(await toPdf(taggedBook(fresh), fresh)))
})
