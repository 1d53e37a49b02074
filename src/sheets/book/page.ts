import type { PaperFamily } from '../imprint.ts'
import type { Mark, OutlineEntry } from '../sheet.ts'

/**
 * The part of a page that every page body is drawn in, in millimetres, the same for A5 and half Letter. A body's
 * x runs from 0 at the left of the live area; its y is that of an A5 page, so that design and code agree.
 */
export const live = {
  width: 118,
  top: 10,
  titleBaseline: 28,
  textBottom: 195,
  footBaseline: 202,
  bottom: 203,
} as const

/** Six columns of the page, with gutters between. */
export const grid = { column: 16.5, gutter: 3.8 } as const

/** The left edge of a column of the page's grid, counted from 0. */
export const columnAt = (index: number): number => index * (grid.column + grid.gutter)

/** A left page has its fore-edge to the left; a right page to the right. */
export type Leaf = 'verso' | 'recto'

export interface PageFormat {
  readonly width: number
  readonly height: number
  readonly foreEdge: number
  readonly spine: number
  /** How much lower than on A5 everything stands. */
  readonly drop: number
}

/** The booklet page of each family of papers: half an A4, half a Letter sheet. Both hold the same live area. */
export const formats: Readonly<Record<PaperFamily, PageFormat>> = {
  A4: { width: 148, height: 210, foreEdge: 14.5, spine: 15.5, drop: 0 },
  Letter: { width: 139.7, height: 215.9, foreEdge: 6.2, spine: 15.5, drop: 3 },
}

/** Where the live area's left edge stands on the page. */
export const liveLeft = (format: PageFormat, leaf: Leaf): number =>
  leaf === 'verso' ? format.foreEdge : format.spine

/** Even pages are left pages. */
export const leafOf = (page: number): Leaf => (page % 2 === 0 ? 'verso' : 'recto')

/** What one page holds between head and foot, laid out before the pages are numbered. */
export interface PageBody {
  /** Unique in the book: 'register', or as `orderKey` makes it. Page numbers are found by it. */
  readonly key: string
  /** What else is found on this page, by `lineKey`: the lines of a register, a chart, an order. */
  readonly alsoHolds?: readonly string[]
  /** The page's title, as its H2 and its bookmark say it; for a page that goes on with a title, the same title. */
  readonly title: string
  /** The running head: 'Line register'. Undefined for a page without head and foot (the cover). */
  readonly section: string | undefined
  /** What the page shows, for those who can't see it. */
  readonly description: string
  /** Drawn in live coordinates, in reading order, all real content in tagged groups. */
  readonly marks: readonly Mark[]
  /** The bookmarks that begin on this page, by depth; a page that goes on has none. */
  readonly bookmarks: readonly Bookmark[]
  /** The side of the fold it must stand on. */
  readonly leaf?: Leaf
}

/** A bookmark of a page; those under it may stand on the same or on a later page. */
export interface Bookmark {
  /** 1 for a page's title or a sail, 2 for to set and to douse, 3 for an order. */
  readonly level: 1 | 2 | 3
  readonly title: string
}

/** Bookmarks of the pages, in order, as a tree. A level skipped hangs on the nearest one above it. */
export function outlineOf(pages: readonly PageBody[]): readonly OutlineEntry[] {
  const flat = pages.flatMap((page, index) => page.bookmarks.map(mark => ({ ...mark, page: index })))
  return nested(flat)
}

function nested(flat: readonly (Bookmark & { readonly page: number })[]): readonly OutlineEntry[] {
  const entries: OutlineEntry[] = []
  let at = 0
  while (at < flat.length) {
    const head = flat[at]
    if (!head) break
    let end = at + 1
    while (end < flat.length && (flat[end]?.level ?? 0) > head.level) end++
    entries.push({ title: head.title, page: head.page, children: nested(flat.slice(at + 1, end)) })
    at = end
  }
  return entries
}
