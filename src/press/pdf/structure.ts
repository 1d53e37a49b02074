import type { Tag } from '../../sheets/index.ts'
import { elementOptions, finishAttributes, type PageBox } from './element.ts'
import type { Element, Pdf } from './pdfkit.ts'

/** Writes the structure of a tagged document while its marks are drawn: reading order is drawing order. */
export interface Structure {
  /** Paints words: the content of the innermost open tag, or an artifact outside every tag. */
  words(paint: () => void): void
  /** Paints lines and areas: the same, but in tags that only hold other tags they are artifacts. */
  lines(paint: () => void): void
  /** Paints what stands for nothing by itself, such as a halo: an artifact unless it is part of a figure. */
  ground(paint: () => void): void
  /** Opens a tag, does `inside`, closes it. The box is a figure's place on the page. */
  within(tag: Tag, box: () => PageBox | undefined, inside: () => void): void
  /** The element of the innermost open tag, if anything has been drawn in it. */
  current(): Element | undefined
  /** Whether what is drawn here under this tag, or under none, would be an artifact. */
  isArtifact(tag: Tag | undefined): boolean
  /** Ends marked content, which must not go on over a change of page or of the graphics state. */
  pause(): void
  end(): void
}

/** An open tag. Its element is made when something is first drawn in it, so that none is empty. */
interface Open {
  readonly tag: Tag
  readonly parent: Open | undefined
  readonly box: () => PageBox | undefined
  element: Element | undefined
}

export function structure(pdf: Pdf): Structure {
  const root = pdf.struct('Document')
  pdf.addStructure(root)
  const kept = new Map<string, Element>()
  let open: Open | undefined
  let running: Element | 'Artifact' | undefined
  let isPainting = false

  function elementOf(tag: Open | undefined): Element {
    if (!tag) return root
    tag.element ??= continued(tag) ?? make(tag)
    return tag.element
  }

  function continued({ tag }: Open): Element | undefined {
    const key = keyOf(tag)
    return key === undefined ? undefined : kept.get(key)
  }

  function make({ tag, parent, box }: Open): Element {
    const element = pdf.struct(tag.role, elementOptions(tag, box))
    finishAttributes(element, tag)
    elementOf(parent).add(element)
    const key = keyOf(tag)
    if (key !== undefined) kept.set(key, element)
    return element
  }

  function pause(): void {
    if (running) pdf.endMarkedContent()
    running = undefined
  }

  function paintIn(tag: Open | undefined, paint: () => void): void {
    // Inside a translucent group the whole is already marked, and marks may not nest.
    if (isPainting) {
      paint()
      return
    }
    const place = tag ? elementOf(tag) : 'Artifact'
    if (running !== place) {
      pause()
      if (place === 'Artifact') pdf.markContent('Artifact', { type: 'Layout' })
      else place.add(pdf.markStructureContent((tag as Open).tag.role))
      running = place
    }
    isPainting = true
    paint()
    isPainting = false
  }

  return {
    words: paint => paintIn(readable(open), paint),
    lines: paint => paintIn(open && holders.has(open.tag.role) ? undefined : readable(open), paint),
    ground: paint => paintIn(isFigure(open) ? readable(open) : undefined, paint),
    within(tag, box, inside) {
      if (isPainting) throw new Error(`A ${tag.role} stands inside a group with an opacity of its own`)
      const here: Open = { tag, parent: open, box, element: undefined }
      open = here
      inside()
      open = here.parent
      if (tag.role === 'Link') here.element?.end()
    },
    current: () => open?.element,
    isArtifact: tag =>
      tag ? tag.role === 'Artifact' || (open !== undefined && !readable(open)) : !readable(open),
    pause,
    end: () => root.end(),
  }
}

/** Tags that hold other tags and no content of their own. */
const holders: ReadonlySet<Tag['role']> = new Set<Tag['role']>([
  ...(['Sect', 'Div', 'L', 'LI', 'Table', 'THead', 'TBody', 'TR'] as const),
])

/**
 * What later parts of the element are known by. A link has none: pdfkit takes its annotation to be on the page
 * where the element ends, so it can't be left open for another page.
 */
function keyOf({ role, key }: Tag): string | undefined {
  return role === 'Link' ? undefined : key
}

/** The tag itself, unless it or one around it is an artifact. */
function readable(open: Open | undefined): Open | undefined {
  for (let at = open; at; at = at.parent) if (at.tag.role === 'Artifact') return undefined
  return open
}

function isFigure(open: Open | undefined): boolean {
  return open !== undefined && (open.tag.role === 'Figure' || isFigure(open.parent))
}
