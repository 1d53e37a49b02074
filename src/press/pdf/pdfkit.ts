import type { ParsedFont } from '../fonts/index.ts'

/**
 * As much of pdfkit as is used here, written out because its published types lag behind it: they know
 * neither PDF/UA, nor a figure's bounds, nor marked content that is added to an element by hand.
 */
export interface Pdf {
  readonly page: { readonly dictionary: Reference; content: Reference; readonly resources: Reference }
  readonly outline: OutlineItem
  readonly _root: Reference
  addPage(options: { size: readonly [number, number]; margin: 0 }): Pdf
  addNamedDestination(name: string, fit: 'Fit'): void
  registerFont(name: string, font: ParsedFont): Pdf
  font(name: string): Pdf
  fontSize(size: number): Pdf
  text(words: string, x: number, y: number, options: TextOptions): Pdf
  save(): Pdf
  restore(): Pdf
  transform(a: number, b: number, c: number, d: number, e: number, f: number): Pdf
  moveTo(x: number, y: number): Pdf
  lineTo(x: number, y: number): Pdf
  bezierCurveTo(a: number, b: number, c: number, d: number, x: number, y: number): Pdf
  circle(x: number, y: number, radius: number): Pdf
  closePath(): Pdf
  clip(): Pdf
  fill(): Pdf
  stroke(): Pdf
  fillAndStroke(): Pdf
  fillColor(ink: string): Pdf
  strokeColor(ink: string): Pdf
  fillOpacity(opacity: number): Pdf
  strokeOpacity(opacity: number): Pdf
  lineWidth(width: number): Pdf
  lineCap(cap: string): Pdf
  lineJoin(join: string): Pdf
  addContent(operators: string): Pdf
  markContent(tag: 'Artifact', options?: object): Pdf
  markStructureContent(tag: string): Content
  endMarkedContent(): Pdf
  struct(role: string, options?: object): Element
  addStructure(element: Element): Pdf
  goTo(x: number, y: number, width: number, height: number, name: string, options: object): Pdf
  ref(data: object): Reference
  on(event: 'data', hear: (chunk: Uint8Array) => void): void
  on(event: 'end', hear: () => void): void
  on(event: 'error', hear: (error: Error) => void): void
  end(): void
}

export interface Reference {
  readonly data: Record<string, unknown>
  end(): void
}

export interface Element {
  readonly dictionary: Reference
  add(child: Element | Content): Element
  end(): void
}

export interface Content {
  readonly refs: unknown
}

export interface OutlineItem {
  readonly outlineData: Record<string, unknown>
  addItem(title: string, options: { pageNumber: number; fit: true }): OutlineItem
}

export interface TextOptions {
  readonly lineBreak: false
  readonly baseline: 'alphabetic'
  readonly characterSpacing: number
  readonly features: unknown
}
