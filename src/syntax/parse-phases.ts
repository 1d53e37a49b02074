import type { IToken } from 'chevrotain'
import { GearParser } from './parse-gear.ts'
import { part } from './parse-parts.ts'
import { error, tokenSpan } from './said.ts'
import { prose, said } from './tokens.ts'
import type * as tree from './tree.ts'

type Clause = tree.Clause | undefined

/** The clauses of an order to set or to douse, and what sits on a pin. */
export abstract class PhasesParser extends GearParser {
  /** 'haul lee buntline then weather buntline when running'. */
  act = this.RULE('act', (): Clause => {
    const first = this.LA(1)
    const act = this.SUBRULE(this.verb)
    const lines = this.SUBRULE(this.references)
    const then: tree.Reference[] = []
    this.MANY(() => {
      this.CONSUME(said.then)
      const more = this.SUBRULE2(this.references)
      this.ACTION(() => then.push(...more))
    })
    const when = this.OPTION(() => this.CONSUME(prose.when))
    return this.ACTION(() => {
      const words = when && this.proseOf(when, 'the case in which it holds', 'tend sheet when running')
      return { kind: 'act', act, lines, then, when: words, span: this.since(first) }
    })
  })

  verb = this.RULE('verb', () => this.OR(this.eachVerb), part)

  private readonly eachVerb = [
    { ALT: () => this.one('haul', this.CONSUME(said.haul)) },
    { ALT: () => this.one('ease', this.CONSUME(said.ease)) },
    { ALT: () => this.one('hold', this.CONSUME(said.hold)) },
    { ALT: () => this.one('tend', this.CONSUME(said.tend)) },
    {
      ALT: () => {
        this.CONSUME(said.let)
        return this.one('let go', this.CONSUME(said.go))
      },
    },
    {
      ALT: () => {
        this.CONSUME(said.stand)
        return this.one('stand by', this.CONSUME(said.by))
      },
    },
  ]

  /** 'when' behind a comma: it belongs to the act before it. */
  when = this.RULE('when', () => {
    const token = this.CONSUME(prose.when)
    return this.ACTION(() => this.proseOf(token, 'the case in which it holds', 'tend sheet when running'))
  })

  cautions = this.RULE('cautions', (): Clause => {
    const first = this.OR([
      { ALT: () => this.CONSUME(said.cautions) },
      { ALT: () => this.CONSUME(said.caution) },
    ])
    const counts = [this.SUBRULE(this.count)]
    this.MANY(() => {
      this.CONSUME(said.and)
      counts.push(this.SUBRULE2(this.count))
    })
    return this.ACTION(() => {
      const numbers = counts.filter(count => count !== undefined)
      return numbers.length === counts.length
        ? { kind: 'cautions', numbers, span: this.since(first) }
        : undefined
    })
  })

  answer = this.RULE('answer', (): Clause => {
    const first = this.CONSUME(said.answer)
    const words = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'answer', words, span: this.since(first) }))
  })

  report = this.RULE('report', (): Clause => {
    const first = this.CONSUME(said.report)
    const words = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'report', words, span: this.since(first) }))
  })

  before = this.RULE('before', (): Clause => {
    const first = this.CONSUME(said.before)
    const words = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'before', words, span: this.since(first) }))
  })

  jams = this.RULE('jams', (): Clause => {
    const first = this.CONSUME(said.if)
    this.CONSUME(said.it)
    this.CONSUME(said.jams)
    const words = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'jams', words, span: this.since(first) }))
  })

  aloft = this.RULE('aloft', (): Clause => {
    const token = this.CONSUME(prose.aloft)
    return this.ACTION(() => this.aloftOf(token))
  })

  /** 'port jib halyard', 'free for the stunsail', 'shared by signal halyard and slab line because both are idle'. */
  berth = this.RULE('berth', (): Clause => {
    const first = this.LA(1)
    const side = this.OPTION(() => this.SUBRULE(this.side))
    const berth = this.OR<Unplaced | undefined>({
      MAX_LOOKAHEAD: 1,
      DEF: [
        { ALT: () => this.SUBRULE(this.free), IGNORE_AMBIGUITIES: true },
        { ALT: () => this.SUBRULE(this.shared), IGNORE_AMBIGUITIES: true },
        {
          ALT: () => {
            const line = this.SUBRULE(this.name)
            return { kind: 'line' as const, line }
          },
        },
      ],
    })
    const after = this.OPTION2(() => this.SUBRULE2(this.side))
    return this.ACTION(() => {
      const span = this.since(first)
      return (
        berth && {
          kind: 'berth',
          berth: { side: side ?? after, span, ...withOwnSide(berth, side, after) },
          span,
        }
      )
    })
  })

  free = this.RULE(
    'free',
    (): Unplaced | undefined =>
      this.OR<Unplaced | undefined>([
        {
          ALT: () => {
            this.CONSUME(said.free)
            return { kind: 'free' as const, for: undefined }
          },
        },
        {
          ALT: () => {
            const token = this.CONSUME(prose['free for'])
            return this.ACTION(() => {
              const words = this.proseOf(token, 'what the pin is kept for', 'free for the stunsail halyard')
              return words && { kind: 'free' as const, for: words }
            })
          },
        },
      ]),
    part,
  )

  shared = this.RULE(
    'shared',
    (): Unplaced | undefined => {
      this.CONSUME(said.shared)
      this.CONSUME(said.by)
      const lines = this.SUBRULE(this.lineNames)
      const reason = this.OPTION(() => this.CONSUME(prose.because))
      return this.ACTION(() => {
        const because = reason && this.proseOf(reason, 'a reason', 'because both lines lie idle')
        return { kind: 'shared' as const, lines, because }
      })
    },
    part,
  )

  private one(act: tree.Act, _word: IToken): tree.Act {
    return act
  }

  private aloftOf(token: IToken): Clause {
    const words = this.proseOf(
      token,
      'what the hands do there',
      'aloft 4 hands, gaskets off from the yardarms in',
    )
    if (words === undefined) return undefined
    const span = tokenSpan(this.source, token)
    const counted = /^([0-9]{1,3})\s+hands?\b\s*[,:]?\s*/.exec(words.text)
    if (counted === null) return { kind: 'aloft', count: undefined, words, span }
    const [hands, written = ''] = counted
    const start = words.span.start
    const count = { value: Number(written), written, span: { ...words.span, end: start + written.length } }
    if (hands.length === words.text.length) {
      return this.find(
        error(
          'syntax/prose-missing',
          span,
          `"${token.image}" does not say what the hands do there.`,
          'As in "aloft 4 hands, gaskets off".',
        ),
      )
    }
    return { kind: 'aloft', count, words: { ...words, text: words.text.slice(hands.length) }, span }
  }
}

/** A side after the name, where another stands before it, is the line's own: 'starboard jib sheet port'. */
function withOwnSide(berth: Unplaced, before: tree.Side | undefined, after: tree.Side | undefined): Unplaced {
  if (berth.kind !== 'line' || !before || !after) return berth
  return { ...berth, line: { ...berth.line, words: `${berth.line.words} ${after}` } }
}

/** A berth before its side is known. */
type Unplaced =
  | { readonly kind: 'line'; readonly line: tree.Name }
  | { readonly kind: 'free'; readonly for: tree.Words | undefined }
  | {
      readonly kind: 'shared'
      readonly lines: readonly tree.Name[]
      readonly because: tree.Words | undefined
    }
