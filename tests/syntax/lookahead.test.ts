import {
  Alternation,
  type ILookaheadStrategy,
  type IOrAlt,
  type IProduction,
  LLkLookaheadStrategy,
  NonTerminal,
  type Rule,
  Terminal,
} from 'chevrotain'
import { describe, expect, it } from 'vitest'
import { lex } from '../../src/syntax/lexer.ts'
import { oneTokenAhead } from '../../src/syntax/lookahead.ts'
import { setMargins } from '../../src/syntax/margin.ts'
import { RigParser } from '../../src/syntax/parser.ts'
import { lookaheadOf, soundReader } from '../../src/syntax/sound-reader.ts'
import { vocabulary } from '../../src/syntax/tokens.ts'
import { tellWords } from '../../src/syntax/wording.ts'
import { exampleRigs, exampleText } from '../support/compiled.ts'

type Choice = Exclude<IProduction, Rule> & {
  readonly idx: number
  readonly definition: readonly IProduction[]
  readonly hasPredicates?: boolean
}

const rules = Object.values(new RigParser().getGAstProductions())
const choices = rules.flatMap(rule => choicesIn(rule.definition).map(choice => ({ rule, choice })))
const [ours, theirs] = [oneTokenAhead(), new LLkLookaheadStrategy({ maxLookahead: 1 })]

/** All that is taken or left by what comes next. */
function choicesIn(parts: readonly IProduction[]): readonly Choice[] {
  return parts.flatMap(part => {
    if (part instanceof Terminal || part instanceof NonTerminal) return []
    const choice = part as Choice
    return [...(choice.idx === undefined ? [] : [choice]), ...choicesIn(choice.definition)]
  })
}

/** What a way of looking ahead chooses at a choice, for every kind of token. */
function chosen(
  strategy: ILookaheadStrategy,
  { rule, choice }: (typeof choices)[number],
): readonly unknown[] {
  const asked = {
    ...{ rule, prodOccurrence: choice.idx, maxLookahead: 1, dynamicTokensEnabled: false },
    ...{ hasPredicates: choice.hasPredicates ?? false, prodType: choice.constructor.name as 'Option' },
  }
  const ways = choice.definition.map(() => ({ ALT: () => undefined }))
  const choose: (this: unknown, ways: IOrAlt<unknown>[]) => unknown =
    choice instanceof Alternation
      ? strategy.buildLookaheadForAlternation(asked)
      : strategy.buildLookaheadForOptional(asked)
  return vocabulary.map(tokenType => {
    const token = { tokenType, tokenTypeIdx: tokenType.tokenTypeIdx, image: '', startOffset: 0 }
    return choose.call({ LA: () => token, LA_FAST: () => token }, ways)
  })
}

describe('looking ahead', () => {
  it('finds all choices of the grammar', () => {
    expect(choices.length).toBeGreaterThan(100)
  })

  it('chooses at each of them as Chevrotain does, for every kind of token', () => {
    for (const choice of choices) {
      const place = `${choice.rule.name} ${choice.choice.constructor.name} ${choice.choice.idx}`
      expect([place, ...chosen(ours, choice)]).toEqual([place, ...chosen(theirs, choice)])
    }
  })
})

describe('a reader with the lookahead of another', () => {
  const whole = new RigParser()
  const kept: ReturnType<typeof lookaheadOf> = JSON.parse(JSON.stringify(lookaheadOf(whole)))
  const sound = soundReader(kept)
  const read = (parser: RigParser, text: string) => {
    const source = { name: 'test.rig', text }
    return parser.read(source, setMargins(tellWords(lex(text), source, []), source, []))
  }

  it('reads every example as the other does', () => {
    for (const rig of exampleRigs) {
      expect([rig, read(sound, exampleText(rig))]).toEqual([rig, read(whole, exampleText(rig))])
    }
  })

  it('stumbles where the other does, however a text is spoiled', () => {
    const lines = exampleText('schooner-teasel-vane').split('\n')
    const spoiled = lines.map((line, at) =>
      [...lines.slice(at - 9, at), line.split(' ').reverse().join(' '), ...lines.slice(at + 1, at + 9)].join(
        '\n',
      ),
    )
    const stumbled = spoiled.filter(text => {
      const [ours, theirs] = [read(sound, text), read(whole, text)]
      if (theirs.stumbles.length === 0) expect(ours).toEqual(theirs)
      expect(ours.stumbles.length > 0).toBe(theirs.stumbles.length > 0)
      return ours.stumbles.length > 0
    })
    expect(stumbled.length).toBeGreaterThan(20)
  })
})
