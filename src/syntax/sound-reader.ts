import { functionsOf, kept, type Lookahead } from './lookahead.ts'
import { RigParser } from './parser.ts'

/** What Chevrotain's parser keeps of the analysis of its grammar; its types don't tell. */
interface Analysed {
  selfAnalysisDone: boolean
  readonly lookAheadFuncsCache: Map<number, unknown>
}

/** What a parser looks for at the choices of its grammar, to be kept. */
export const lookaheadOf = (parser: RigParser): Lookahead =>
  kept((parser as unknown as Analysed).lookAheadFuncsCache)

/**
 * A parser that has its lookahead from another and analyses nothing. It reads sound texts as the other does; where it
 * stumbles it goes no further, and the other, which knows the grammar and can mend, must read the text anew.
 */
export function soundReader(lookahead: Lookahead, whole: () => RigParser): RigParser {
  class SoundReader extends RigParser {
    protected override performSelfAnalysis(): void {
      const inside = this as unknown as Analysed
      for (const [choice, choosing] of functionsOf(lookahead))
        inside.lookAheadFuncsCache.set(choice, choosing)
      inside.selfAnalysisDone = true
    }

    /** Asked for where it stumbles, to tell what was awaited. */
    override getGAstProductions() {
      return whole().getGAstProductions()
    }
  }
  return new SoundReader({ recoveryEnabled: false })
}
