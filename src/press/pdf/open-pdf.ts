import { zlibSync } from 'fflate'
import type { PaperDocument } from '../../sheets/index.ts'
import { printable } from '../words.ts'
import { metadata } from './metadata.ts'
import type { Pdf, Reference } from './pdfkit.ts'

/** An empty document, and the bytes it will have once it is ended. */
export async function openPdf(
  document: PaperDocument,
): Promise<{ readonly pdf: Pdf; readonly bytes: Promise<Uint8Array> }> {
  const { default: PDFDocument } = await import('pdfkit')
  const pdf = new PDFDocument(options(document) as object) as unknown as Pdf
  const bytes = gather(pdf)
  packAlike(pdf)
  pdf._addInfo = () => pdf.appendXML(metadata(document))
  // As a number it would make pdfkit write a list of glyphs that forgets the parts of composed ones; PDF/UA
  // asks for no such list, and forbids a wrong one.
  pdf.subset = '1'
  return { pdf, bytes }
}

function options({ title, language, subject, date }: PaperDocument): object {
  return {
    font: null,
    autoFirstPage: false,
    compress: false,
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

/**
 * Packs streams with our own deflate: that of Node differs from one version and processor to the next, and
 * the same rig must give the same bytes on every machine and in a browser.
 */
function packAlike(pdf: Pdf): void {
  const make = pdf.ref.bind(pdf)
  pdf.ref = data => {
    const reference = make(data)
    const end = reference.end.bind(reference)
    reference.end = chunk => {
      if (chunk) reference.write(chunk)
      if (reference.buffer.length > 0 && reference.data.Type !== 'Metadata') pack(reference)
      end()
    }
    return reference
  }
}

function pack(reference: Reference): void {
  reference.buffer = [zlibSync(joined(reference.buffer), { level: 6 })]
  reference.data.Filter = 'FlateDecode'
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
