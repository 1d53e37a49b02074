import { spawnSync } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { beforeAll, describe, expect, it } from 'vitest'
import { barquePapers } from './barque.ts'

let folder = ''
let papers: readonly string[] = []
beforeAll(async () => {
  folder = await barquePapers('all')
  papers = readdirSync(folder).filter(name => name.endsWith('.pdf'))
})

/** What a tool says of a paper. A missing tool, or one that ends badly, is a failure. */
function said(tool: string, ...args: readonly string[]): string {
  const ran = spawnSync(tool, args, { cwd: folder, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 })
  if (ran.error) throw ran.error
  expect(ran.status, `${tool} ${args.join(' ')}: ${ran.stdout}${ran.stderr}`).toBe(0)
  expect(ran.stderr, `${tool} ${args.join(' ')}`).toBe('')
  return ran.stdout
}

/** Booklets are for the printer: out of reading order, nothing in them is tagged. */
const isRead = (name: string) => !name.endsWith('-booklet.pdf')

describe('every PDF of the barque', () => {
  it('is sound to qpdf', () => {
    expect(papers.length).toBeGreaterThan(70)
    for (const name of papers) {
      expect(said('qpdf', '--check', name), name).toContain('No syntax or stream encoding errors found')
    }
  })

  it('carries every font it uses, with what its characters mean', () => {
    for (const name of papers) {
      const [, , ...fonts] = said('pdffonts', name).trimEnd().split('\n')
      expect(fonts.length, name).toBeGreaterThan(0)
      // The columns from the right: object (two numbers), unicode, subset, embedded.
      for (const font of fonts) expect(font, name).toMatch(/ yes +(yes|no) +yes +\d+ +\d+$/)
    }
  })

  it('is tagged, but for the booklets', () => {
    for (const name of papers) {
      expect(said('pdfinfo', name), name).toMatch(isRead(name) ? /^Tagged: +yes$/m : /^Title: /m)
    }
    for (const name of papers.filter(isRead)) {
      expect(said('pdfinfo', '-struct', name), name).toMatch(/^Document/)
    }
  })
})

describe('the structure', () => {
  it('of a plate holds a figure told in words, and that of a strip begins with its heading', () => {
    expect(said('pdfinfo', '-struct', 'sail-plan.pdf')).toMatch(/^ +Figure/m)
    expect(said('pdfinfo', '-struct', 'rail-FR-P.pdf')).toMatch(/^Document\n +H1/)
  })

  it('of a handbook has headings, and tables with their heads', () => {
    const structure = said('pdfinfo', '-struct', 'handbook-foremast.pdf')
    for (const role of ['H1', 'Table', 'TR', 'TH', 'TD', 'Figure']) {
      expect(structure).toMatch(new RegExp(`^ +${role}\\b`, 'm'))
    }
    expect(said('pdfinfo', '-struct-text', 'handbook-foremast.pdf')).toContain('Fore royal')
    expect(said('pdfinfo', '-struct-text', 'rail-FR-P.pdf')).toContain('"FR-P Fore rail')
  })
})

describe('the words of a handbook', () => {
  it('are read by another program: the orders, their lines and pins', () => {
    const words = said('pdftotext', '-layout', 'handbook-foremast.pdf', '-')
    for (const part of ['Harrow Tansy', 'Foremast', 'royal', 'halyard', 'clewline', 'buntline', 'FR-P']) {
      expect(words.toLowerCase()).toContain(part.toLowerCase())
    }
    for (const order of ['set the fore royal', 'douse the fore royal', 'set the fore upper topsail']) {
      expect(words.toLowerCase(), order).toContain(order)
    }
  })
})
