import { printable } from '../words.ts'
import type { Pdf } from './pdfkit.ts'

/** Printed page numbers, so that a reader's "page 12" is the paper's. Each page has its own label. */
export function labelPages(pdf: Pdf, labels: readonly string[] | undefined): void {
  if (!labels) return
  const numbers = labels.flatMap((label, page) => [page, { P: new String(printable(label)) }])
  pdf._root.data.PageLabels = { Nums: numbers }
}
