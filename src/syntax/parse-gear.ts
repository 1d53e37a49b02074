import type { IToken } from 'chevrotain'
import { ClausesParser } from './parse-clauses.ts'
import { lengthOnly, part, whole } from './parse-parts.ts'
import { error, tokenSpan } from './said.ts'
import { prose, RuleName, said, Word } from './tokens.ts'
import type * as tree from './tree.ts'

type Clause = tree.Clause | undefined

/** The clauses of gear and lines, of rails, deck and stations, and those that end in prose. A rule
 * for each, so the file is long. */
export abstract class GearParser extends ClausesParser {
  // --- gear and lines

  /** 'fits square sail on hoisting yard', 'fits gaff topsail on topmast over gaff'. */
  fits = this.RULE('fits', (): Clause => {
    const first = this.CONSUME(said.fits)
    const names = [this.SUBRULE(this.name)]
    this.MANY(() => {
      this.OR([
        { ALT: () => this.CONSUME(said.on) },
        { ALT: () => this.CONSUME(said.or) },
        { ALT: () => this.CONSUME(said.and) },
        { ALT: () => this.CONSUME(said.over) },
        { ALT: () => this.CONSUME(said.without) },
      ])
      names.push(this.SUBRULE2(this.name))
    })
    return this.ACTION(() => ({ kind: 'fits', names, span: this.since(first) }))
  })

  /** 'clews shackled to foot yard', 'luff hooped to mast', 'luff hanked to stay', 'luff laced to mast'. */
  shackled = this.RULE('shackled', (): Clause => {
    const first = this.OR([
      { ALT: () => this.CONSUME(said.shackled) },
      { ALT: () => this.CONSUME(said.hooped) },
      { ALT: () => this.CONSUME(said.hanked) },
      { ALT: () => this.CONSUME(said.laced) },
    ])
    this.CONSUME(said.to)
    const to = this.SUBRULE(this.name)
    return this.ACTION(() => {
      const by = first.image.toLowerCase() as tree.Fastening
      return { kind: 'shackled', by, to, span: this.since(first) }
    })
  })

  without = this.RULE('without', (): Clause => {
    const first = this.CONSUME(said.without)
    const names = this.SUBRULE(this.names)
    return this.ACTION(() => ({ kind: 'without', names, span: this.since(first) }))
  })

  pair = this.RULE('pair', (): Clause => {
    const first = this.CONSUME(said.pair)
    return this.ACTION(() => ({ kind: 'pair', span: this.since(first) }))
  })

  single = this.RULE('single', (): Clause => {
    const first = this.CONSUME(said.single)
    return this.ACTION(() => ({ kind: 'single', span: this.since(first) }))
  })

  /** 'rove single', 'rove tye and runner and luff', 'rove gun below'. */
  rove = this.RULE('rove', (): Clause => {
    const first = this.CONSUME(said.rove)
    const parts = [this.SUBRULE(this.purchase)]
    this.MANY(() => {
      this.CONSUME(said.and)
      parts.push(this.SUBRULE2(this.purchase))
    })
    const below = this.OPTION(() => this.CONSUME(said.below))
    return this.ACTION(() => ({ kind: 'rove', parts, below: below !== undefined, span: this.since(first) }))
  })

  /** A tackle's name, 'single' too although it is a small word, and which way it is rove: 'luff to advantage'. */
  purchase = this.RULE(
    'purchase',
    () => {
      const first = this.LA(1)
      const name = this.OR([
        { ALT: () => this.SUBRULE(this.name) },
        {
          ALT: () => {
            const single = this.CONSUME(said.single)
            return this.ACTION(() => this.nameOf(single, single))
          },
        },
      ])
      const way = this.OPTION({
        GATE: () => /^(dis)?advantage$/i.test(this.LA(2).image),
        DEF: () => {
          this.CONSUME(said.to)
          return this.CONSUME(Word)
        },
      })
      return this.ACTION(() => (way ? this.nameOf(first, way) : name))
    },
    part,
  )

  /** 'hoists yard'; of a spar, 'hoists from 14.40 m to 16.90 m up'. */
  hoists = this.RULE('hoists', (): Clause => {
    const first = this.CONSUME(said.hoists)
    return this.OR<Clause>([
      { ALT: () => this.SUBRULE(this.hoistsFrom, { ARGS: [first] }) },
      { ALT: () => this.SUBRULE(this.deed, { ARGS: [first] }) },
    ])
  })

  does = this.RULE('does', (): Clause => {
    const first = this.OR([
      { ALT: () => this.CONSUME(said.cocks) },
      { ALT: () => this.CONSUME(said.tops) },
      { ALT: () => this.CONSUME(said.spreads) },
      { ALT: () => this.CONSUME(said.draws) },
      { ALT: () => this.CONSUME(said.lowers) },
      { ALT: () => this.CONSUME(said.raises) },
      { ALT: () => this.CONSUME(said.gathers) },
      { ALT: () => this.CONSUME(said.brings) },
      { ALT: () => this.CONSUME(said.swings) },
      { ALT: () => this.CONSUME(said.steadies) },
    ])
    return this.SUBRULE(this.deed, { ARGS: [first] })
  })

  /** What a line works on, which way, and where. */
  deed = this.RULE(
    'deed',
    (verb: IToken): Clause => {
      const object = this.SUBRULE(this.name)
      const way = this.OPTION(() =>
        this.OR([{ ALT: () => this.SUBRULE(this.direction) }, { ALT: () => this.CONSUME(said.in) }]),
      )
      const on = this.OPTION2(() => {
        this.CONSUME(said.on)
        return this.SUBRULE2(this.name)
      })
      return this.ACTION(() => {
        const direction = way?.image.toLowerCase() as tree.Direction | 'in' | undefined
        return {
          kind: 'deed',
          deed: verb.image.toLowerCase() as tree.Deed,
          object,
          direction,
          on,
          span: this.since(verb),
        }
      })
    },
    part,
  )

  /** 'against clewline and other sheet'; 'also against', 'not against'. */
  against = this.RULE('against', (): Clause => {
    const first = this.LA(1)
    const mode = this.OPTION(() =>
      this.OR([{ ALT: () => this.CONSUME(said.also) }, { ALT: () => this.CONSUME(said.not) }]),
    )
    this.CONSUME(said.against)
    const lines = this.SUBRULE(this.references)
    return this.ACTION(() => {
      const told = (mode?.image.toLowerCase() ?? 'only') as 'only' | 'also' | 'not'
      return { kind: 'against', mode: told, lines, span: this.since(first) }
    })
  })

  references = this.RULE(
    'references',
    () => {
      const references = [this.SUBRULE(this.reference)]
      this.MANY(() => {
        this.CONSUME(said.and)
        references.push(this.SUBRULE2(this.reference))
      })
      return references
    },
    part,
  )

  /** 'through lead block then yard block to bunt cringle'. */
  through = this.RULE('through', (): Clause => {
    const first = this.CONSUME(said.through)
    const places = [this.SUBRULE(this.place)]
    this.MANY(() => {
      this.CONSUME(said.then)
      places.push(this.SUBRULE2(this.place))
    })
    const to = this.OPTION(() => {
      this.CONSUME(said.to)
      return { place: this.SUBRULE3(this.place) }
    })
    return this.ACTION(() => {
      if (!whole(places) || (to !== undefined && to.place === undefined)) return undefined
      return { kind: 'through', places, to: to?.place, span: this.since(first) }
    })
  })

  travels = this.RULE('travels', (): Clause => {
    const first = this.CONSUME(said.travels)
    const figured = this.SUBRULE(this.measure)
    return this.ACTION(() => {
      const measure = this.due(figured, lengthOnly)
      return measure && { kind: 'travels', measure, span: this.since(first) }
    })
  })

  /** 'shifts to weather': made fast anew on the other side at every tack. */
  shifts = this.RULE('shifts', (): Clause => {
    const first = this.CONSUME(said.shifts)
    this.CONSUME(said.to)
    const side = this.OR([{ ALT: () => this.CONSUME(said.weather) }, { ALT: () => this.CONSUME(said.lee) }])
    return this.ACTION(() => {
      const to = side.image.toLowerCase() as 'weather' | 'lee'
      return { kind: 'shifts', to, span: this.since(first) }
    })
  })

  cut = this.RULE('cut', (): Clause => {
    const first = this.CONSUME(said.cut)
    const figured = this.SUBRULE(this.measure)
    return this.ACTION(() => {
      const measure = this.due(figured, lengthOnly)
      return measure && { kind: 'cut', measure, span: this.since(first) }
    })
  })

  /** 'middled with sheet': one rope, made fast at its middle, is both lines. */
  middled = this.RULE('middled', (): Clause => {
    const first = this.CONSUME(said.middled)
    this.CONSUME(said.with)
    const name = this.SUBRULE(this.name)
    return this.ACTION(() => ({ kind: 'middled', with: name, span: this.since(first) }))
  })

  /** 'whipped "red over white"', 'coloured "tan"': how a rope is known from its fellows. */
  markedRope = this.RULE('markedRope', (): Clause => {
    const first = this.OR([
      { ALT: () => this.CONSUME(said.whipped) },
      { ALT: () => this.CONSUME(said.coloured) },
    ])
    const label = this.SUBRULE(this.words)
    return this.ACTION(() => {
      const kind = first.tokenType === said.whipped ? 'whipped' : 'coloured'
      return { kind, label, span: this.since(first) }
    })
  })

  // --- rails, deck and stations

  sides = this.RULE('sides', (): Clause => {
    const first = this.OR([
      { ALT: () => this.CONSUME(said.port) },
      { ALT: () => this.CONSUME(said.starboard) },
    ])
    this.OPTION(() => {
      this.CONSUME(said.and)
      this.OR2([{ ALT: () => this.CONSUME2(said.port) }, { ALT: () => this.CONSUME2(said.starboard) }])
    })
    return this.ACTION(() => {
      if (this.LA(0).tokenType !== first.tokenType) return { kind: 'sides', span: this.since(first) }
      const message = `"${first.image}" alone says no place: a thing on both sides is "port and starboard".`
      const remedy = `A thing on one side says how far, as in "2.80 m ${first.image}".`
      return this.find(error('syntax/one-side', tokenSpan(this.source, first), message, remedy))
    })
  })

  athwart = this.RULE('athwart', (): Clause => {
    const first = this.CONSUME(said.athwart)
    return this.ACTION(() => ({ kind: 'athwart', span: this.since(first) }))
  })

  around = this.RULE('around', (): Clause => {
    const first = this.CONSUME(said.round)
    const name = this.SUBRULE(this.name)
    return this.ACTION(() => ({ kind: 'round', name, span: this.since(first) }))
  })

  marked = this.RULE('marked', (): Clause => {
    const first = this.CONSUME(said.marked)
    const code = this.SUBRULE(this.name)
    return this.ACTION(() => ({ kind: 'marked', code, span: this.since(first) }))
  })

  /** 'pin 5', where a single line is belayed. */
  pinNumber = this.RULE('pinNumber', (): Clause => {
    const first = this.CONSUME(said.pin)
    const count = this.SUBRULE(this.count)
    return this.ACTION(
      () => count && { kind: 'count', count, of: this.nameOf(first, first), span: this.since(first) },
    )
  })

  top = this.RULE('top', (): Clause => {
    const first = this.CONSUME(said.top)
    const step = this.SUBRULE(this.step)
    return this.ACTION(() => step && { kind: 'top', step, span: this.since(first) })
  })

  works = this.RULE('works', (): Clause => {
    const first = this.CONSUME(said.works)
    const names = this.SUBRULE(this.names)
    return this.ACTION(() => ({ kind: 'works', names, span: this.since(first) }))
  })

  takes = this.RULE('takes', (): Clause => {
    const first = this.CONSUME(said.takes)
    const names = this.SUBRULE(this.names)
    return this.ACTION(() => ({ kind: 'takes', names, span: this.since(first) }))
  })

  manned = this.RULE('manned', (): Clause => {
    const first = this.CONSUME(said.manned)
    this.CONSUME(said.by)
    const names = this.SUBRULE(this.names)
    return this.ACTION(() => ({ kind: 'mannedBy', names, span: this.since(first) }))
  })

  /** 'allow belay/two-on-a-pin', with the reason behind it. */
  allow = this.RULE('allow', (): Clause => {
    const first = this.CONSUME(said.allow)
    const name = this.CONSUME(RuleName)
    return this.ACTION(() => {
      const check = { text: name.image, span: tokenSpan(this.source, name) }
      return { kind: 'allow', check, span: this.since(first) }
    })
  })

  for = this.RULE('for', (): Clause => {
    const first = this.CONSUME(said.for)
    const names = this.SUBRULE(this.lineNames)
    return this.ACTION(() => ({ kind: 'for', names, span: this.since(first) }))
  })

  /** Names of lines, each with its side where it has one: 'port jib halyard and fore topsail sheet starboard'. */
  lineNames = this.RULE(
    'lineNames',
    () => {
      const names = [this.SUBRULE(this.lineName)]
      this.MANY(() => {
        this.CONSUME(said.and)
        names.push(this.SUBRULE2(this.lineName))
      })
      return names
    },
    part,
  )

  lineName = this.RULE(
    'lineName',
    () => {
      const first = this.LA(1)
      this.OPTION(() => this.SUBRULE(this.side))
      const name = this.SUBRULE(this.name)
      this.OPTION2(() => this.SUBRULE2(this.side))
      return this.ACTION(() => (name.quoted ? name : this.nameOf(first, this.LA(0))))
    },
    part,
  )

  side = this.RULE(
    'side',
    () => {
      const token = this.OR([
        { ALT: () => this.CONSUME(said.port) },
        { ALT: () => this.CONSUME(said.starboard) },
      ])
      return this.ACTION(() => token.image.toLowerCase() as tree.Side)
    },
    part,
  )

  // --- what ends in prose

  answered = this.RULE('answered', (): Clause => {
    const token = this.CONSUME(prose['answered by'])
    return this.ACTION(() => {
      const by = this.proseOf(token, 'what answers it', `answered by the sail's own pull`)
      return by && { kind: 'answered', by, span: tokenSpan(this.source, token) }
    })
  })

  because = this.RULE('because', (): Clause => {
    const token = this.CONSUME(prose.because)
    return this.ACTION(() => {
      const words = this.proseOf(token, 'a reason', 'because both lines lie idle')
      return words && { kind: 'because', words, span: tokenSpan(this.source, token) }
    })
  })

  until = this.RULE('until', (): Clause => {
    const token = this.CONSUME(prose.until)
    return this.ACTION(() => {
      const words = this.proseOf(token, 'what is waited for', 'until the leeches are taut')
      return words && { kind: 'until', words, span: tokenSpan(this.source, token) }
    })
  })

  mind = this.RULE('mind', (): Clause => {
    const token = this.CONSUME(prose.mind)
    return this.ACTION(() => {
      const words = this.proseOf(token, 'what to take care of', 'mind nobody stands under the yard')
      return words && { kind: 'mind', words, span: tokenSpan(this.source, token) }
    })
  })

  /** The prose of a token, or a finding where there is none. */
  protected proseOf(token: IToken, wants: string, example: string): tree.Words | undefined {
    const words = this.wordsOf(token)
    if (words.text !== '') return words
    const message = `"${token.image.trim()}" wants ${wants} behind it, on the same line.`
    return this.find(
      error('syntax/prose-missing', tokenSpan(this.source, token), message, `As in "${example}".`),
    )
  }
}
