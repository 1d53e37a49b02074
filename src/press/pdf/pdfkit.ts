import type { EmbeddedFace, PdfFont } from '../fonts/index.ts'

/**
 * As much of pdfkit as is used here, written out because its published types lag behind it: they know
 * neither PDF/UA, nor a figure's bounds, nor marked content that is added to an element by hand.
 */
export interface Pdf {
  readonly page: Page
  readonly outline: OutlineItem
  readonly _root: Reference
  subset: string
  _offset: number
  _write: (piece: string | Uint8Array) => void
  push: (chunk: Uint8Array | null) => boolean
  ref: (data: object) => Reference
  _addInfo: () => void
  appendXML(xml: string): void
  addPage(options: { readonly size: readonly [number, number]; readonly margin: 0 }): Pdf
  addNamedDestination(name: string, fit: 'Fit'): void
  registerFont(name: string, font: PdfFont): Pdf
  font(name: string): Pdf
  readonly _font: Font
  save(): Pdf
  restore(): Pdf
  transform(a: number, b: number, c: number, d: number, e: number, f: number): Pdf
  fillOpacity(opacity: number): Pdf
  strokeOpacity(opacity: number): Pdf
  miterLimit(limit: number): Pdf
  addContent(operators: string): Pdf
  markContent(tag: 'Artifact' | 'Span', options: { readonly type?: 'Layout'; readonly actual?: string }): Pdf
  markStructureContent(tag: string): Content
  endMarkedContent(): Pdf
  struct(role: string, options?: object): Element
  addStructure(element: Element): Pdf
  goTo(x: number, y: number, width: number, height: number, name: string, options: object): Pdf
  on(event: 'data', hear: (chunk: Uint8Array) => void): void
  on(event: 'end', hear: () => void): void
  on(event: 'error', hear: (error: Error) => void): void
  end(): void
}

/** A font of the file: what it knows of each glyph of its subset. */
export interface Font {
  readonly id: string
  readonly ref: () => Reference
  widths: EmbeddedFace['widths']
  unicode: EmbeddedFace['meanings']
}

/** A page; its content and resources are objects of the file. */
export interface Page {
  content: Reference
  readonly resources: Reference
  readonly fonts: Record<string, Reference>
  readonly xobjects: Record<string, Reference>
}

/** An object of the file, with a stream if anything is written to it. */
export interface Reference {
  readonly id: number
  readonly data: Record<string, unknown>
  buffer: Uint8Array[]
  write: (chunk: Uint8Array | string) => void
  end(chunk?: Uint8Array | string): void
}

/** An element of the structure. */
export interface Element {
  readonly dictionary: Reference
  add(child: Element | Content): Element
  end(): void
}

/** A stretch of a page that belongs to an element. */
export interface Content {
  readonly refs: readonly object[]
}

/** A bookmark, or the root of them all. */
export interface OutlineItem {
  readonly outlineData: Record<string, unknown>
  addItem(title: string, options: { readonly pageNumber: number; readonly fit: true }): OutlineItem
}
