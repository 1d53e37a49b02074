import type { OutlineEntry } from '../../sheets/index.ts'
import { printable } from '../words.ts'
import type { OutlineItem, Pdf } from './pdfkit.ts'

/** Bookmarks, nested and closed, each leading to its page. */
export function addOutline(pdf: Pdf, entries: readonly OutlineEntry[]): void {
  addEntries(pdf.outline, entries)
}

function addEntries(parent: OutlineItem, entries: readonly OutlineEntry[]): void {
  for (const { title, page, children } of entries) {
    const item = parent.addItem(printable(title), { pageNumber: page, fit: true })
    addEntries(item, children)
    // The file format asks for the count wherever there are children, less than nought while they are folded.
    if (children.length > 0) item.outlineData.Count = -children.length
  }
}
