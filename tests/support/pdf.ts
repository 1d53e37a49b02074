import { getDocument, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A PDF as another program reads it. */
export function readPdf(bytes: Uint8Array) {
  return getDocument({ data: Uint8Array.from(bytes), useSystemFonts: false, verbosity: 0 }).promise
}

/** An element of the structure tree, or a stretch of content in it. */
export interface StructNode {
  readonly role?: string
  readonly alt?: string
  readonly type?: string
  readonly id?: string
  readonly children?: readonly StructNode[]
}

/** The structure of a page on one line: 'P(0 Span"FR-P 21"(1) 2)', the numbers being its stretches of content. */
export async function structureOf(page: PDFPageProxy): Promise<string> {
  return written((await page.getStructTree()) as StructNode)
}

function written({ role, alt, type, id, children = [] }: StructNode): string {
  if (type === 'content') return `${id?.split('_mc')[1]}`
  if (type === 'object') return 'annotation'
  return `${role}${alt === undefined ? '' : `"${alt}"`}(${children.map(written).join(' ')})`
}

/** The words of a page in the order in which they are written. */
export async function wordsOf(page: PDFPageProxy): Promise<readonly string[]> {
  const { items } = await page.getTextContent()
  return items.flatMap(item => ('str' in item && item.str.trim() !== '' ? [item.str] : []))
}
