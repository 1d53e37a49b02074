import {
  Alternation,
  type ILookaheadStrategy,
  type IProduction,
  type IToken,
  LLkLookaheadStrategy,
  NonTerminal,
  Option,
  Repetition,
  RepetitionMandatory,
  type Rule,
  Terminal,
} from 'chevrotain'

/** What is taken or left by what comes next. Lists with separators are not used in this grammar. */
const choices = { Alternation, Option, Repetition, RepetitionMandatory }
type Choice = InstanceType<(typeof choices)[keyof typeof choices]>

interface Reader {
  LA(distance: number): IToken
}

/** The kinds of token, by their numbers, that a part of the grammar can begin with; `nothing` is one of them if it may be empty. */
type Beginning = ReadonlySet<number>
const nothing = 0
const said = (beginning: Beginning): Beginning => new Set([...beginning].filter(kind => kind !== nothing))

/** A way to choose, and what it looks for: of a choice each way's beginning, of what may be left out its own. */
type Choosing = ((this: Reader, alternatives?: readonly Alternative[]) => unknown) & {
  readonly beginnings: () => readonly Beginning[]
}

interface Alternative {
  readonly GATE?: () => boolean
}

/**
 * Looks one token ahead, and chooses as Chevrotain does by itself. Chevrotain walks all the grammar below each choice
 * to know what to look for, at every start; here each rule is walked once, and only when a text comes to it.
 */
export function oneTokenAhead(): ILookaheadStrategy {
  const chevrotain = new LLkLookaheadStrategy({ maxLookahead: 1 })
  const beginningOf = beginnings()
  return {
    validate: options => chevrotain.validate(options),
    buildLookaheadForAlternation: ({ rule, prodOccurrence }) =>
      wayIn(() => choiceIn(rule, 'Alternation', prodOccurrence).definition.map(way => beginningOf([way]))),
    buildLookaheadForOptional: ({ rule, prodOccurrence, prodType }) =>
      whether(() => [
        said(beginningOf(choiceIn(rule, prodType as keyof typeof choices, prodOccurrence).definition)),
      ]),
  } as ILookaheadStrategy
}

/** What is looked for at the choices of a grammar, by their numbers in the parser: for each way the kinds of token it can begin with. */
export type Lookahead = readonly (readonly [number, readonly (readonly number[])[]])[]

/** What the functions of a parser look for, to be kept. */
export const kept = (functions: ReadonlyMap<number, unknown>): Lookahead =>
  [...(functions as ReadonlyMap<number, Choosing>)].map(
    ([number, { beginnings }]) => [number, beginnings().map(kinds => [...kinds])] as const,
  )

/** Which of the ways a token of this kind can take: one that may be empty is open to all. */
export const waysOpenTo = (kind: number, ways: Lookahead[number][1]): readonly number[] =>
  [...ways.keys()].filter(index => ways[index]?.includes(kind) || ways[index]?.includes(nothing))

/** Chooses the first way that is open to the next token and that nothing bars. */
function wayIn(beginnings: () => readonly Beginning[]): Choosing {
  let ways: Lookahead[number][1] | undefined
  const openTo: (readonly number[])[] = []
  const choose = function (this: Reader, alternatives: readonly Alternative[] = []) {
    const kind = this.LA(1).tokenTypeIdx
    ways ??= beginnings().map(kinds => [...kinds])
    openTo[kind] ??= waysOpenTo(kind, ways)
    for (const index of openTo[kind]) if (alternatives[index]?.GATE?.call(this) !== false) return index
    return undefined
  }
  return Object.assign(choose, { beginnings })
}

/** Tells whether the next token begins what may be left out. */
function whether(beginnings: () => readonly Beginning[]): Choosing {
  let inside: Beginning | undefined
  const choose = function (this: Reader) {
    inside ??= beginnings()[0] as Beginning
    return inside.has(this.LA(1).tokenTypeIdx)
  }
  return Object.assign(choose, { beginnings })
}

/** Tells how a sequence of parts can begin, and remembers it of whole rules. */
function beginnings(): (parts: readonly IProduction[]) => Beginning {
  const ofRules = new Map<Rule, Beginning>()

  const ofPart = (part: IProduction): Beginning => {
    if (part instanceof Terminal) return kindsOf(part)
    if (part instanceof NonTerminal) return ofRule(part.referencedRule)
    if (part instanceof Alternation) return new Set(part.definition.flatMap(way => [...ofPart(way)]))
    const inside = ofSequence((part as Choice).definition)
    return part instanceof Option || part instanceof Repetition ? new Set([...inside, nothing]) : inside
  }

  const ofRule = (rule: Rule): Beginning => {
    const known = ofRules.get(rule) ?? ofSequence(rule.definition)
    ofRules.set(rule, known)
    return known
  }

  const ofSequence = (parts: readonly IProduction[]): Beginning => {
    const kinds = new Set<number>()
    for (const part of parts) {
      const here = ofPart(part)
      for (const kind of here) if (kind !== nothing) kinds.add(kind)
      if (!here.has(nothing)) return kinds
    }
    return kinds.add(nothing)
  }
  return ofSequence
}

/** A kind of token, and all that count as it: words with a meaning in their place are words too. */
const kindsOf = ({ terminalType }: Terminal): Beginning =>
  new Set([terminalType.tokenTypeIdx as number, ...(terminalType.categoryMatches ?? [])])

/** The choice of a kind and a number within a rule. */
function choiceIn(rule: Rule, kind: keyof typeof choices, occurrence: number): Choice {
  const within = (parts: readonly IProduction[]): Choice | undefined => {
    for (const part of parts) {
      if (part instanceof Terminal || part instanceof NonTerminal) continue
      if (part instanceof choices[kind] && part.idx === occurrence) return part
      const inner = within((part as Choice).definition)
      if (inner !== undefined) return inner
    }
    return undefined
  }
  const found = within(rule.definition)
  if (found === undefined) throw new Error(`the rule ${rule.name} has no ${kind} ${occurrence}`)
  return found
}
