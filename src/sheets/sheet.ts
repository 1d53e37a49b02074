import type { Typeface } from './typeface.ts'

/**
 * A sheet: everything that stands on one page, at fixed places, in millimetres from the upper left corner,
 * x to the right and y down. No file format is known here, and nothing is left to lay out: so the SVG and
 * the PDF of a sheet cannot disagree.
 */
export interface Sheet {
  /** The file's stem: 'sail-plan', 'pin-chart', 'rail-FR-P'. Within a book, the page's own: 'page-12'. */
  readonly id: string
  readonly title: string
  /**
   * What the sheet shows, in a sentence or two, for those who can't see it. In a tagged document a page that
   * holds no tag at all is one figure, and this is its alternative text.
   */
  readonly description: string
  readonly width: number
  readonly height: number
  /**
   * Colour of the paper on a screen. Print (the PDF) leaves it bare, and what is drawn in this very ink is
   * left bare too: halos, and gaps for lettering. Undefined leaves the paper bare everywhere.
   */
  readonly ground: string | undefined
  readonly marks: readonly Mark[]
}

/** Pages bound in one file. A single sheet is a document of one page. */
export interface PaperDocument {
  /** The file's stem. */
  readonly id: string
  readonly title: string
  /** BCP 47: 'en'. */
  readonly language: string
  readonly subject: string
  readonly pages: readonly Sheet[]
  /** Printed page numbers where they differ from 1, 2, 3 ...: one label a page. */
  readonly pageLabels: readonly string[] | undefined
  readonly outline: readonly OutlineEntry[]
  /** The revision's date, the only date the file may carry; undefined where the rig has none. */
  readonly date: { readonly year: number; readonly month: number; readonly day: number } | undefined
}

export interface OutlineEntry {
  readonly title: string
  /** Index into `pages`. */
  readonly page: number
  readonly children: readonly OutlineEntry[]
}

export interface Point {
  readonly x: number
  readonly y: number
}

export type PathStep =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z']

/** How a line is drawn: width and dashes in millimetres, ink as '#rrggbb'. */
export interface Pen {
  readonly ink: string
  readonly width: number
  readonly dash?: readonly number[]
  readonly cap?: 'butt' | 'round' | 'square'
  readonly join?: 'miter' | 'round' | 'bevel'
  readonly opacity?: number
}

export interface Fill {
  readonly ink: string
  readonly opacity?: number
}

/** What a drawing may do without, in a style that says so. */
export type Detail = 'seam' | 'second seam' | 'ratline' | 'plank' | 'hidden spar'

export type Mark =
  /** A run of straight stretches. */
  | {
      readonly kind: 'line'
      readonly id?: string
      readonly detail?: Detail
      readonly points: readonly Point[]
      readonly closed?: boolean
      readonly pen?: Pen
      readonly fill?: Fill
    }
  | {
      readonly kind: 'path'
      readonly id?: string
      readonly steps: readonly PathStep[]
      readonly pen?: Pen
      readonly fill?: Fill
    }
  | {
      readonly kind: 'circle'
      readonly id?: string
      readonly at: Point
      readonly radius: number
      readonly pen?: Pen
      readonly fill?: Fill
    }
  | TextMark
  | Group

/** Words on one line. `at` is on the baseline, at the start, middle or end of the words. */
export interface TextMark {
  readonly kind: 'text'
  readonly id?: string
  readonly at: Point
  readonly words: string
  readonly type: Typeface
  readonly ink: string
  readonly anchor?: 'start' | 'middle' | 'end'
  /** Degrees, counter-clockwise about `at`: 90 reads upward. */
  readonly turn?: number
  /** Width as the ruler measured it, in mm: filled in by `lettered`, checked against the font by the press. */
  readonly width: number
  /** A gap in what lies behind, as a draughtsman leaves one; half of `width` shows outside the letters. */
  readonly halo?: { readonly width: number; readonly ink: string }
}

/** Marks that stand for one thing. `id` is the thing's address and `title` its name. */
export interface Group {
  readonly kind: 'group'
  readonly id?: string
  readonly detail?: Detail
  readonly title?: string
  readonly marks: readonly Mark[]
  /** The marks, and the clip, are moved by this much: how a finished page is set two-up on a larger sheet. */
  readonly offset?: Point
  /** Only what lies inside is seen. */
  readonly clip?: readonly PathStep[]
  /** The group as a whole shows what lies behind it. It is one thing to read: no tags may stand inside it. */
  readonly opacity?: number
  /** What this group is in the reading order of a tagged document. */
  readonly tag?: Tag
  /** A click leads to this destination: a page's `id` in the same document. Elsewhere it leads nowhere. */
  readonly goTo?: string
}

/**
 * A place in the structure of a tagged document. Marks outside every tag are artifacts (frames, rules,
 * running heads). Tags nest as their groups do; text inside a leaf tag is its content.
 */
export interface Tag {
  readonly role:
    | 'H1'
    | 'H2'
    | 'H3'
    | 'P'
    | 'Sect'
    | 'Div'
    | 'L'
    | 'LI'
    | 'Lbl'
    | 'LBody'
    | 'Table'
    | 'THead'
    | 'TBody'
    | 'TR'
    | 'TH'
    | 'TD'
    | 'Figure'
    | 'Caption'
    | 'Span'
    | 'Link'
    | 'Artifact'
  /** Alternative text: figures and links must have it. */
  readonly alt?: string
  /** What the marks say, where they aren't text or should be read otherwise. */
  readonly actual?: string
  /** An abbreviation in full: "fore rail, port, pin 21". */
  readonly expansion?: string
  readonly scope?: 'Column' | 'Row'
  readonly columns?: number
  /** Parts with the same key on later pages go on with the same element: a table over two pages. */
  readonly key?: string
}
