import { type GrammarPart, type GrammarRule, grammarRules } from './grammar.ts'

/**
 * The grammar as the parser has it, in EBNF (ISO/IEC 14977 with commas left out): what stands in quotes is said as it stands,
 * [ ] may be left out, { } may be said any number of times.
 */
export function ebnf(): string {
  return `${preface}\n${grammarRules().map(ebnfOf).join('\n')}\n`
}

/** One rule in EBNF. */
export const ebnfOf = ({ name, parts }: GrammarRule) => wrapped(name, sequence(parts))

const preface = `(* The grammar of Crosstree's rig files, generated from the parser: do not edit, run "npm run grammar".

   WORD      a word that is no small word                 QUOTED    words between double quotes
   PROSE     words to the end of the line                 PHRASE    words to the next comma
   MEASURE   a number with its unit: 12.40 m, 320 mm, 2 1/2 in, 41 ft 6 in, 3 deg, 35 %, 165 t
   NUMBER    a number without a unit                      CHECK     the name of a check: belay/two-on-a-pin
   LineEnd   the end of a line                            SetIn, SetOut   lines below stand further in, or out again
   GoesOn    nothing: the line begins without a name, and goes on about the statement above

   A remark runs from "#" to the end of its line. Blank lines and remarks do not count. *)
`

const sequence = (parts: readonly GrammarPart[]): string =>
  parts
    .map(shown)
    .filter(part => part !== '')
    .join(' ')

function shown(part: GrammarPart): string {
  switch (part.kind) {
    case 'word':
      return part.label
    case 'rule':
      return part.name
    case 'row':
      return sequence(part.parts)
    case 'maybe':
      return `[ ${bare(sequence(part.parts))} ]`
    case 'any':
      return `{ ${bare(sequence(part.parts))} }`
    case 'some':
      return `${sequence(part.parts)} { ${sequence(part.parts)} }`
    case 'choice':
      return choice(part.of)
  }
}

function choice(of: readonly (readonly GrammarPart[])[]): string {
  const choices = [...new Set(of.map(sequence))]
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
