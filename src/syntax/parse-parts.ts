import { EmbeddedActionsParser, type IOrAlt, type IToken, type TokenType } from 'chevrotain'
import type { Finding } from '../findings/index.ts'
import { type FigureRead, type UnitDimension, unitSpellings, unitsOffered } from '../measure/index.ts'
import { nearest, type Source, type Span } from '../text/index.ts'
import { oneTokenAhead } from './lookahead.ts'
import type { SaidWords } from './matchers.ts'
import { endOf, error, tokenSpan } from './said.ts'
import { Comma, Count, LineEnd, Measure, Quoted, QuotedFirst, said, vocabulary, Word } from './tokens.ts'
import type * as tree from './tree.ts'

/** A part of a clause can't mend itself: its clause does. */
export const part = { resyncEnabled: false } as const

/** A number as it stood, before it is known whether its unit suits. */
export interface Figured {
  readonly token: IToken
  /** A word that stands where the unit is due. */
  readonly unit: IToken | undefined
}

export interface ParserOptions {
  /** The grammar's own faults are looked for in a test, not at every start. */
  readonly skipValidations?: boolean
  readonly recoveryEnabled?: boolean
}

/**
 * The parts of which clauses are made: names, measures, places, references. The grammar is one class in layers, since
 * Chevrotain wants a class; each layer is one file. This one is long: every part stands beside what is
 * made of it.
 */
export abstract class PartsParser extends EmbeddedActionsParser {
  protected source: Source = { name: '', text: '' }
  protected findings: Finding[] = []

  constructor({ skipValidations = true, recoveryEnabled = true }: ParserOptions = {}) {
    super(vocabulary, {
      recoveryEnabled,
      maxLookahead: 1,
      lookaheadStrategy: oneTokenAhead(),
      skipValidations,
    })
  }

  name = this.RULE('name', () => this.OR(this.waysOfName), part)

  // What is read for nearly every word is made once, and not at every reading.
  private readonly waysOfName = [
    { ALT: () => this.SUBRULE(this.spokenName) },
    { ALT: () => this.quotedName(this.CONSUME(Quoted)) },
    { ALT: () => this.quotedName(this.CONSUME(QuotedFirst)) },
  ]

  spokenName = this.RULE(
    'spokenName',
    () => {
      const first = this.CONSUME(Word)
      this.MANY(this.oneMoreWord)
      return this.ACTION(() => this.nameOf(first, this.LA(0)))
    },
    part,
  )

  private readonly oneMoreWord = () => this.CONSUME2(Word)

  names = this.RULE(
    'names',
    () => {
      const names = [this.SUBRULE(this.name)]
      this.MANY(() => {
        this.CONSUME(said.and)
        names.push(this.SUBRULE2(this.name))
      })
      return names
    },
    part,
  )

  count = this.RULE('count', () => this.countOf(this.CONSUME(Count)), part)

  /** Any number where a measure is due; a word that follows a bare number stands where its unit should. */
  measure = this.RULE('measure', (): Figured => this.OR(this.waysOfMeasure), part)

  private readonly waysOfMeasure = [
    { ALT: () => ({ token: this.CONSUME(Measure), unit: undefined }) },
    {
      ALT: () => {
        const token = this.CONSUME(Count)
        const unit = this.OPTION(() => this.CONSUME(Word))
        return { token, unit }
      },
    },
  ]

  direction = this.RULE('direction', () => this.OR(this.eachDirection), part)

  private readonly eachDirection = this.anyOf(...directions)

  step = this.RULE(
    'step',
    () => {
      const figured = this.SUBRULE(this.measure)
      const way = this.SUBRULE(this.direction)
      return this.ACTION(() => this.stepOf(figured, way))
    },
    part,
  )

  place = this.RULE(
    'place',
    () => {
      const steps: (tree.Step | undefined)[] = []
      const first = this.LA(1)
      const from = this.OR([
        {
          ALT: () => {
            const name = this.SUBRULE(this.name)
            this.MANY({ GATE: this.stepAhead, DEF: () => steps.push(this.SUBRULE(this.step)) })
            return name
          },
        },
        {
          ALT: () => {
            this.AT_LEAST_ONE(() => steps.push(this.SUBRULE2(this.step)))
            return undefined
          },
        },
      ])
      const abreast = this.OPTION(this.abreast)
      return this.ACTION(() => this.placeOf(first, from, steps, abreast))
    },
    part,
  )

  private readonly abreast = () => {
    this.CONSUME(said.abreast)
    return this.SUBRULE2(this.name)
  }

  reference = this.RULE(
    'reference',
    () => {
      const first = this.LA(1)
      const reach = this.OPTION(this.reachBefore)
      const name = this.SUBRULE(this.name)
      const after = this.OPTION2(this.reachBehind)
      return this.ACTION((): tree.Reference => ({ name, reach: reach ?? after, span: this.since(first) }))
    },
    part,
  )

  private readonly reachBefore = () => this.SUBRULE(this.reach)
  private readonly reachBehind = () => this.SUBRULE(this.reachAfter)

  reach = this.RULE(
    'reach',
    () => {
      const token = this.OR(this.eachReach)
      return this.ACTION(() => token.image.toLowerCase() as tree.Reference['reach'])
    },
    part,
  )

  private readonly eachReach = this.anyOf(
    ...[said.other, said.every, said.named, said.weather, said.lee, said.port, said.starboard],
  )

  reachAfter = this.RULE(
    'reachAfter',
    () => {
      const token = this.OR(this.eachReachAfter)
      return this.ACTION(() => token.image.toLowerCase() as tree.Reference['reach'])
    },
    part,
  )

  private readonly eachReachAfter = this.anyOf(said.above, said.port, said.starboard)

  words = this.RULE(
    'words',
    () => {
      const token = this.CONSUME(Quoted)
      return this.ACTION(() => this.wordsOf(token))
    },
    part,
  )

  /** Ways of a choice between single words, made once for all readings. */
  protected anyOf(...kinds: readonly TokenType[]): IOrAlt<IToken>[] {
    return kinds.map(kind => ({ ALT: () => this.CONSUME(kind) }))
  }

  // --- what the parts are made into

  /** Whether a number with a direction follows, and not another clause that begins with a number. */
  protected stepAhead = (): boolean => {
    const [first, second] = [this.LA(1).tokenType, this.LA(2).tokenType]
    if (first === Measure) return directions.has(second)
    return (
      first === Count && (directions.has(second) || (second === Word && directions.has(this.LA(3).tokenType)))
    )
  }

  /** From the beginning of a token to the end of the last one read. */
  protected since(first: IToken): Span {
    const last = this.LA(0)
    return { source: this.source.name, start: first.startOffset, end: endOf(last) }
  }

  protected find(finding: Finding): undefined {
    this.findings.push(finding)
    return undefined
  }

  protected wordsOf(token: IToken): tree.Words {
    const { text, start, end } = token.payload as SaidWords
    return { text, span: { source: this.source.name, start, end } }
  }

  protected nameOf(first: IToken, last: IToken): tree.Name {
    const span = { source: this.source.name, start: first.startOffset, end: endOf(last) }
    const written = this.source.text.slice(span.start, span.end)
    const words = first === last || plainWords.test(written) ? written : written.replace(betweenWords, ' ')
    return { words, quoted: false, span }
  }

  protected quotedName(token: IToken): tree.Name {
    return this.ACTION(() => {
      const { text, span } = this.wordsOf(token)
      if (text === '') {
        this.find(
          error(
            'syntax/name-empty',
            tokenSpan(this.source, token),
            'This name is empty.',
            'Say what it is called.',
          ),
        )
      }
      return { words: text, quoted: true, span }
    })
  }

  protected countOf(token: IToken): tree.Count | undefined {
    return this.ACTION(() => {
      const { value, written, fault } = token.payload as FigureRead
      const span = tokenSpan(this.source, token)
      if (fault !== undefined) return undefined
      if (Number.isInteger(value)) return { value, written, span }
      return this.find(
        error(
          'syntax/count-not-whole',
          span,
          `"${written}" counts things, and must be whole.`,
          'A measure needs its unit.',
        ),
      )
    })
  }

  /** The measure that a number is, or a finding that says which units would do. `goesOn` is said behind it in the example. */
  protected due(
    figured: Figured,
    dimensions: readonly tree.Dimension[],
    goesOn = '',
  ): tree.Measure | undefined {
    const { token, unit } = figured
    const read = token.payload as FigureRead
    if (read.fault !== undefined) return undefined
    if (read.dimension === undefined) return this.find(this.unitFinding(token, unit, dimensions, goesOn))
    if (dimensions.includes(read.dimension as tree.Dimension)) {
      const dimension = read.dimension as tree.Dimension
      return { value: read.value, dimension, written: read.written, span: tokenSpan(this.source, token) }
    }
    const message = `"${read.written}" is ${dimensionNames[read.dimension]}, and ${dueHere(dimensions)} is due here.`
    return this.find(
      error('measure/unit-wrong', tokenSpan(this.source, token), message, `It wants ${wanted(dimensions)}.`),
    )
  }

  private unitFinding(
    token: IToken,
    unit: IToken | undefined,
    dimensions: readonly tree.Dimension[],
    goesOn: string,
  ): Finding {
    const due = dimensions[0] as tree.Dimension
    const offered = unitsOffered[due]
    if (unit !== undefined) {
      const near = nearest(unit.image, spelltUnits, 2)
      const message = `"${unit.image}" is no unit of this language${near.length > 0 ? `; nearest: ${near.join(', ')}` : ''}.`
      return error('measure/unit-unknown', tokenSpan(this.source, unit), message, `It wants ${offered}.`)
    }
    const unitMeant = due === 'length' && isSmall.has(goesOn) ? 'mm' : exampleUnit[due]
    const example = `${token.image} ${unitMeant}${goesOn === '' ? '' : ` ${goesOn}`}`
    const message = `"${token.image}" wants a unit: ${offered}. As in "${example}".`
    return error('measure/unit-missing', tokenSpan(this.source, token), message)
  }

  protected stepOf(figured: Figured, way: IToken): tree.Step | undefined {
    const direction = way.image.toLowerCase() as tree.Direction
    const measure = this.due(figured, lengthOrShare, direction)
    return measure && { measure, direction, span: this.spanOf(figured.token, way) }
  }

  protected spanOf(first: IToken, last: IToken): Span {
    return { source: this.source.name, start: first.startOffset, end: endOf(last) }
  }

  private placeOf(
    first: IToken,
    from: tree.Name | undefined,
    steps: readonly (tree.Step | undefined)[],
    abreast: tree.Name | undefined,
  ): tree.Place | undefined {
    return whole(steps) ? { from, steps, abreast, span: this.since(first) } : undefined
  }

  /** Where reading goes on after a mistake: at the next breath, or at the line's end; never further. */
  protected findReSyncTokenType() {
    for (let ahead = 1; ; ahead++) {
      const type = this.LA(ahead).tokenType
      if (type === Comma || type === LineEnd || type.name === 'EOF') return type
    }
  }

  /** A comma or a line's end follows every rule that mends itself, so there is nothing to look up. */
  protected isInCurrentRuleReSyncSet(): boolean {
    return true
  }

  /** Leaves out the sets of what may follow each rule: half of the analysis, and only the two methods above would use them. */
  protected TRACE_INIT<T>(step: string, analyse: () => T): T | undefined {
    return step === 'computeAllProdsFollows' ? undefined : analyse()
  }

  /** Nothing is put in that was not said. */
  protected override canTokenTypeBeInsertedInRecovery(): boolean {
    return false
  }

  /** Nothing said is put aside without its clause. */
  protected override canTokenTypeBeDeletedInRecovery(): boolean {
    return false
  }
}

/** Words in a name as most are written, with one blank between. */
const plainWords = /^[A-Za-z]+(?: [A-Za-z]+)*$/
const betweenWords = /[^\p{L}\p{M}\p{N}'’_.\u2010\u2011-]+/gu

/** The words that say which way. */
export const directions: ReadonlySet<TokenType> = new Set([
  ...[said.aft, said.forward, said.up, said.below, said.down, said.out, said.port, said.starboard],
])

export const lengthOnly = ['length'] as const
export const lengthOrShare = ['length', 'share'] as const

/** True when no item is missing: what could not be read has its finding already. */
export const whole = <T>(items: readonly (T | undefined)[]): items is readonly T[] =>
  !items.includes(undefined)

const dimensionNames: Readonly<Record<UnitDimension, string>> = {
  length: 'a length',
  mass: 'a weight',
  angle: 'an angle',
  share: 'a share',
  force: 'a force',
}
/** Units in letters: a mark such as " is near to every letter. */
const spelltUnits = unitSpellings.filter(unit => /^\p{L}/u.test(unit))

/** What is told in millimetres, as spars and ropes are. */
const isSmall: ReadonlySet<string> = new Set(['thick', 'round'])
const exampleUnit: Readonly<Record<tree.Dimension, string>> = {
  length: 'm',
  mass: 'kg',
  angle: 'deg',
  share: '%',
}
const dueHere = (dimensions: readonly tree.Dimension[]) => dimensions.map(d => dimensionNames[d]).join(' or ')
const wanted = (dimensions: readonly tree.Dimension[]) =>
  dimensions.map(dimension => unitsOffered[dimension]).join(', or ')
