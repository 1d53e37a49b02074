import type { PaperDocument } from '../../sheets/index.ts'
import type { Pack } from '../fonts/index.ts'
import { printable } from '../words.ts'
import { byteString } from './byte-string.ts'
import { metadata } from './metadata.ts'
import type { Pdf } from './pdfkit.ts'

/** An empty document, and the bytes it will have once it is ended. */
export async function openPdf(
  document: PaperDocument,
  pack: Pack,
): Promise<{ readonly pdf: Pdf; readonly bytes: Promise<Uint8Array> }> {
  const { default: PDFDocument } = await import('pdfkit')
  const pdf = new PDFDocument(options(document) as object) as unknown as Pdf
  const bytes = gather(pdf)
  packAlike(pdf, pack)
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
 * the same rig must give the same bytes on every machine and in a browser. A stream is joined once, where pdfkit
 * would make bytes of every stroke.
 */
function packAlike(pdf: Pdf, pack: Pack): void {
  const make = pdf.ref.bind(pdf)
  pdf.ref = data => {
    const reference = make(data)
    const stream = byteString()
    reference.write = stream.write
    const end = reference.end.bind(reference)
    reference.end = chunk => {
      if (chunk) stream.write(chunk)
      if (stream.length > 0) {
        const isPacked = reference.data.Type !== 'Metadata'
        reference.buffer = [isPacked ? pack(stream.bytes()) : stream.bytes()]
        // pdfkit puts the right length in this place.
        reference.data.Length = 0
        if (isPacked) reference.data.Filter = 'FlateDecode'
      }
      end()
    }
    return reference
  }
}

/** Gathers what pdfkit writes and lets it go as one piece, where its stream would pass on every line by itself. */
function gather(pdf: Pdf): Promise<Uint8Array> {
  const head = pdf._offset
  const body = byteString()
  pdf._write = piece => {
    body.write(piece)
    pdf._offset = head + body.length
  }
  const push = pdf.push.bind(pdf)
  pdf.push = chunk => {
    if (chunk === null) push(body.bytes())
    return push(chunk)
  }
  return new Promise((resolve, reject) => {
    const file = byteString()
    pdf.on('data', file.write)
    pdf.on('error', reject)
    pdf.on('end', () => resolve(file.bytes()))
  })
}
