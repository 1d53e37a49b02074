import { RigParser } from './parser.ts'

/** A rule of the grammar, as the parser has it: 'masts-page'. */
export interface GrammarRule {
  readonly name: string
  readonly parts: readonly GrammarPart[]
}

/** What a rule is made of. A word is labelled as the reference says it: '"at"', 'WORD', 'LineEnd'. */
export type GrammarPart =
  | { readonly kind: 'word'; readonly label: string }
  | { readonly kind: 'rule'; readonly name: string }
  | { readonly kind: 'row' | 'maybe' | 'any' | 'some'; readonly parts: readonly GrammarPart[] }
  | { readonly kind: 'choice'; readonly of: readonly (readonly GrammarPart[])[] }

/** The rules of the grammar: the book and its pages first, then what stands on them, and last what clauses are made of. */
export function grammarRules(): readonly GrammarRule[] {
  const rules = new RigParser().getSerializedGastProductions() as readonly Gast[]
  return rules
    .map(rule => ({ name: spoken(rule.name), parts: inside(rule) }))
    .sort((a, b) => place(a.name) - place(b.name))
}

/** A node of the grammar as Chevrotain writes it out; which of these it has depends on its kind. */
interface Gast {
  readonly type: string
  readonly name?: string
  readonly label?: string
  readonly definition?: readonly Gast[]
}

function place(name: string): number {
  if (name === 'book') return 0
  return name.endsWith('-page') ? 1 : 2
}

/** 'mastsPage' is said 'masts-page'. */
const spoken = (name = '') => name.replace(/[A-Z]/g, letter => `-${letter.toLowerCase()}`)

const inside = ({ definition = [] }: Gast): readonly GrammarPart[] => definition.map(partOf)

const kinds: Readonly<Record<string, 'maybe' | 'any' | 'some'>> = {
  Option: 'maybe',
  Repetition: 'any',
  RepetitionMandatory: 'some',
}

function partOf(node: Gast): GrammarPart {
  if (node.type === 'Terminal') return { kind: 'word', label: node.label ?? spoken(node.name) }
  if (node.type === 'NonTerminal') return { kind: 'rule', name: spoken(node.name) }
  if (node.type === 'Alternation') return { kind: 'choice', of: (node.definition ?? []).map(inside) }
  return { kind: kinds[node.type] ?? 'row', parts: inside(node) }
}
