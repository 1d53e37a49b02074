import { RigParser } from './parser.ts'

/**
 * The grammar as the parser has it, in EBNF (ISO/IEC 14977 with commas left out): what stands in quotes is said as it stands,
 * [ ] may be left out, { } may be said any number of times.
 */
export function ebnf(): string {
  const rules = new RigParser().getSerializedGastProductions() as readonly Gast[]
  const lines = [...rules]
    .sort((a, b) => place(a) - place(b))
    .map(rule => wrapped(spoken(nameOf(rule)), inside(rule)))
  return `${preface}\n${lines.join('\n')}\n`
}

const preface = `(* The grammar of Crosstree's rig files, generated from the parser: do not edit, run "npm run grammar".

   WORD      a word that is no small word                 QUOTED    words between double quotes
   PROSE     words to the end of the line                 PHRASE    words to the next comma
   MEASURE   a number with its unit: 12.40 m, 320 mm, 2 1/2 in, 41 ft 6 in, 3 deg, 35 %, 165 t
   NUMBER    a number without a unit                      CHECK     the name of a check: belay/two-on-a-pin
   LineEnd   the end of a line                            SetIn, SetOut   lines below stand further in, or out again
   GoesOn    nothing: the line begins without a name, and goes on about the statement above

   A remark runs from "#" to the end of its line. Blank lines and remarks do not count. *)
`

/** A node of the grammar as Chevrotain writes it out; which of these it has depends on its kind. */
interface Gast {
  readonly type: string
  readonly name?: string
  readonly label?: string
  readonly definition?: readonly Gast[]
}

const nameOf = (node: Gast) => node.name ?? ''

/** The book and its pages come first, then what stands on them, and last what clauses are made of. */
function place(rule: Gast): number {
  const name = nameOf(rule)
  if (name === 'book') return 0
  return name.endsWith('Page') ? 1 : 2
}

/** 'mastsPage' is said 'masts-page'. */
const spoken = (name: string) => name.replace(/[A-Z]/g, letter => `-${letter.toLowerCase()}`)

const inside = (node: Gast): string => sequence(node.definition ?? [])

const sequence = (nodes: readonly Gast[]) =>
  nodes
    .map(shown)
    .filter(part => part !== '')
    .join(' ')

function shown(node: Gast): string {
  switch (node.type) {
    case 'Terminal':
      return node.label ?? spoken(nameOf(node))
    case 'NonTerminal':
      return spoken(nameOf(node))
    case 'Option':
      return `[ ${bare(inside(node))} ]`
    case 'Repetition':
      return `{ ${bare(inside(node))} }`
    case 'RepetitionMandatory':
      return `${inside(node)} { ${inside(node)} }`
    case 'Alternation':
      return alternation(node)
    default:
      return inside(node)
  }
}

function alternation(node: Gast): string {
  const choices = [...new Set((node.definition ?? []).map(inside))]
  const told = choices.filter(choice => choice !== '').join(' | ')
  return choices.includes('') ? `[ ${told} ]` : `( ${told} )`
}

/** Round brackets straight within others say nothing. */
function bare(text: string): string {
  if (!text.startsWith('( ') || !text.endsWith(' )')) return text
  let depth = 0
  for (let i = 0; i < text.length - 1; i++) {
    if (text[i] === '(') depth++
    if (text[i] === ')') depth--
    if (depth === 0) return text
  }
  return text.slice(2, -2)
}

/** One rule, broken at its choices where it would be longer than a page is wide. */
function wrapped(name: string, definition: string): string {
  const whole = `${name} = ${bare(definition)} ;`
  if (whole.length <= 110) return whole
  const indent = ' '.repeat(4)
  const lines: string[] = []
  let line = `${name} =`
  for (const part of bare(definition).split(' ')) {
    if ((line.length + part.length + 3 > 110 && part !== ']') || (part === '|' && line.length > 96)) {
      lines.push(line)
      line = indent.slice(0, -1)
    }
    line += ` ${part}`
  }
  return [...lines, `${line} ;`].join('\n')
}
