import type { Tag } from '../../sheets/index.ts'
import { printable } from '../words.ts'
import type { Content, Element, Pdf } from './pdfkit.ts'

/** Rectangle on the page, in points from its upper left corner: left, top, right, bottom. */
export type Bounds = readonly [number, number, number, number]

/** Writes the structure of a tagged document while its marks are drawn. */
export interface Structure {
  /** Draws something at its place in the reading order: in the innermost open tag, or as an artifact. */
  draw(paint: () => void): void
  /** Opens a tag, does `inside`, closes it. `bounds` are a figure's. */
  within(tag: Tag, bounds: () => Bounds | undefined, inside: () => void): void
  /** The innermost open element, made if nothing was drawn in it yet; undefined in an artifact. */
  current(): Element | undefined
  /** No marked content goes on over the end of a page. */
  endPage(): void
  end(): void
}

/** An open tag. Its element is made when first something is drawn in it, so that none is empty. */
interface Open {
  readonly tag: Tag
  readonly parent: Open | undefined
  readonly bounds: () => Bounds | undefined
  element: Element | undefined
}

export function structure(pdf: Pdf): Structure {
  const root = pdf.struct('Document')
  pdf.addStructure(root)
  const kept = new Map<string, Element>()
  let open: Open | undefined
  let running: { readonly of: Element | 'Artifact' } | undefined

  function element(of: Open | undefined): Element {
    if (!of) return root
    of.element ??= make(of)
    return of.element
  }

  function make(of: Open): Element {
    const { key } = of.tag
    const before = key === undefined ? undefined : kept.get(key)
    if (before) return before
    const parent = element(of.parent)
    const made = pdf.struct(of.tag.role, elementOptions(of.tag, of.bounds()))
    tableAttributes(made, of.tag)
    parent.add(made)
    if (key !== undefined) kept.set(key, made)
    return made
  }

  function stop(): void {
    if (running) pdf.endMarkedContent()
    running = undefined
  }

  return {
    draw(paint) {
      const of = open === undefined || inArtifact(open) ? 'Artifact' : element(open)
      if (running?.of !== of) {
        stop()
        if (of === 'Artifact') pdf.markContent('Artifact', { type: 'Layout' })
        else of.add(pdf.markStructureContent((open as Open).tag.role) as Content)
        running = { of }
      }
      paint()
    },
    within(tag, bounds, inside) {
      open = { tag, parent: open, bounds, element: undefined }
      inside()
      open = open.parent
    },
    current: () => (open === undefined || inArtifact(open) ? undefined : element(open)),
    endPage: stop,
    end: () => root.end(),
  }
}

function inArtifact(open: Open | undefined): boolean {
  return open !== undefined && (open.tag.role === 'Artifact' || inArtifact(open.parent))
}

function elementOptions({ role, alt, actual, scope }: Tag, bounds: Bounds | undefined): object {
  return {
    ...(alt === undefined ? {} : { alt: printable(alt) }),
    ...(actual === undefined ? {} : { actual: printable(actual) }),
    ...(scope === undefined ? {} : { scope }),
    ...(role === 'Figure' && bounds ? { bbox: bounds } : {}),
  }
}

// pdfkit has no word for a cell that spans columns; its element's dictionary takes one.
function tableAttributes(element: Element, { columns }: Tag): void {
  if (columns === undefined || columns === 1) return
  const attributes = (element.dictionary.data.A ?? {}) as object
  element.dictionary.data.A = { ...attributes, O: 'Table', ColSpan: columns }
}
