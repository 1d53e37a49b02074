import { millimetresPerPoint, type PaperDocument } from '../../sheets/index.ts'
import type { Fonts } from '../fonts/index.ts'
import { printable } from '../words.ts'
import { drawMark } from './draw-mark.ts'
import { addOutline } from './outline.ts'
import { labelPages } from './page-labels.ts'
import type { Pdf } from './pdfkit.ts'
import { structure } from './structure.ts'

/** A document as a tagged PDF 1.7: its pages in order, its outline, its page labels. */
export async function toPdf(document: PaperDocument, fonts: Fonts): Promise<Uint8Array> {
  const { default: PDFDocument } = await import('pdfkit')
  const pdf = new PDFDocument(options(document) as object) as unknown as Pdf
  const bytes = gather(pdf)
  const tags = structure(pdf)
  const destinations = new Map(document.pages.map((page, index) => [page.id, destinationName(index)]))
  document.pages.forEach((page, index) => {
    pdf.addPage({ size: [points(page.width), points(page.height)], margin: 0 })
    pdf.addNamedDestination(destinationName(index), 'Fit')
    // From here on the page is in millimetres, so that its numbers are those of the sheet and of the SVG.
    pdf.transform(points(1), 0, 0, points(1), 0, 0)
    for (const mark of page.marks) drawMark({ pdf, fonts, tags, destinations }, mark)
    tags.endPage()
  })
  addOutline(pdf, document.outline)
  labelPages(pdf, document.pageLabels)
  tags.end()
  pdf.end()
  return bytes
}

function options({ title, language, subject, date }: PaperDocument): object {
  return {
    font: null,
    autoFirstPage: false,
    tagged: true,
    subset: 'PDF/UA',
    pdfVersion: '1.7',
    lang: language,
    displayTitle: true,
    info: {
      Title: printable(title),
      Subject: printable(subject),
      Creator: 'Crosstree',
      Producer: 'Crosstree',
      // pdfkit would stamp the clock. A rig without a revision carries a date that nobody can take for one.
      CreationDate: new Date(date ? Date.UTC(date.year, date.month - 1, date.day) : 0),
    },
  }
}

function gather(pdf: Pdf): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    pdf.on('data', chunk => chunks.push(chunk))
    pdf.on('error', reject)
    pdf.on('end', () => resolve(joined(chunks)))
  })
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0))
  let at = 0
  for (const chunk of chunks) {
    whole.set(chunk, at)
    at += chunk.length
  }
  return whole
}

// Padded, because pdfkit sorts names as the machine's language would, and readers search them as bytes.
function destinationName(page: number): string {
  return `page-${String(page).padStart(6, '0')}`
}

function points(millimetres: number): number {
  return millimetres / millimetresPerPoint
}
