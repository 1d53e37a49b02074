import type { IToken, TokenType } from 'chevrotain'
import { type FigureRead, unitSpellings } from '../measure/index.ts'
import { nearest } from '../text/index.ts'
import { daysIn, monthOf } from './calendar.ts'
import {
  directions,
  type Figured,
  lengthOnly,
  lengthOrShare,
  PartsParser,
  part,
  whole,
} from './parse-parts.ts'
import { error, tokenSpan } from './said.ts'
import { Count, Measure, said } from './tokens.ts'
import type * as tree from './tree.ts'

type Clause = tree.Clause | undefined

/**
 * The clauses that begin with a number: what follows the number tells which clause it is. They are in one file, though long,
 * since they share one beginning and what is made of it.
 */
export abstract class FiguresParser extends PartsParser {
  /** Whether a bare length is a rope's size: in gear and among the lines it is. */
  protected abstract ropesHere(): boolean

  /** Whatever begins with a number: what follows it tells which clause it is. */
  figured = this.RULE('figured', (): Clause => {
    const before = this.LA(0)
    const first = this.OR(this.eachFigure)
    const told = this.OPTION(this.tail)
    return this.ACTION(() => (this.LA(0) === first ? this.bareFigure(first, before) : told))
  })

  private readonly eachFigure = this.anyOf(Measure, Count)
  private readonly tail = {
    GATE: () => this.LA(1).tokenType !== said.to || this.figureAhead(2),
    DEF: () => this.OR2(this.tails),
  }
  private readonly tails = {
    MAX_LOOKAHEAD: 1,
    DEF: [
      {
        ALT: () => this.SUBRULE(this.measureTail, { ARGS: [{ token: this.LA(0), unit: undefined }] }),
        IGNORE_AMBIGUITIES: true,
      },
      { ALT: () => this.SUBRULE(this.nameTail, { ARGS: [this.LA(0)] }) },
      { ALT: () => this.SUBRULE(this.muster, { ARGS: [this.LA(0)] }) },
    ],
  }

  /** What may follow a measure: a direction, 'long', 'wide', 'thick', 'walls', 'round', 'apart', 'each side', 'to ...', 'above ...'. */
  measureTail = this.RULE(
    'measureTail',
    (figured: Figured): Clause =>
      this.OR([
        { ALT: () => this.SUBRULE(this.coords, { ARGS: [figured] }) },
        { ALT: () => this.SUBRULE(this.above, { ARGS: [figured] }) },
        { ALT: () => this.SUBRULE(this.across, { ARGS: [figured] }) },
        { ALT: () => this.sized(figured, 'long', this.CONSUME(said.long)) },
        { ALT: () => this.sized(figured, 'wide', this.CONSUME(said.wide)) },
        { ALT: () => this.sized(figured, 'apart', this.CONSUME(said.apart)) },
        { ALT: () => this.sized(figured, 'walls', this.CONSUME(said.walls)) },
        { ALT: () => this.SUBRULE(this.thick, { ARGS: [figured] }) },
        { ALT: () => this.SUBRULE(this.round, { ARGS: [figured] }) },
        { ALT: () => this.SUBRULE(this.eachSide, { ARGS: [figured] }) },
      ]),
    part,
  )

  /** '6.04 m forward 5.65 m up'; '1.83 m below head'. */
  coords = this.RULE(
    'coords',
    (figured: Figured): Clause => {
      const way = this.SUBRULE(this.direction)
      const steps: (tree.Step | undefined)[] = []
      this.MANY({ GATE: this.stepAhead, DEF: () => steps.push(this.SUBRULE(this.step)) })
      const name = this.OPTION(() => this.SUBRULE(this.name))
      return this.ACTION(() => {
        const step = this.stepOf(figured, way)
        if (name !== undefined) return this.offset(figured, step, way, name)
        const all = [step, ...steps]
        return whole(all) ? { kind: 'coords', steps: all, span: this.since(figured.token) } : undefined
      })
    },
    part,
  )

  above = this.RULE(
    'above',
    (figured: Figured): Clause => {
      this.CONSUME(said.above)
      const name = this.SUBRULE(this.name)
      return this.ACTION(() => {
        const measure = this.due(figured, lengthOnly, `above ${name.words}`)
        return measure && { kind: 'offset', measure, side: 'above', name, span: this.since(figured.token) }
      })
    },
    part,
  )

  /** '2.40 m to 3.20 m out', '0.80 m to 1.60 m starboard'. */
  across = this.RULE(
    'across',
    (figured: Figured): Clause => {
      this.CONSUME(said.to)
      const end = this.SUBRULE(this.measure)
      const way = this.SUBRULE(this.direction)
      return this.ACTION(() => {
        const finish = this.endOf(end, way, [])
        return this.stretch(figured.token, { place: undefined, bare: figured }, finish)
      })
    },
    part,
  )

  eachSide = this.RULE(
    'eachSide',
    (figured: Figured): Clause => {
      this.CONSUME(said.each)
      this.CONSUME(said.side)
      return this.ACTION(() => {
        const measure = this.due(figured, lengthOnly, 'each side')
        return measure && { kind: 'eachSide', measure, span: this.since(figured.token) }
      })
    },
    part,
  )

  /** '264 mm thick'; of a line it is the rope's thickness, and its material may follow. */
  thick = this.RULE(
    'thick',
    (figured: Figured): Clause => {
      this.CONSUME(said.thick)
      const material = this.OPTION(() => this.SUBRULE(this.material))
      return this.ACTION(() => {
        if (this.ropesHere() || material !== undefined) return this.rope(figured, 'thick', material)
        const measure = this.due(figured, lengthOnly, 'thick')
        return measure && { kind: 'thick', measure, span: this.since(figured.token) }
      })
    },
    part,
  )

  /** '3 in round manila': a rope by its circumference. */
  round = this.RULE(
    'round',
    (figured: Figured): Clause => {
      this.CONSUME(said.round)
      const material = this.OPTION(() => this.SUBRULE(this.material))
      return this.ACTION(() => this.rope(figured, 'round', material))
    },
    part,
  )

  /** 'spun polyester', 'wire with spun polyester fall'. */
  material = this.RULE(
    'material',
    () => {
      const first = this.LA(1)
      this.SUBRULE(this.spokenName)
      this.OPTION(() => {
        this.CONSUME(said.with)
        this.SUBRULE2(this.spokenName)
      })
      return this.ACTION(() => this.nameOf(first, this.LA(0)))
    },
    part,
  )

  /** What may follow a number by name: a rope's material, what is counted, a watch, a month. */
  nameTail = this.RULE(
    'nameTail',
    (first: IToken): Clause => {
      const material = this.SUBRULE(this.material)
      return this.OR([
        { ALT: () => this.SUBRULE(this.muster, { ARGS: [first] }) },
        { ALT: () => this.dated(first, material, this.CONSUME(Count)) },
        {
          GATE: () => first.tokenType === Count && this.wayAhead(),
          ALT: () => this.SUBRULE(this.measureTail, { ARGS: [{ token: first, unit: this.LA(0) }] }),
        },
        { ALT: () => this.ACTION(() => this.counted(first, material)) },
      ])
    },
    part,
  )

  /** '14 in all', '1 hand in a watch'. */
  muster = this.RULE(
    'muster',
    (first: IToken): Clause => {
      this.CONSUME(said.in)
      const within = this.SUBRULE(this.spokenName)
      return this.ACTION(() => {
        const count = this.countIfBare(first)
        return count && { kind: 'muster', count, in: within, span: this.since(first) }
      })
    },
    part,
  )

  // --- what they are made into

  protected figureAhead(distance: number): boolean {
    const type = this.LA(distance).tokenType
    return type === Measure || type === Count
  }

  /** Whether a word follows that can only stand behind a measure. */
  private wayAhead(): boolean {
    return behindMeasures.has(this.LA(1).tokenType)
  }

  private bareFigure(first: IToken, before: IToken): Clause {
    const read = first.payload as FigureRead
    if (directions.has(before.tokenType)) return this.noDirection({ token: first, unit: undefined })
    if (read.dimension === undefined) {
      const count = this.countOf(first)
      return count && { kind: 'count', count, of: undefined, span: count.span }
    }
    const figured = { token: first, unit: undefined }
    if (read.dimension === 'length' && this.ropesHere()) return this.rope(figured, undefined, undefined)
    const measure = this.due(figured, ['length', 'mass', 'angle', 'share'])
    return measure && { kind: 'measure', measure, span: measure.span }
  }

  private counted(first: IToken, name: tree.Name): Clause {
    const read = first.payload as FigureRead
    if (read.dimension !== undefined) return this.rope({ token: first, unit: undefined }, undefined, name)
    const unit = this.unitIn(first, name)
    if (unit !== undefined) return this.noUnit(unit, first)
    const count = this.countOf(first)
    return count && { kind: 'count', count, of: name, span: this.since(first) }
  }

  /** The word that stands where a unit is due: like one behind a broken number, or before 'long', 'wide', 'thick' or 'apart'. */
  private unitIn(first: IToken, name: tree.Name): IToken | undefined {
    const [word = '', ...more] = name.words.split(' ')
    const sized = more.length > 0 && /^(?:long|wide|thick|apart)$/i.test(more.at(-1) ?? '')
    const broken = !Number.isInteger((first.payload as FigureRead).value)
    if (!sized && !(broken && nearest(word, unitSpellings, 1).length > 0)) return undefined
    return { ...first, image: word, startOffset: name.span.start }
  }

  private noUnit(unit: IToken, token: IToken): undefined {
    this.due({ token, unit }, lengthOnly)
    return undefined
  }

  private countIfBare(first: IToken): tree.Count | undefined {
    const read = first.payload as FigureRead
    if (read.dimension === undefined) return this.countOf(first)
    const message = `"${read.written}" is a measure, and hands are counted.`
    return this.find(
      error('measure/unit-wrong', tokenSpan(this.source, first), message, 'Leave the unit off.'),
    )
  }

  /** '1 April 2027', where a day is due. */
  protected day = this.RULE(
    'day',
    () => {
      const first = this.CONSUME(Count)
      const month = this.SUBRULE(this.spokenName)
      const year = this.CONSUME2(Count)
      return this.ACTION(() => this.dated(first, month, year))
    },
    part,
  )

  private dated(first: IToken, name: tree.Name, yearToken: IToken): Clause {
    return this.ACTION(() => {
      const day = this.countIfBare(first)
      const year = this.countOf(yearToken)
      if (day === undefined || year === undefined) return undefined
      const month = monthOf(name.words)
      const last = month === undefined ? 0 : daysIn(month, year.value)
      const span = this.since(first)
      if (
        month !== undefined &&
        day.value >= 1 &&
        day.value <= last &&
        year.value >= 1 &&
        year.value <= 9999
      ) {
        return { kind: 'date', day: day.value, month, year: year.value, span }
      }
      const said = this.source.text.slice(span.start, span.end)
      return this.find(
        error('syntax/date', span, `"${said}" is no day of the calendar.`, 'As in "25 November 2026".'),
      )
    })
  }

  private sized(figured: Figured, kind: 'long' | 'wide' | 'apart' | 'walls', _word: IToken): Clause {
    return this.ACTION(() => {
      const measure = this.due(figured, lengthOnly, kind)
      return measure && { kind, measure, span: this.since(figured.token) }
    })
  }

  /** A rope's size; in inches it must be said whether that is the way round or the thickness. */
  private rope(
    figured: Figured,
    told: 'round' | 'thick' | undefined,
    material: tree.Name | undefined,
  ): Clause {
    const size = this.due(figured, lengthOnly, told)
    if (size === undefined) return undefined
    const { unit, written } = figured.token.payload as FigureRead
    if (unit === 'in' && told === undefined) {
      const message = `${written} of rope: say "${written} round" for circumference or "${written} thick" for diameter.`
      return this.find(error('measure/rope-size', size.span, message))
    }
    return { kind: 'rope', size, round: told === 'round', material, span: this.since(figured.token) }
  }

  private offset(figured: Figured, step: tree.Step | undefined, way: IToken, name: tree.Name): Clause {
    if (way.tokenType !== said.below) {
      const message = `"${name.words}" follows "${way.image}" without a breath between.`
      return this.find(error('syntax/comma-missing', name.span, message, 'Put a comma before it.'))
    }
    const measure = step && this.due(figured, lengthOnly)
    return measure && { kind: 'offset', measure, side: 'below', name, span: this.since(figured.token) }
  }

  protected endOf(figured: Figured, way: IToken | undefined, more: readonly (tree.Step | undefined)[]): End {
    if (way === undefined) return { place: undefined, bare: figured }
    const steps = [this.stepOf(figured, way), ...more]
    if (!whole(steps)) return { place: undefined, bare: undefined }
    return {
      place: { from: undefined, steps, abreast: undefined, span: this.since(figured.token) },
      bare: undefined,
    }
  }

  /** A stretch between two ends. Ends of one measure each lie along the ship or across it. */
  protected stretch(first: IToken, start: End, finish: End): Clause {
    if (finish.bare !== undefined) return this.noDirection(finish.bare)
    if (finish.place === undefined) return undefined
    const [towards] = finish.place.steps
    const alone = finish.place.steps.length === 1 && finish.place.from === undefined
    if (start.bare !== undefined) {
      if (towards === undefined) return this.noDirection(start.bare)
      const from = this.due(start.bare, lengthOrShare, towards.direction)
      if (from === undefined) return undefined
      if (alone) return this.extent(first, from, towards.direction, towards)
      const step: tree.Step = { measure: from, direction: towards.direction, span: from.span }
      const place: tree.Place = { from: undefined, steps: [step], abreast: undefined, span: from.span }
      return { kind: 'fromTo', from: place, to: finish.place, span: this.since(first) }
    }
    if (start.place === undefined) return undefined
    const [only] = start.place.steps
    const both = alone && start.place.steps.length === 1 && start.place.from === undefined
    if (both && only && towards && alongShip(only) && alongShip(towards)) {
      return this.extent(first, only.measure, only.direction, towards)
    }
    return { kind: 'fromTo', from: start.place, to: finish.place, span: this.since(first) }
  }

  private noDirection({ token }: Figured): undefined {
    const message = `"${token.image}" wants a direction: aft, forward, up, below, out, port or starboard.`
    return this.find(error('syntax/direction-missing', tokenSpan(this.source, token), message))
  }

  private extent(first: IToken, from: tree.Measure, fromWay: tree.Direction, to: tree.Step): Clause {
    const across = to.direction !== 'aft' && to.direction !== 'forward'
    const side = to.direction === 'port' || to.direction === 'starboard' ? to.direction : undefined
    return {
      kind: 'extent',
      axis: across ? 'out' : 'aft',
      side,
      from,
      to: to.measure,
      fromForward: fromWay === 'forward',
      toForward: to.direction === 'forward',
      span: this.since(first),
    }
  }
}

const alongShip = ({ direction }: tree.Step) => direction === 'aft' || direction === 'forward'

/** Words that can only stand behind a measure, so that a word before them stands where a unit is due. */
const behindMeasures: ReadonlySet<TokenType> = new Set([
  ...[said.aft, said.forward, said.up, said.below, said.down, said.out],
  ...[said.long, said.wide, said.thick, said.apart],
])

/** One end of a stretch. */
export interface End {
  readonly place: tree.Place | undefined
  /** A measure whose direction is said with the other end. */
  readonly bare: Figured | undefined
}
