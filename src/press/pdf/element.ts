import type { Tag } from '../../sheets/index.ts'
import { printable } from '../words.ts'
import type { Element } from './pdfkit.ts'

/** A box on the page in points from its upper left corner: left, top, right, bottom. */
export type PageBox = readonly [number, number, number, number]

/** What pdfkit is told of an element of the structure. */
export function elementOptions(tag: Tag, box: () => PageBox | undefined): object {
  const { role, alt, actual, expansion, scope } = tag
  const bbox = role === 'Figure' ? box() : undefined
  return {
    ...(alt === undefined ? {} : { alt: printable(alt) }),
    ...(actual === undefined ? {} : { actual: printable(actual) }),
    ...(expansion === undefined ? {} : { expanded: printable(expansion) }),
    ...(scope === undefined ? {} : { scope }),
    ...(bbox === undefined ? {} : { bbox }),
  }
}

/** Adds what pdfkit has no word for: a cell that spans columns. */
export function finishAttributes({ dictionary }: Element, { columns }: Tag): void {
  if (columns === undefined || columns === 1) return
  dictionary.data.A = { ...(dictionary.data.A as object | undefined), O: 'Table', ColSpan: columns }
}
