import { SaxesParser, type SaxesTagPlain } from 'saxes'

/** An element of a parsed file, with all the text inside it. */
export interface XmlElement {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly path: string
  text: string
}

/** Every element of a file in order; throws where the file is not well-formed XML 1.0. */
export function elementsOf(xml: string): readonly XmlElement[] {
  const elements: XmlElement[] = []
  const open: XmlElement[] = []
  const parser = new SaxesParser()
  parser.on('error', error => {
    throw error
  })
  parser.on('opentag', (tag: SaxesTagPlain) => {
    const path = [...open.map(({ name }) => name), tag.name].join('/')
    const element = { name: tag.name, attributes: { ...tag.attributes }, path, text: '' }
    elements.push(element)
    open.push(element)
  })
  parser.on('text', text => {
    for (const element of open) element.text += text
  })
  parser.on('closetag', () => {
    open.pop()
  })
  parser.write(xml).close()
  return elements
}
