import draw, { type Piece } from 'railroad-diagrams'
import type { GrammarPart, GrammarRule } from '../../syntax/index.ts'

/** A rule of the grammar as a railroad diagram, an SVG that stands alone: words in round boxes, other rules in square ones. */
export function railroad({ name, parts }: GrammarRule): string {
  const diagram = draw.Diagram(row(parts))
  const svg = String(diagram)
  const title = `<title>${name}</title>\n<desc>Railroad diagram of the rule ${name}; its EBNF says the same.</desc>\n`
  return svg
    .replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" role="img" ')
    .replace(
      '>\n',
      `>\n${title}<style>${style}</style>\n<rect class="paper" width="100%" height="100%"></rect>\n`,
    )
}

const style = [
  'rect.paper{fill:#fff}',
  'path{fill:none;stroke:#1b1b1b;stroke-width:1.5}',
  'rect{fill:#fff;stroke:#1b1b1b;stroke-width:1.5}',
  'rect.paper{stroke:none}',
  'text{font:14px ui-monospace,Menlo,Consolas,monospace;text-anchor:middle;fill:#1b1b1b}',
  '.non-terminal text{font-style:italic}',
].join('')

const row = (parts: readonly GrammarPart[]): Piece => {
  const pieces = parts.map(piece).filter(drawn => drawn !== undefined)
  return pieces.length === 1 && pieces[0] ? pieces[0] : draw.Sequence(...pieces)
}

function piece(part: GrammarPart): Piece | undefined {
  switch (part.kind) {
    case 'word':
      return draw.Terminal(said(part.label))
    case 'rule':
      return draw.NonTerminal(part.name)
    case 'row':
      return part.parts.length === 0 ? undefined : row(part.parts)
    case 'maybe':
      return draw.Optional(row(part.parts))
    case 'any':
      return draw.ZeroOrMore(row(part.parts))
    case 'some':
      return draw.OneOrMore(row(part.parts))
    case 'choice':
      return draw.Choice(0, ...part.of.map(parts => (parts.length === 0 ? draw.Skip() : row(parts))))
  }
}

/** In a round box a word needs no quotes. */
const said = (label: string) => label.replace(/"([^"]+)"/g, '$1')
