import { type IToken, MismatchedTokenException, type TokenType, tokenMatcher } from 'chevrotain'
import { kept, type Lookahead, waysOpenTo } from './lookahead.ts'
import { RigParser } from './parser.ts'

/** What a parser looks for at the choices of its grammar, to be kept. */
export const lookaheadOf = (parser: RigParser): Lookahead =>
  kept((parser as unknown as { lookAheadFuncsCache: Map<number, unknown> }).lookAheadFuncsCache)

/** A rule as Chevrotain keeps it, with the choices in it. */
interface Rule {
  readonly originalGrammarAction: Step
  choices: Choice[]
}

/** What each way of a choice can begin with, and the ways that are open to a kind of token, once such a token has come. */
interface Choice {
  readonly beginnings: Lookahead[number][1]
  readonly open: (readonly number[])[]
}

type Step = (...told: readonly unknown[]) => unknown
type Part = Step | { readonly GATE?: () => boolean; readonly DEF: Step }
interface Way {
  readonly GATE?: () => boolean
  readonly ALT: Step
}

/** Chevrotain numbers the choices of a rule apart for each of its methods, up to 9. */
const placeOf = (method: number, occurrence: number) => method * 10 + occurrence
const [or, option, many, atLeastOne] = [1, 2, 3, 4]

/**
 * A parser that has its lookahead from another and analyses nothing. It reads sound texts as the other does; where it
 * stumbles it goes no further, and the other, which knows the grammar and can mend, must read the text anew. So of where
 * it is in the grammar it keeps only the choices of the rule it reads: its methods that end in "Internal" stand behind
 * Chevrotain's SUBRULE, CONSUME, OR, OPTION, MANY and AT_LEAST_ONE, and do what Chevrotain's own do but for mending.
 */
export function soundReader(lookahead: Lookahead): RigParser {
  class SoundReader extends RigParser {
    declare private tokVector: readonly IToken[]
    declare private currIdx: number
    declare private selfAnalysisDone: boolean
    declare private shortRuleNameToFull: Readonly<Record<number, string>>
    declare private choices: readonly Choice[]
    declare SAVE_ERROR: (stumble: Error) => Error

    protected override performSelfAnalysis(): void {
      for (const [number, beginnings] of lookahead) {
        const [ofRule, method, occurrence] = [number & ~0xfff, (number >> 8) & 0xf, number & 0xff]
        const rule = this.ruleCalled(this.shortRuleNameToFull[ofRule])
        rule.choices ??= []
        rule.choices[placeOf(method, occurrence)] = { beginnings, open: [] }
      }
      this.selfAnalysisDone = true
    }

    override read(...told: Parameters<RigParser['read']>) {
      this.choices = this.ruleCalled('book').choices
      return super.read(...told)
    }

    /** Reads a rule; the choices in it are then those that are made. */
    subruleInternal(rule: Rule, _occurrence: number, options?: { readonly ARGS: unknown[] }): unknown {
      const outer = this.choices
      this.choices = rule.choices
      const read =
        options === undefined
          ? rule.originalGrammarAction.call(this)
          : rule.originalGrammarAction.apply(this, options.ARGS)
      this.choices = outer
      return read
    }

    consumeInternal(kind: TokenType): IToken {
      const token = this.tokVector[this.currIdx + 1] as IToken
      if (!tokenMatcher(token, kind)) this.stumble()
      this.currIdx++
      return token
    }

    orInternal(ways: readonly Way[] & { readonly DEF?: readonly Way[] }, occurrence: number): unknown {
      const all = ways.DEF ?? ways
      for (const index of this.waysOpen(placeOf(or, occurrence))) {
        const { GATE, ALT } = all[index] as Way
        if (GATE === undefined || GATE.call(this)) return ALT.call(this)
      }
      return this.stumble()
    }

    optionInternal(part: Part, occurrence: number): unknown {
      return this.isNext(part, placeOf(option, occurrence)) ? this.taken(part) : undefined
    }

    manyInternal(occurrence: number, part: Part): void {
      while (this.isNext(part, placeOf(many, occurrence))) this.taken(part)
    }

    atLeastOneInternal(occurrence: number, part: Part): void {
      if (!this.isNext(part, placeOf(atLeastOne, occurrence))) this.stumble()
      while (this.isNext(part, placeOf(atLeastOne, occurrence))) this.taken(part)
    }

    private taken(part: Part): unknown {
      return (typeof part === 'function' ? part : part.DEF).call(this)
    }

    private isNext(part: Part, place: number): boolean {
      if (this.waysOpen(place).length === 0) return false
      return typeof part === 'function' || part.GATE === undefined || part.GATE.call(this)
    }

    /** The ways of a choice that the next token can take. */
    private waysOpen(place: number): readonly number[] {
      const { beginnings, open } = this.choices[place] as Choice
      const kind = (this.tokVector[this.currIdx + 1] as IToken).tokenTypeIdx
      open[kind] ??= waysOpenTo(kind, beginnings)
      return open[kind]
    }

    /** What is wrong the other tells. */
    private stumble(): never {
      throw this.SAVE_ERROR(new MismatchedTokenException('', this.LA(1), this.LA(0)))
    }

    private ruleCalled(name: string | undefined): Rule {
      return (this as unknown as Record<string, Rule>)[name ?? ''] as Rule
    }
  }
  return new SoundReader({ recoveryEnabled: false })
}
