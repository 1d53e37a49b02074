import type { Group, Mark, Tag } from './sheet.ts'

/** What else a tag may say: alternative text, what the marks say, scope, columns, and the key of a split table. */
export type Tagging = Omit<Tag, 'role'>

/** Marks as one element of the reading order. */
export function tagged(role: Tag['role'], marks: readonly Mark[], more: Tagging = {}): Group {
  return { kind: 'group', marks, tag: { role, ...more } }
}

/** Marks that a reader of tags passes over, within something tagged. */
export const artifact = (marks: readonly Mark[]): Group => tagged('Artifact', marks)

/** A drawing with the words that stand for it. */
export const figure = (alt: string, marks: readonly Mark[]): Group => tagged('Figure', marks, { alt })

/** A cell that heads its column, or its row. */
export const columnHead = (marks: readonly Mark[], more: Tagging = {}): Group =>
  tagged('TH', marks, { scope: 'Column', ...more })
export const rowHead = (marks: readonly Mark[], more: Tagging = {}): Group =>
  tagged('TH', marks, { scope: 'Row', ...more })

/** A link within the book, to the page of this number; plain where the number isn't known yet. */
export function linkTo(page: number | undefined, alt: string, marks: readonly Mark[]): Group {
  if (page === undefined) return tagged('Span', marks)
  return { kind: 'group', marks, tag: { role: 'Link', alt }, goTo: pageId(page) }
}

/** The name by which a page of the book is reached. */
export const pageId = (page: number): string => `page-${page}`
