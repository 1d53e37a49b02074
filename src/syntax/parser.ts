import { type IRecognitionException, type IToken, isRecognitionException } from 'chevrotain'
import type { Finding } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import { listParted, type Stumble } from './messages.ts'
import { emptyNotebook, finish, openPage } from './notebook.ts'
import type { Lines } from './parse-lines.ts'
import type { ParserOptions } from './parse-parts.ts'
import { StatementsParser } from './parse-statements.ts'
import { error, tokenSpan } from './said.ts'
import { LineEnd, page, RuleName, said } from './tokens.ts'
import type * as tree from './tree.ts'

/** What was read: the pages, what the rules found amiss, and where the order of words was wrong. */
export interface ReadPages {
  readonly pages: readonly tree.Page[]
  readonly findings: readonly Finding[]
  readonly stumbles: readonly Stumble[]
}

/** The pages of a rig file, and the parser as a whole. */
export class RigParser extends StatementsParser {
  constructor(options: ParserOptions = {}) {
    super(options)
    this.performSelfAnalysis()
  }

  /** Reads one file's words. The parser keeps nothing of it that the next reading would see. */
  read(source: Source, tokens: IToken[]): ReadPages {
    this.source = source
    this.findings = []
    this.notebook = emptyNotebook()
    this.onLine = undefined
    this.input = tokens
    this.readBook()
    const stumbles = this.errors.map(({ token, context }) => {
      const at = tokens.indexOf(token)
      return { token, before: tokens.at(at - 1), rules: context.ruleStack, list: listParted(tokens, at) }
    })
    return { pages: finish(this.notebook), findings: this.findings, stumbles }
  }

  /** Every rule mends itself at the line's end; should one not, what is read by then still stands. */
  private readBook(): void {
    try {
      this.book()
    } catch (stumble) {
      if (!isRecognitionException(stumble as Error)) throw stumble
      this.errors = [...this.errors, stumble as IRecognitionException]
    }
  }

  book = this.RULE('book', () => {
    this.MANY(() =>
      this.OR([
        { ALT: () => this.SUBRULE(this.editionPage) },
        { ALT: () => this.SUBRULE(this.bringPage) },
        { ALT: () => this.SUBRULE(this.vesselPage) },
        { ALT: () => this.SUBRULE(this.hullPage) },
        { ALT: () => this.SUBRULE(this.mastsPage) },
        { ALT: () => this.SUBRULE(this.sparsPage) },
        { ALT: () => this.SUBRULE(this.staysPage) },
        { ALT: () => this.SUBRULE(this.sailsPage) },
        { ALT: () => this.SUBRULE(this.linesPage) },
        { ALT: () => this.SUBRULE(this.railsPage) },
        { ALT: () => this.SUBRULE(this.deckPage) },
        { ALT: () => this.SUBRULE(this.stationsPage) },
        { ALT: () => this.SUBRULE(this.labelsPage) },
        { ALT: () => this.SUBRULE(this.gearPage) },
        { ALT: () => this.SUBRULE(this.belayPage) },
        { ALT: () => this.SUBRULE(this.setPage) },
        { ALT: () => this.SUBRULE(this.allowPage) },
        { ALT: () => this.SUBRULE(this.liftedPage) },
        { ALT: () => this.SUBRULE(this.surveyPage) },
        { ALT: () => this.SUBRULE(this.glossaryPage) },
        { ALT: () => this.SUBRULE(this.canvasPage) },
      ]),
    )
  })

  editionPage = this.RULE('editionPage', () => {
    this.turnTo('edition', this.CONSUME(page.edition))
    this.restOfPage(this.particularLines)
  })

  /** 'bring in "our-gear.rig"', 'bring in standard gear'. */
  bringPage = this.RULE('bringPage', () => {
    this.turnTo('bringIn', this.CONSUME(page.bring))
    this.SUBRULE(this.broughtIn)
    this.restOfPage(this.particularLines)
  })

  broughtIn = this.RULE('broughtIn', () => {
    this.CONSUME(said.in)
    this.OR([
      {
        ALT: () => {
          const label = this.SUBRULE(this.label)
          this.ACTION(() => this.note(label))
        },
      },
      { ALT: () => this.nameThePage(this.SUBRULE(this.spokenName)) },
    ])
  })

  vesselPage = this.RULE('vesselPage', () => {
    this.turnTo('vessel', this.CONSUME(page.vessel))
    this.pageName(
      'This page wants the name of the vessel, as in "vessel Grey Plover"; a name with a word such as "out" or "and" in it stands between quotes.',
    )
    this.restOfPage(this.factLines)
  })

  hullPage = this.RULE('hullPage', () => {
    this.turnTo('hull', this.CONSUME(page.hull))
    this.restOfPage(this.factLines)
  })

  mastsPage = this.RULE('mastsPage', () => {
    this.turnTo('masts', this.CONSUME(page.masts))
    this.restOfPage(this.entries(() => this.SUBRULE(this.mast)))
  })

  sparsPage = this.RULE('sparsPage', () => {
    this.turnTo('spars', this.CONSUME(page.spars))
    this.restOfPage(this.entries(() => this.SUBRULE(this.spar)))
  })

  staysPage = this.RULE('staysPage', () => {
    this.turnTo('stays', this.CONSUME(page.stays))
    this.restOfPage(this.entries(() => this.SUBRULE(this.stay)))
  })

  sailsPage = this.RULE('sailsPage', () => {
    this.turnTo('sails', this.CONSUME(page.sails))
    this.restOfPage(this.entries(() => this.SUBRULE(this.sail)))
  })

  linesPage = this.RULE('linesPage', () => {
    this.turnTo('lines', this.CONSUME(page.lines))
    this.restOfPage(this.entries(() => this.SUBRULE(this.line)))
  })

  railsPage = this.RULE('railsPage', () => {
    this.turnTo('rails', this.CONSUME(page.rails))
    this.restOfPage(this.entries(() => this.SUBRULE(this.rail)))
  })

  deckPage = this.RULE('deckPage', () => {
    this.turnTo('deck', this.CONSUME(page.deck))
    this.restOfPage(this.entries(() => this.SUBRULE(this.deckThing)))
  })

  stationsPage = this.RULE('stationsPage', () => {
    this.turnTo('stations', this.CONSUME(page.stations))
    this.restOfPage(this.entries(() => this.SUBRULE(this.station)))
  })

  labelsPage = this.RULE('labelsPage', () => {
    this.turnTo('labels', this.CONSUME(page.labels))
    this.restOfPage(this.entries(() => this.SUBRULE(this.labelled)))
  })

  /** 'lifted because she is laid up from November to March', and the lines that are sent down. */
  liftedPage = this.RULE('liftedPage', () => {
    this.turnTo('lifted', this.CONSUME(page.lifted))
    this.restOfPage(this.entries(() => this.SUBRULE(this.liftedLine)))
  })

  /** 'survey 14 October 2026 by "the bosun"', and what was found line by line. */
  surveyPage = this.RULE('surveyPage', () => {
    this.turnTo('survey', this.CONSUME(page.survey))
    this.restOfPage(this.entries(() => this.SUBRULE(this.surveyed)))
  })

  /** 'glossary in German', and its terms. */
  glossaryPage = this.RULE('glossaryPage', () => {
    this.turnTo('glossary', this.CONSUME(page.glossary))
    this.restOfPage(this.entries(() => this.SUBRULE(this.term)))
  })

  /** 'canvas', and the working sail plans: what she carries under each name. */
  canvasPage = this.RULE('canvasPage', () => {
    this.turnTo('canvas', this.CONSUME(page.canvas))
    this.restOfPage(this.entries(() => this.SUBRULE(this.sailPlan)))
  })

  gearPage = this.RULE('gearPage', () => {
    this.turnTo('gear', this.CONSUME(page.gear))
    this.pageName('A page of gear wants its name, as in "gear square topsail".')
    this.restOfPage(this.gearLines)
  })

  /** 'belay on fore rail' and its pins; 'belay foresail sheet to fore sheet cleat'. */
  belayPage = this.RULE('belayPage', () => {
    this.turnTo('belay', this.CONSUME(page.belay))
    this.OPTION(() =>
      this.OR([{ ALT: () => this.SUBRULE(this.belayedOn) }, { ALT: () => this.SUBRULE(this.belayed) }]),
    )
    this.restOfPage(this.pinLines)
  })

  belayedOn = this.RULE('belayedOn', () => {
    this.CONSUME(said.on)
    const rail = this.SUBRULE(this.name)
    this.ACTION(() => {
      const current = this.notebook.pages.at(-1)
      if (current !== undefined) current.kind = 'belayOn'
      this.nameThePage(rail)
    })
  })

  belayed = this.RULE('belayed', () => {
    const line = this.SUBRULE(this.lineName)
    this.nameThePage(line)
  })

  /** 'set mainsail then foresail then jib'. */
  setPage = this.RULE('setPage', () => {
    this.turnTo('set', this.CONSUME(page.set))
    this.SUBRULE(this.succession)
    this.block(this.successionLines)
  })

  succession = this.RULE('succession', () => {
    this.OPTION(() => this.nameInOrder(this.SUBRULE(this.name)))
    this.MANY(() => this.SUBRULE(this.next))
    this.CONSUME(LineEnd)
    this.ACTION(() => this.endLine())
  })

  next = this.RULE('next', () => {
    this.CONSUME(said.then)
    this.nameInOrder(this.SUBRULE(this.name))
  })

  allowPage = this.RULE('allowPage', () => {
    const opening = this.CONSUME(page.allow)
    this.turnTo('allow', opening)
    const rule = this.OPTION(() => this.CONSUME(RuleName))
    this.ACTION(() => {
      if (rule !== undefined) return this.nameThePage(this.nameOf(rule, rule))
      const message = 'This page wants the name of the check, as in "allow belay/halyard-not-at-end".'
      this.find(error('syntax/name-missing', tokenSpan(this.source, opening), message))
      return this.doubt()
    })
    this.restOfPage(this.particularLines)
  })

  // --- how pages are made up; these are no rules, but stand within them

  private readonly factLines = this.entries(() => this.SUBRULE(this.fact))

  private readonly pinLines: Lines = this.linesOf(
    () => this.SUBRULE(this.pins),
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.otherLine),
  )

  private readonly successionLines: Lines = this.linesOf(
    () => this.SUBRULE2(this.succession),
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.otherLine),
  )

  /** The lines of a page: its entries, and whatever else may stand there by mistake. */
  private entries(entry: () => void): Lines {
    return this.linesOf(
      () => this.SUBRULE(this.particular),
      entry,
      () => this.SUBRULE(this.otherLine),
    )
  }

  private turnTo(kind: tree.PageKind, opening: IToken): void {
    this.ACTION(() => {
      this.onLine = openPage(this.notebook, kind, tokenSpan(this.source, opening))
    })
  }

  private pageName(nameless: string): void {
    const opening = this.LA(0)
    const name = this.OPTION8(() => this.SUBRULE8(this.name))
    this.ACTION(() => {
      if (name !== undefined) return this.nameThePage(name)
      this.find(error('syntax/name-missing', tokenSpan(this.source, opening), nameless))
      return this.doubt()
    })
  }

  private restOfPage(lines: Lines): void {
    this.SUBRULE9(this.restOfLine)
    this.block(lines)
  }

  private nameThePage(name: tree.Name): void {
    this.ACTION(() => {
      const current = this.notebook.pages.at(-1)
      if (current !== undefined) current.name = name
    })
  }

  private nameInOrder(name: tree.Name): void {
    this.ACTION(() => this.notebook.pages.at(-1)?.names.push(name))
  }
}
