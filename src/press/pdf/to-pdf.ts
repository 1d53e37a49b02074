import type { Face, PaperDocument, Sheet, Tag } from '../../sheets/index.ts'
import type { EmbeddedFace, Fonts } from '../fonts/index.ts'
import { hex } from '../ink.ts'
import { once } from '../once.ts'
import { textMarks } from '../text-marks.ts'
import { drawMark } from './draw-mark.ts'
import { openPdf } from './open-pdf.ts'
import { addOutline } from './outline.ts'
import { labelPages } from './page-labels.ts'
import { pointsPerMillimetre } from './page-scale.ts'
import type { Pdf } from './pdfkit.ts'
import type { Press, SetFace } from './press.ts'
import { runningOn } from './running-on.ts'
import { structure } from './structure.ts'

/** A document as a tagged PDF 1.7: its pages in order, its outline, its page labels. */
export async function toPdf(document: PaperDocument, fonts: Fonts): Promise<Uint8Array> {
  const pdfFonts = await fonts.forPdf()
  const { pdf, bytes } = await openPdf(document, pdfFonts.pack)
  const texts = document.pages.flatMap(page => [...textMarks(page.marks)])
  const faces = registerFaces(pdf, pdfFonts.embedded(texts))
  const tags = structure(pdf)
  const destinations = new Map(document.pages.map((page, index) => [page.id, destinationName(index)]))
  document.pages.forEach((page, index) => {
    addPage(pdf, page)
    pdf.addNamedDestination(destinationName(index), 'Fit')
    const own = { runningOn: runningOn(page.marks), ink: printInk(page), origin: { x: 0, y: 0 } }
    drawPage({ pdf, fonts, pdfFonts, faces, tags, destinations, ...own }, page)
    tags.pause()
  })
  addOutline(pdf, document.outline)
  labelPages(pdf, document.pageLabels)
  tags.end()
  pdf.end()
  return bytes
}

// pdfkit learns of a glyph when it sets words itself; here it is told of all that the subset holds.
function registerFaces(pdf: Pdf, faces: ReadonlyMap<Face, EmbeddedFace>): ReadonlyMap<Face, SetFace> {
  const registered = [...faces].map(([face, { font, widths, meanings, set }]) => {
    const { _font } = pdf.registerFont(face, font).font(face)
    _font.widths = widths
    _font.unicode = meanings
    return [face, { font: _font, set }] as const
  })
  return new Map(registered)
}

// Each page is scaled once to millimetres, so that its numbers are those of the sheet and of the SVG; and its
// corners are mitred as far as an SVG's are, where PDF by itself goes further.
function addPage(pdf: Pdf, { width, height }: Sheet): void {
  const scale = pointsPerMillimetre
  pdf.addPage({ size: [width * scale, height * scale], margin: 0 })
  pdf.transform(scale, 0, 0, scale, 0, 0)
  pdf.miterLimit(4)
}

function drawPage(press: Press, page: Sheet): void {
  if (page.marks.some(hasTag)) {
    for (const mark of page.marks) drawMark(press, mark)
  } else {
    const tag: Tag = { role: 'Figure', alt: page.description }
    drawMark(press, { kind: 'group', tag, marks: page.marks })
  }
}

function hasTag(mark: Sheet['marks'][number]): boolean {
  return mark.kind === 'group' && (mark.tag !== undefined || mark.marks.some(hasTag))
}

function printInk({ ground }: Sheet): (ink: string) => string {
  const paper = ground && hex(ground)
  return once(ink => (hex(ink) === paper ? '1 1 1' : shares(hex(ink))))
}

// Four digits tell apart all that two letters of a colour can.
function shares(ink: string): string {
  const share = (from: number) =>
    Math.round((Number.parseInt(ink.slice(from, from + 2), 16) / 255) * 1e4) / 1e4
  return `${share(1)} ${share(3)} ${share(5)}`
}

// Padded, because pdfkit sorts names as the machine's language would, and readers search them as bytes.
function destinationName(page: number): string {
  return `page-${String(page).padStart(6, '0')}`
}
