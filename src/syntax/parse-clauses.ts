import type { IToken } from 'chevrotain'
import { type End, FiguresParser } from './parse-figures.ts'
import { lengthOnly, part, whole } from './parse-parts.ts'
import { error } from './said.ts'
import { Quoted, said } from './tokens.ts'
import type * as tree from './tree.ts'

type Clause = tree.Clause | undefined

/** The clauses that may be said of anything, and those of masts, spars, stays and sails. */
export abstract class ClausesParser extends FiguresParser {
  like = this.RULE('like', (): Clause => {
    const first = this.CONSUME(said.like)
    const name = this.SUBRULE(this.name)
    return this.ACTION(() => ({ kind: 'like', name, span: this.since(first) }))
  })

  class = this.RULE('class', (): Clause => {
    const name = this.SUBRULE(this.spokenName)
    return this.ACTION(() => ({ kind: 'class', name, span: name.span }))
  })

  at = this.RULE('at', (): Clause => {
    const first = this.CONSUME(said.at)
    const place = this.SUBRULE(this.place)
    return this.ACTION(() => place && { kind: 'at', place, span: this.since(first) })
  })

  on = this.RULE('on', (): Clause => {
    const first = this.CONSUME(said.on)
    const names = this.SUBRULE(this.names)
    return this.ACTION(() => ({ kind: 'on', names, span: this.since(first) }))
  })

  called = this.RULE('called', (): Clause => {
    const first = this.CONSUME(said.called)
    const label = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'called', label, span: this.since(first) }))
  })

  short = this.RULE('short', (): Clause => {
    const first = this.CONSUME(said.short)
    const label = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'short', label, span: this.since(first) }))
  })

  label = this.RULE('label', (): Clause => {
    const first = this.CONSUME(Quoted)
    return this.ACTION(() => ({ kind: 'label', label: this.wordsOf(first), span: this.since(first) }))
  })

  /** 'in m and mm', 'in ft and in': here the small word 'in' may itself be the unit. */
  within = this.RULE('within', (): Clause => {
    const first = this.CONSUME(said.in)
    const names = [this.SUBRULE(this.nameOrInches)]
    this.MANY(() => {
      this.CONSUME(said.and)
      names.push(this.SUBRULE2(this.nameOrInches))
    })
    return this.ACTION(() => ({ kind: 'in', names, span: this.since(first) }))
  })

  nameOrInches = this.RULE(
    'nameOrInches',
    () =>
      this.OR([
        { ALT: () => this.SUBRULE(this.name) },
        {
          ALT: () => {
            const inches = this.CONSUME(said.in)
            return this.ACTION(() => this.nameOf(inches, inches))
          },
        },
      ]),
    part,
  )

  conjectural = this.RULE('conjectural', (): Clause => {
    const first = this.CONSUME(said.conjectural)
    const by = this.OPTION(() => {
      this.CONSUME(said.by)
      return this.SUBRULE(this.words)
    })
    return this.ACTION(() => ({ kind: 'conjectural', by, span: this.since(first) }))
  })

  nicknamed = this.RULE('nicknamed', (): Clause => {
    const first = this.CONSUME(said.nicknamed)
    const names = [this.SUBRULE(this.words)]
    this.MANY(() => {
      this.CONSUME(said.and)
      names.push(this.SUBRULE2(this.words))
    })
    return this.ACTION(() => ({ kind: 'nicknamed', names, span: this.since(first) }))
  })

  by = this.RULE('by', (): Clause => {
    const first = this.CONSUME(said.by)
    const words = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'by', words, span: this.since(first) }))
  })

  numbered = this.RULE('numbered', (): Clause => {
    const first = this.CONSUME(said.numbered)
    const label = this.SUBRULE(this.words)
    return this.ACTION(() => ({ kind: 'numbered', label, span: this.since(first) }))
  })

  /** 'inspected 3 March 2026', of a block; 'due 1 April 2027', of a survey. */
  dayOf = this.RULE('dayOf', (): Clause => {
    const first = this.OR([
      { ALT: () => this.CONSUME(said.inspected) },
      { ALT: () => this.CONSUME(said.due) },
    ])
    const date = this.SUBRULE(this.day)
    return this.ACTION(() => {
      if (date?.kind !== 'date') return undefined
      const kind = first.tokenType === said.due ? 'due' : 'inspected'
      return { ...date, kind, span: this.since(first) }
    })
  })

  stepped = this.RULE('stepped', (): Clause => {
    const first = this.CONSUME(said.stepped)
    const place = this.SUBRULE(this.place)
    return this.ACTION(() => place && { kind: 'stepped', place, span: this.since(first) })
  })

  raked = this.RULE('raked', (): Clause => {
    const first = this.CONSUME(said.raked)
    const figured = this.SUBRULE(this.measure)
    const way = this.OPTION(() =>
      this.OR([{ ALT: () => this.CONSUME(said.aft) }, { ALT: () => this.CONSUME(said.forward) }]),
    )
    return this.ACTION(() => {
      const angle = this.due(figured, ['angle'], way?.image)
      const forward = way?.tokenType === said.forward
      return angle && { kind: 'raked', angle, forward, span: this.since(first) }
    })
  })

  yards = this.RULE('yards', (): Clause => {
    const first = this.CONSUME(said.yards)
    const steps: (tree.Step | undefined)[] = []
    this.AT_LEAST_ONE(() => steps.push(this.SUBRULE(this.step)))
    return this.ACTION(() => (whole(steps) ? { kind: 'yards', steps, span: this.since(first) } : undefined))
  })

  doubled = this.RULE('doubled', (): Clause => {
    const first = this.CONSUME(said.doubled)
    const figured = this.SUBRULE(this.measure)
    return this.ACTION(() => {
      const measure = this.due(figured, lengthOnly)
      return measure && { kind: 'doubled', measure, span: this.since(first) }
    })
  })

  fixed = this.RULE('fixed', (): Clause => {
    const first = this.CONSUME(said.fixed)
    const step = this.SUBRULE(this.step)
    return this.ACTION(() => step && { kind: 'fixed', step, span: this.since(first) })
  })

  /** 'reefs 1.20 m and 2.40 m': how far a running bowsprit is hauled in at each reef. */
  reefs = this.RULE('reefs', (): Clause => {
    const first = this.CONSUME(said.reefs)
    const figures = [this.SUBRULE(this.measure)]
    this.MANY(() => {
      this.CONSUME(said.and)
      figures.push(this.SUBRULE2(this.measure))
    })
    return this.ACTION(() => {
      const measures = figures.map(figured => this.due(figured, lengthOnly))
      return whole(measures) ? { kind: 'reefs', measures, span: this.since(first) } : undefined
    })
  })

  /** 'braces to 35 deg': how sharp a yard goes, from fore and aft. */
  bracesTo = this.RULE('bracesTo', (): Clause => {
    const first = this.CONSUME(said.braces)
    this.CONSUME(said.to)
    const figured = this.SUBRULE(this.measure)
    return this.ACTION(() => {
      const angle = this.due(figured, ['angle'])
      return angle && { kind: 'bracesTo', angle, span: this.since(first) }
    })
  })

  /** 'number 2 canvas', 'number 2 navy flax': what a sail is made of. */
  cloth = this.RULE('cloth', (): Clause => {
    const first = this.CONSUME(said.number)
    const number = this.SUBRULE(this.count)
    const of = this.SUBRULE(this.spokenName)
    return this.ACTION(() => number && { kind: 'cloth', number, of, span: this.since(first) })
  })

  sheeted = this.RULE('sheeted', (): Clause => {
    const first = this.CONSUME(said.sheeted)
    this.CONSUME(said.to)
    const to = this.SUBRULE(this.name)
    return this.ACTION(() => ({ kind: 'sheeted', to, span: this.since(first) }))
  })

  roach = this.RULE('roach', (): Clause => {
    const first = this.CONSUME(said.roach)
    const figured = this.SUBRULE(this.measure)
    return this.ACTION(() => {
      const measure = this.due(figured, lengthOnly)
      return measure && { kind: 'roach', measure, span: this.since(first) }
    })
  })

  cringle = this.RULE('cringle', (): Clause => {
    const first = this.CONSUME(said.cringle)
    const steps: (tree.Step | undefined)[] = []
    this.AT_LEAST_ONE(() => steps.push(this.SUBRULE(this.step)))
    return this.ACTION(() => (whole(steps) ? { kind: 'cringle', steps, span: this.since(first) } : undefined))
  })

  /** 'to gaff end', the end of a lead or the height of a section; 'to be given'. */
  to = this.RULE('to', (): Clause => {
    const first = this.CONSUME(said.to)
    return this.OR<Clause>({
      MAX_LOOKAHEAD: 1,
      DEF: [
        {
          ALT: () => {
            this.CONSUME(said.be)
            this.CONSUME(said.given)
            return this.ACTION(() => ({ kind: 'toBeGiven', span: this.since(first) }))
          },
          IGNORE_AMBIGUITIES: true,
        },
        {
          ALT: () => {
            const place = this.SUBRULE(this.place)
            return this.ACTION(() => place && { kind: 'leadTo', place, span: this.since(first) })
          },
        },
      ],
    })
  })

  /**
   * 'from A to B': from place to place, or along the ship where both ends are a single measure. Of a word of the trade,
   * where it is taken from: 'from memory', 'from "A Word Book, 1890, p. 7"'.
   */
  from = this.RULE('from', (): Clause => {
    const first = this.CONSUME(said.from)
    const start = this.SUBRULE(this.end)
    const finish = this.OPTION(() => {
      this.CONSUME(said.to)
      return this.SUBRULE2(this.end)
    })
    return this.ACTION(() => (finish ? this.stretch(first, start, finish) : this.sourceOf(first, start)))
  })

  private sourceOf(first: IToken, { place }: End): Clause {
    const name = place?.steps.length === 0 ? place.from : undefined
    const span = this.since(first)
    if (name?.quoted) return { kind: 'source', words: { text: name.words, span: name.span }, span }
    if (name?.words.toLowerCase() === 'memory') return { kind: 'source', words: undefined, span }
    const remedy =
      'As in "from 9.40 m to 10.60 m aft"; of a word of the trade, "from memory" or from a work between quotation marks.'
    return this.find(
      error('syntax/unfinished', span, '"from" wants "to" and the other end behind it.', remedy),
    )
  }

  /** One end of a stretch: a place, or a measure whose direction is said with the other end. */
  end = this.RULE(
    'end',
    (): End =>
      this.OR([
        {
          ALT: () => {
            const named = this.SUBRULE(this.placeByName)
            return { place: named, bare: undefined }
          },
        },
        {
          ALT: () => {
            const figured = this.SUBRULE(this.measure)
            const steps: (tree.Step | undefined)[] = []
            const way = this.OPTION(() => {
              const said = this.SUBRULE(this.direction)
              this.MANY({ GATE: this.stepAhead, DEF: () => steps.push(this.SUBRULE(this.step)) })
              return said
            })
            return this.ACTION(() => this.endOf(figured, way, steps))
          },
        },
      ]),
    part,
  )

  placeByName = this.RULE(
    'placeByName',
    () => {
      const first = this.LA(1)
      const from = this.SUBRULE(this.name)
      const steps: (tree.Step | undefined)[] = []
      this.MANY({ GATE: this.stepAhead, DEF: () => steps.push(this.SUBRULE(this.step)) })
      return this.ACTION((): tree.Place | undefined =>
        whole(steps) ? { from, steps, abreast: undefined, span: this.since(first) } : undefined,
      )
    },
    part,
  )

  /** 'from 14.40 m to 16.90 m up', 'from 3.80 m up', said of a spar that hoists. */
  protected hoistsFrom = this.RULE(
    'hoistsFrom',
    (hoists: IToken): Clause => {
      this.CONSUME(said.from)
      const from = this.SUBRULE(this.measure)
      const to = this.OPTION(() => {
        this.CONSUME(said.to)
        return this.SUBRULE2(this.measure)
      })
      this.OPTION2(() => this.CONSUME(said.up))
      return this.ACTION(() => {
        const low = this.due(from, lengthOnly, 'up')
        const high = to && this.due(to, lengthOnly, 'up')
        if (low === undefined || (to !== undefined && high === undefined)) return undefined
        return { kind: 'hoistsFrom', from: low, to: high, span: this.since(hoists) }
      })
    },
    part,
  )
}
