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

/**
 * Looks one token ahead, and chooses as Chevrotain does by itself. Chevrotain walks all the grammar below each choice
 * to know what to look for, at every start; here each rule is walked once, and only when a text comes to it.
 */
export function oneTokenAhead(): ILookaheadStrategy {
  const chevrotain = new LLkLookaheadStrategy({ maxLookahead: 1 })
  const beginningOf = beginnings()
  return {
    validate: options => chevrotain.validate(options),
    buildLookaheadForAlternation: ({ rule, prodOccurrence, hasPredicates }) => {
      let ways: readonly Beginning[] | undefined
      const openTo: number[][] = []
      return function (this: Reader, alternatives = []) {
        const kind = this.LA(1).tokenTypeIdx
        ways ??= choiceIn(rule, 'Alternation', prodOccurrence).definition.map(way => beginningOf([way]))
        openTo[kind] ??= open(ways, kind)
        if (!hasPredicates) return openTo[kind][0]
        return openTo[kind].find(index => alternatives[index]?.GATE?.call(this) !== false)
      }
    },
    buildLookaheadForOptional: ({ rule, prodOccurrence, prodType }) => {
      let inside: Beginning | undefined
      return function (this: Reader) {
        inside ??= beginningOf(choiceIn(rule, prodType as keyof typeof choices, prodOccurrence).definition)
        return inside.has(this.LA(1).tokenTypeIdx)
      }
    },
  }
}

/** Which of the ways a token of this kind can take: one that may be empty is open to all. */
const open = (ways: readonly Beginning[], kind: number): number[] =>
  [...ways.keys()].filter(index => ways[index]?.has(kind) || ways[index]?.has(nothing))

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
