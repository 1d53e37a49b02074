import type { IToken } from 'chevrotain'
import { openStatement } from './notebook.ts'
import { type Lines, LinesParser } from './parse-lines.ts'
import { part, whole } from './parse-parts.ts'
import { tokenSpan } from './said.ts'
import { Comma, GoesOn, LineEnd, QuotedFirst, said, ToOrder, Word } from './tokens.ts'
import type * as tree from './tree.ts'

/** The statements of every page: entries, and what is set in below them. */
export abstract class StatementsParser extends LinesParser {
  // --- the vessel and her hull

  /** 'waterline 25.00 m, between perpendiculars 25.00 m'; 'stem head 2.30 m forward 5.75 m up'. */
  fact = this.RULE('fact', this.several('fact'))

  // --- masts, spars, stays

  mast = this.RULE('mast', () => this.entry('mast', this.mastLines))

  /** 'top 2.75 m wide 13.40 m up': here 'top' is a name. */
  mastTop = this.RULE('mastTop', () => {
    const depth = this.depth()
    const first = this.CONSUME(said.top)
    let last = first
    this.MANY(() => {
      last = this.CONSUME(Word)
    })
    this.ACTION(() => this.open('section', this.nameOf(first, last)))
    this.SUBRULE(this.restOfLine)
    this.block(this.particularLines)
    this.ACTION(() => this.close(depth))
  })

  /** 'lower mast to 14.00 m up, 320 mm thick'; 'crosstrees 1.45 m wide 21.60 m up'. */
  section = this.RULE('section', () => this.entry('section', this.particularLines))

  private readonly mastLines: Lines = this.linesOf(
    () => this.SUBRULE(this.mastTop),
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.section),
    () => this.SUBRULE(this.otherLine),
  )

  spar = this.RULE('spar', () => this.entry('spar', this.particularLines))

  stay = this.RULE('stay', () => this.entry('stay', this.particularLines))

  // --- sails

  sail = this.RULE('sail', () => this.entry('sail', this.sailLines))

  /** 'tack 2.53 m forward 4.39 m up, head 5.12 m aft 11.27 m up'; 'reef 1.83 m below head'. */
  corner = this.RULE('corner', this.several('corner'))

  private readonly sailLines: Lines = this.linesOf(
    () => this.SUBRULE(this.hang),
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.corner),
    () => this.SUBRULE(this.otherLine),
  )

  // --- gear

  /** 'gear jib' under a sail or a spar. */
  hang = this.RULE('hang', () => {
    const depth = this.depth()
    const first = this.CONSUME(said.gear)
    const name = this.OPTION(() => this.SUBRULE(this.name))
    this.ACTION(() =>
      this.openAt('hang', name, first, 'A gear that is hung up wants its name, as in "gear jib".'),
    )
    this.SUBRULE(this.restOfLine)
    this.block(this.gearLines)
    this.ACTION(() => this.close(depth))
  })

  /** 'fits ...', 'without ...' in a gear: they stand alone. */
  gearParticular = this.RULE('gearParticular', () => {
    const depth = this.depth()
    this.CONSUME(GoesOn)
    const first = this.LA(1)
    this.ACTION(() => this.openAt('particular', undefined, first))
    this.SUBRULE(this.restOfLine)
    this.block(this.particularLines)
    this.ACTION(() => this.close(depth))
  })

  /** A line, or a block: which of them is told by what is said of it. */
  line = this.RULE('line', () => this.entry('line', this.lineLines))

  /** 'with tack single ...': a line that the kit does not have. */
  addedLine = this.RULE('addedLine', () => {
    const depth = this.depth()
    const first = this.CONSUME(said.with)
    const name = this.OPTION(() => this.SUBRULE(this.name))
    const nameless = 'A line that is added wants its name, as in "with tack".'
    this.ACTION(() => this.openAt('line', name, first, nameless, true))
    this.SUBRULE(this.restOfLine)
    this.block(this.lineLines)
    this.ACTION(() => this.close(depth))
  })

  protected readonly gearLines: Lines = this.linesOf(
    () => this.SUBRULE(this.sequence),
    () => this.SUBRULE(this.gearParticular),
    () => this.SUBRULE(this.addedLine),
    () => this.SUBRULE(this.hang),
    () => this.SUBRULE(this.line),
  )

  private readonly lineLines: Lines = this.linesOf(
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.sequence),
    () => this.SUBRULE(this.addedLine),
    () => this.SUBRULE(this.hang),
    () => this.SUBRULE(this.line),
  )

  // --- to set and to douse

  sequence = this.RULE('sequence', () => {
    const depth = this.depth()
    const first = this.CONSUME(ToOrder)
    const name = this.OR([{ ALT: () => this.CONSUME(said.set) }, { ALT: () => this.CONSUME(said.douse) }])
    this.ACTION(() => this.openAt('sequence', this.nameOf(name, name), first))
    this.SUBRULE(this.restOfLine)
    this.block(this.sequenceLines)
    this.ACTION(() => this.close(depth))
  })

  /** An order as it is spoken, and what is done at it. */
  phase = this.RULE('phase', () => {
    const depth = this.depth()
    const order = this.CONSUME(QuotedFirst)
    this.ACTION(() => this.open('phase', this.quotedName(order)))
    this.SUBRULE9(this.restOfPhase)
    this.block(this.phaseLines)
    this.ACTION(() => this.close(depth))
  })

  phaseClause = this.RULE('phaseClause', () => {
    const clause = this.OR<tree.Clause | undefined>(this.phaseClauses)
    this.ACTION(() => this.note(clause))
  })

  /** The clauses of an order, to the end of the line. */
  restOfPhase = this.RULE('restOfPhase', () => {
    this.MANY(this.phaseBreath)
    this.CONSUME(LineEnd)
    this.ACTION(() => this.endLine())
  })

  private readonly phaseBreath = () => this.OR(this.phaseBreaths)
  private readonly phaseBreaths = [
    {
      ALT: () => {
        this.CONSUME(Comma)
        this.OPTION(this.behindPhaseComma)
      },
    },
    { ALT: () => this.SUBRULE2(this.phaseClause) },
  ]
  private readonly behindPhaseComma = () => this.OR2(this.behindPhaseCommas)
  private readonly behindPhaseCommas = [
    { ALT: () => this.SUBRULE(this.phaseClause) },
    { ALT: () => this.SUBRULE(this.afterwards) },
  ]

  /** 'tend sheet, when running': a case that stands behind a comma belongs to the act before it. */
  afterwards = this.RULE('afterwards', () => {
    const words = this.SUBRULE(this.when)
    this.ACTION(() => this.noteWhen(words))
  })

  private readonly phaseClauses = {
    MAX_LOOKAHEAD: 1,
    DEF: [
      { ALT: () => this.SUBRULE(this.act) },
      { ALT: () => this.SUBRULE(this.until) },
      { ALT: () => this.SUBRULE(this.mind) },
      { ALT: () => this.SUBRULE(this.cautions) },
      { ALT: () => this.SUBRULE(this.answer) },
      { ALT: () => this.SUBRULE(this.report) },
      { ALT: () => this.SUBRULE(this.aloft) },
      { ALT: () => this.SUBRULE(this.before) },
      { ALT: () => this.SUBRULE(this.jams) },
      { ALT: () => this.SUBRULE(this.allow) },
      { ALT: () => this.SUBRULE(this.because) },
      { ALT: () => this.SUBRULE(this.conjectural) },
    ],
  }

  private readonly sequenceLines: Lines = this.linesOf(
    () => this.SUBRULE(this.phase),
    () => this.SUBRULE(this.phaseParticular),
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.otherLine),
  )

  private readonly phaseLines: Lines = this.linesOf(
    () => this.SUBRULE(this.phaseParticular),
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.otherLine),
  )

  /** A line set in below an order, and anything set in below that. */
  phaseParticular = this.RULE('phaseParticular', () => {
    this.OR(this.phaseParticulars)
    this.block(this.phaseLines)
  })

  private readonly phaseParticulars = [
    {
      ALT: () => {
        this.CONSUME(GoesOn)
        this.SUBRULE(this.restOfPhase)
      },
    },
    {
      ALT: () => {
        this.SUBRULE(this.phaseClause)
        this.SUBRULE2(this.restOfPhase)
      },
    },
  ]

  // --- rails, pins, deck, stations, labels

  rail = this.RULE('rail', () => this.entry('rail', this.particularLines))

  /** '7 port jib halyard, starboard flying jib halyard'; '2 to 4 free'. */
  pins = this.RULE('pins', () => {
    const depth = this.depth()
    const first = this.LA(1)
    const from = this.SUBRULE(this.count)
    const to = this.OPTION(() => {
      this.CONSUME(said.to)
      return { count: this.SUBRULE2(this.count) }
    })
    this.ACTION(() => this.openPins(first, from, to === undefined ? from : to.count))
    this.MANY(() =>
      this.OR({
        MAX_LOOKAHEAD: 1,
        DEF: [
          { ALT: () => this.CONSUME(Comma) },
          {
            ALT: () => {
              const berth = this.SUBRULE(this.berth)
              this.ACTION(() => this.note(berth))
            },
            IGNORE_AMBIGUITIES: true,
          },
          { ALT: () => this.SUBRULE(this.clause) },
        ],
      }),
    )
    this.CONSUME(LineEnd)
    this.ACTION(() => this.endLine())
    this.block(this.particularLines)
    this.ACTION(() => this.close(depth))
  })

  deckThing = this.RULE('deckThing', () => this.entry('deckThing', this.particularLines))

  station = this.RULE('station', () => this.entry('station', this.particularLines))

  /** 'every clewline "Geitau"'; 'fore topsail buntline short "F t bunt"'. */
  labelled = this.RULE('labelled', () => this.ofLine('label'))

  /** 'every royal halyard', on the page of what is lifted. */
  liftedLine = this.RULE('liftedLine', () => this.ofLine('lifted'))

  /** 'fore royal halyard, worn, "chafed at the sheave", due 1 April 2027'. */
  surveyed = this.RULE('surveyed', () => this.ofLine('surveyed'))

  /** 'clewline "Geitau" from memory'; '"Hoist away." "Heiß auf!" from memory'. */
  term = this.RULE('term', () => this.entry('term', this.particularLines))

  // --- canvas

  /** 'topsail breeze, every course and every topsail, 1 reef in spanker'; more may be set in below. */
  sailPlan = this.RULE('sailPlan', () => {
    const depth = this.depth()
    const name = this.SUBRULE(this.name)
    this.ACTION(() => this.open('canvas', name))
    this.SUBRULE(this.restOfPlan)
    this.block(this.planLines)
    this.ACTION(() => this.close(depth))
  })

  /** Sails, behind a comma, or a clause, to the end of the line. */
  restOfPlan = this.RULE('restOfPlan', () => {
    this.MANY(() =>
      this.OR([
        {
          ALT: () => {
            this.CONSUME(Comma)
            this.OPTION(() => this.SUBRULE(this.ofPlan))
          },
        },
        { ALT: () => this.SUBRULE2(this.clause) },
      ]),
    )
    this.CONSUME(LineEnd)
    this.ACTION(() => this.endLine())
  })

  ofPlan = this.RULE('ofPlan', () =>
    this.OR({
      MAX_LOOKAHEAD: 1,
      DEF: [
        { ALT: () => this.SUBRULE(this.carries), IGNORE_AMBIGUITIES: true },
        { ALT: () => this.SUBRULE(this.clause) },
      ],
    }),
  )

  carries = this.RULE('carries', () => {
    const first = this.LA(1)
    const sails = [this.SUBRULE(this.carriedSail)]
    this.MANY(() => {
      this.CONSUME(said.and)
      sails.push(this.SUBRULE2(this.carriedSail))
    })
    this.ACTION(() =>
      this.note(whole(sails) ? { kind: 'carries', sails, span: this.since(first) } : undefined),
    )
  })

  /** 'fore course', 'every topsail', '2 reefs in mainsail'. */
  carriedSail = this.RULE(
    'carriedSail',
    (): tree.CarriedSail | undefined => {
      const reefs = this.OPTION(() => {
        const count = this.SUBRULE(this.count)
        this.OR([{ ALT: () => this.CONSUME(said.reefs) }, { ALT: () => this.CONSUME(said.reef) }])
        this.CONSUME(said.in)
        return { count }
      })
      const name = this.SUBRULE(this.name)
      return this.ACTION(() =>
        reefs !== undefined && reefs.count === undefined ? undefined : { name, reefs: reefs?.count },
      )
    },
    part,
  )

  /** More of what a plan carries, on a line set in below it. */
  planLine = this.RULE('planLine', () => {
    this.OPTION(() => this.CONSUME(GoesOn))
    this.OPTION2(() => this.SUBRULE(this.ofPlan))
    this.SUBRULE(this.restOfPlan)
    this.block(this.particularLines)
  })

  private readonly planLines: Lines = this.linesOf(
    () => this.SUBRULE(this.planLine),
    () => this.SUBRULE(this.otherLine),
  )

  private ofLine(kind: 'label' | 'lifted' | 'surveyed'): void {
    const depth = this.depth()
    const name = this.SUBRULE9(this.lineName)
    this.ACTION(() => this.open(kind, name))
    this.SUBRULE9(this.restOfLine)
    this.block(this.particularLines)
    this.ACTION(() => this.close(depth))
  }

  private openPins(first: IToken, from: tree.Count | undefined, to: tree.Count | undefined): void {
    const pins = from === undefined || to === undefined ? undefined : { from, to }
    this.onLine = openStatement(this.notebook, {
      kind: 'pins',
      name: undefined,
      span: tokenSpan(this.source, first),
      pins,
    })
    if (pins === undefined) this.doubt()
  }

  /** Several statements on one line: behind a comma a name begins the next of them. */
  private several(kind: 'corner' | 'fact'): () => void {
    const breaths = this.breaths(() => {
      const next = this.SUBRULE(this.spokenName)
      this.ACTION(() => this.openNext(kind, next))
    })
    return () => {
      const depth = this.depth()
      const name = this.SUBRULE9(this.name)
      this.ACTION(() => this.open(kind, name))
      breaths()
      this.block(this.particularLines)
      this.ACTION(() => this.close(depth))
    }
  }
}
