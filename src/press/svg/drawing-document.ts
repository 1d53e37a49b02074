const svgNamespace = 'http://www.w3.org/2000/svg'

/**
 * A fresh document to draw in. A browser gives its own; elsewhere svgdom stands in. It is an XML document in
 * either case, since an HTML one would write a no-break space as an entity that SVG doesn't know.
 */
export async function drawingDocument(): Promise<{
  readonly window: object
  readonly document: XmlDocument
}> {
  const browser = globalThis as unknown as { readonly document?: HtmlDocument }
  if (browser.document) {
    const document = browser.document.implementation.createDocument(svgNamespace, 'svg', null)
    return { window: globalThis, document }
  }
  const { createSVGWindow } = await import('svgdom')
  const window = createSVGWindow() as { readonly document: XmlDocument }
  return { window, document: window.document }
}

/** As much of a document as is asked of it here. */
export interface XmlDocument {
  readonly documentElement: object
}

interface HtmlDocument {
  readonly implementation: {
    createDocument(namespace: string, root: string, type: null): XmlDocument
  }
}
