import fc from 'fast-check'
import { pageWords } from '../../src/syntax/index.ts'
import { RigParser } from '../../src/syntax/parser.ts'

/** A node of the grammar as Chevrotain writes it out. */
interface Node {
  readonly type: string
  readonly name?: string
  readonly label?: string
  readonly definition?: readonly Node[]
}

/** A word of a sentence, or a sign of what becomes of the margin after it. */
type Said = string

const lineEnd = '\n'
const setIn = '\u0001'
const setOut = '\u0002'

const figures = ['0', '-0', '1', '12', '7 1/2', '1,5', '1e999', '999999999999', '-3', '1/0', '41']
const units = ['m', 'mm', 'ft', 'in', 'deg', '%', 't', 'kN', 'furlong', '']
const names = ['fore', 'main', 'mast', 'yard', 'sail', 'jib', 'clewline', 'sheet', 'rail', 'course']
const oddNames = [
  '__proto__',
  'constructor',
  'toString',
  'Fore',
  'ﬁfe',
  '帆',
  '🜨',
  'e\u0301',
  'a'.repeat(300),
]

/** What a kind of word may look like. A small word or a page word is said as it stands. */
function spoken(label: string): fc.Arbitrary<Said> {
  const word = fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(...names) },
    { weight: 1, arbitrary: fc.constantFrom(...oddNames) },
  )
  switch (label) {
    case 'WORD':
      return word
    case 'QUOTED':
      return fc.array(word, { maxLength: 3 }).map(words => `"${words.join(' ')}"`)
    case 'MEASURE':
      return fc.tuple(fc.constantFrom(...figures), fc.constantFrom(...units)).map(pair => pair.join(' '))
    case 'NUMBER':
      return fc.constantFrom(...figures)
    case 'CHECK':
      return fc.constantFrom('belay/two-on-a-pin', 'line/orphan', 'no/such', '/')
    case 'LineEnd':
      return fc.constant(lineEnd)
    case 'SetIn':
      return fc.constant(setIn)
    case 'SetOut':
      return fc.constant(setOut)
    case 'GoesOn':
      return fc.constant('')
    default:
      return fc.array(word, { minLength: 1, maxLength: 3 }).map(words =>
        label
          .replaceAll('"', '')
          .replace(/\[.*?\]/g, '')
          .replace(/PROSE|PHRASE/, words.join(' ')),
      )
  }
}

/** No bias towards short texts, and an end to what holds itself. */
const deep = { depthIdentifier: 'text', depthSize: 'max', maxDepth: 24 } as const
const few = { maxLength: 3, depthIdentifier: 'text' } as const

/**
 * Pages as the parser's own rules allow them, as text with margins, and loose sentences of any rule under a page where
 * they need not belong.
 */
export function fragments(): fc.Arbitrary<string> {
  const rules = new RigParser().getSerializedGastProductions() as readonly Node[]
  const tied = fc.letrec<Record<string, Said[]>>(tie => {
    const all = (nodes: readonly Node[] = []): fc.Arbitrary<Said[]> =>
      nodes.length === 0 ? fc.constant<Said[]>([]) : fc.tuple(...nodes.map(one)).map(parts => parts.flat())
    const one = (node: Node): fc.Arbitrary<Said[]> => {
      switch (node.type) {
        case 'Terminal':
          return spoken(node.label ?? '').map(word => [word])
        case 'NonTerminal':
          return tie(node.name ?? '') as fc.Arbitrary<Said[]>
        case 'Option':
          return fc.oneof(deep, fc.constant<Said[]>([]), all(node.definition))
        case 'Repetition':
          return fc.array(all(node.definition), few).map(parts => parts.flat())
        case 'RepetitionMandatory':
          return fc.array(all(node.definition), { ...few, minLength: 1 }).map(parts => parts.flat())
        case 'Alternation':
          return fc.oneof(deep, ...(node.definition ?? []).map(one))
        default:
          return all(node.definition)
      }
    }
    return Object.fromEntries(rules.map(rule => [rule.name ?? '', all(rule.definition)]))
  })
  const named = (suits: (name: string) => boolean) =>
    fc.oneof(
      ...rules
        .map(({ name = '' }) => name)
        .filter(suits)
        .map(name => tied[name] as fc.Arbitrary<Said[]>),
    )
  const isPage = (name: string) => name.endsWith('Page')
  const pages = fc.array(named(isPage), { minLength: 1, maxLength: 3 }).map(parts => parts.flat())
  const loose = fc
    .tuple(
      fc.constantFrom(...pageWords),
      named(name => !isPage(name) && name !== 'book'),
    )
    .map(([page, line]) => [page, lineEnd, setIn, ...line, lineEnd])
  return fc.oneof(pages, loose).map(written)
}

/** Words with their margins: a line end and what follows it stand two columns further in for each level. */
function written(said: readonly Said[]): string {
  let level = 0
  let text = ''
  let fresh = true
  for (const word of said) {
    if (word === setIn) level++
    else if (word === setOut) level = Math.max(0, level - 1)
    else if (word === lineEnd) {
      text += '\n'
      fresh = true
    } else if (word !== '') {
      text += fresh ? `${'  '.repeat(level)}${word}` : word === ',' ? word : ` ${word}`
      fresh = false
    }
  }
  return text
}
