import { type PaperFamily, paper } from '../imprint.ts'
import type { Group, Mark, PaperDocument, Sheet } from '../sheet.ts'

/**
 * A book as a printer wants it: two pages on each side of a landscape sheet, in the order of a book stapled
 * through its fold. Print both sides, flipped on the short edge, at full size. For reading there is the book
 * itself: here, out of reading order, nothing is tagged and nothing links.
 */
export function imposed(document: PaperDocument, family: PaperFamily): PaperDocument {
  const { pages } = document
  const of = Math.ceil(pages.length / 4) * 4
  const sides = Array.from({ length: of / 4 }, (_, index) => index + 1).flatMap(sheet => [
    [of - 2 * sheet + 2, 2 * sheet - 1] as const,
    [2 * sheet, of - 2 * sheet + 1] as const,
  ])
  return {
    ...document,
    id: `${document.id}-booklet`,
    title: `${document.title}, to be folded and stapled`,
    pages: sides.map(([left, right], index) => side(left, right, index, pages, family)),
    pageLabels: sides.map(([left, right]) => `${left}, ${right}`),
    outline: [],
  }
}

function side(
  left: number,
  right: number,
  index: number,
  pages: readonly Sheet[],
  family: PaperFamily,
): Sheet {
  const sheet = paper[family]
  const [width, height] = [sheet.height, sheet.width]
  const fold = width / 2
  const place = (page: Sheet | undefined, x: (page: Sheet) => number): readonly Mark[] =>
    page ? [{ kind: 'group', marks: page.marks.map(untagged), offset: { x: x(page), y: 0 } }] : []
  return {
    id: `side-${index + 1}`,
    title: `Pages ${left} and ${right}`,
    description: `Pages ${left} and ${right} of the book, side by side for printing; the book itself is a file of its own.`,
    width,
    height,
    ground: undefined,
    marks: [...place(pages[left - 1], page => fold - page.width), ...place(pages[right - 1], () => fold)],
  }
}

function untagged(mark: Mark): Mark {
  if (mark.kind !== 'group') return mark
  const { tag: _tag, goTo: _goTo, ...bare } = mark
  return { ...bare, marks: mark.marks.map(untagged) } satisfies Group
}
