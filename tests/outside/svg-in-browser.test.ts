import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { barquePapers } from './barque.ts'

let folder = ''
let browser: Browser
beforeAll(async () => {
  const found = spawnSync('which', ['chromium'], { encoding: 'utf8' }).stdout.trim()
  if (found === '') throw new Error('Chromium is missing')
  browser = await chromium.launch({
    executablePath: found,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-sync',
      '--no-first-run',
    ],
  })
  folder = await barquePapers('draw', 'chart')
})
afterAll(() => browser?.close())

interface Facts {
  readonly root: string
  readonly title: string
  readonly fonts: readonly string[]
  readonly texts: number
}

// Run in the browser, whose globals this program does not know: hence as text.
const tellFacts = `({
  root: document.documentElement.nodeName,
  title: document.querySelector('title').textContent,
  fonts: [...document.fonts].map(face => face.status),
  texts: document.querySelectorAll('text').length,
})`

/** The share of a picture that is darker than half grey. */
const tellInked = (png: string) => `(async () => {
  const image = await createImageBitmap(new Blob([Uint8Array.from(atob('${png}'), c => c.charCodeAt(0))]))
  const canvas = new OffscreenCanvas(image.width, image.height)
  const drawing = canvas.getContext('2d')
  drawing.drawImage(image, 0, 0)
  const { data } = drawing.getImageData(0, 0, image.width, image.height)
  let dark = 0
  for (let i = 0; i < data.length; i += 4) if (data[i] + data[i + 1] + data[i + 2] < 384) dark++
  return dark / (image.width * image.height)
})()`

/** What a browser makes of an SVG: its picture, what it complains of, what it asks for, and whether its fonts are used. */
async function shown(name: string) {
  const page = await browser.newPage({ viewport: { width: 1600, height: 1150 } })
  const complaints: string[] = []
  const requests: string[] = []
  page.on('console', message => complaints.push(message.text()))
  page.on('pageerror', error => complaints.push(error.message))
  page.on('request', request => requests.push(request.url()))
  const url = pathToFileURL(join(folder, name)).href
  await page.goto(url)
  await page.waitForFunction("document.fonts.status === 'loaded'")
  const facts = await page.evaluate<Facts>(tellFacts)
  const picture = await page.screenshot()
  const inked = await page.evaluate<number>(tellInked(picture.toString('base64')))
  await page.close()
  const others = requests.filter(request => request !== url && !request.startsWith('data:'))
  return { ...facts, complaints, requests: others, inked }
}

describe('an SVG in Chromium', () => {
  it('is drawn with its own fonts, without a complaint or a request', async () => {
    for (const name of ['sail-plan.svg', 'pin-chart.svg']) {
      const { root, title, fonts, texts, complaints, requests, inked } = await shown(name)
      expect(root, name).toBe('svg')
      expect(title, name).toBeTruthy()
      expect(fonts.length, name).toBeGreaterThan(0)
      expect(fonts, name).not.toContain('error')
      expect(fonts, name).toContain('loaded')
      expect(texts, name).toBeGreaterThan(20)
      expect(complaints, name).toEqual([])
      expect(requests, name).toEqual([])
      // Neither blank nor black: lines and letters cover a few hundredths of a plate.
      expect(inked, name).toBeGreaterThan(0.005)
      expect(inked, name).toBeLessThan(0.3)
    }
  })
})
