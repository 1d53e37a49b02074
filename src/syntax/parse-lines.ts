import type { IToken, ParserMethod } from 'chevrotain'
import { emptyNotebook, type Notebook, type OpenPage, type OpenStatement, openStatement } from './notebook.ts'
import { PhasesParser } from './parse-phases.ts'
import { error, tokenSpan } from './said.ts'
import { Comma, GoesOn, LineEnd, SetIn, SetOut, said } from './tokens.ts'
import type * as tree from './tree.ts'

/** Reads the lines of a block, with its margins. */
export type Lines = () => void

/**
 * Lines and what is set in below them. A line is its clauses and a LineEnd, in one rule, so that reading goes on behind a
 * mistake at the next comma of the same line, and in any case with the next line. Every block takes any line: what does not
 * belong there is judged by the builder.
 */
export abstract class LinesParser extends PhasesParser {
  abstract hang: ParserMethod<[], void>
  abstract sequence: ParserMethod<[], void>
  abstract addedLine: ParserMethod<[], void>
  abstract phase: ParserMethod<[], void>

  protected notebook: Notebook = emptyNotebook()
  /** The statement or page whose own line is being read. */
  protected onLine: OpenStatement | OpenPage | undefined

  protected ropesHere(): boolean {
    return this.notebook.open.some(({ kind }) => kind === 'hang' || kind === 'gear' || kind === 'lines')
  }

  private readonly clauseKinds = [
    { ALT: () => this.SUBRULE(this.figured) },
    { ALT: () => this.SUBRULE(this.at) },
    { ALT: () => this.SUBRULE(this.from) },
    { ALT: () => this.SUBRULE(this.to) },
    { ALT: () => this.SUBRULE(this.like) },
    { ALT: () => this.SUBRULE(this.on) },
    { ALT: () => this.SUBRULE(this.within) },
    { ALT: () => this.SUBRULE(this.called) },
    { ALT: () => this.SUBRULE(this.short) },
    { ALT: () => this.SUBRULE(this.label) },
    { ALT: () => this.SUBRULE(this.nicknamed) },
    { ALT: () => this.SUBRULE(this.by) },
    { ALT: () => this.SUBRULE(this.numbered) },
    { ALT: () => this.SUBRULE(this.dayOf) },
    { ALT: () => this.SUBRULE(this.middled) },
    { ALT: () => this.SUBRULE(this.markedRope) },
    { ALT: () => this.SUBRULE(this.conjectural) },
    { ALT: () => this.SUBRULE(this.stepped) },
    { ALT: () => this.SUBRULE(this.raked) },
    { ALT: () => this.SUBRULE(this.yards) },
    { ALT: () => this.SUBRULE(this.doubled) },
    { ALT: () => this.SUBRULE(this.fixed) },
    { ALT: () => this.SUBRULE(this.hoists) },
    { ALT: () => this.SUBRULE(this.sheeted) },
    { ALT: () => this.SUBRULE(this.reefs) },
    { ALT: () => this.SUBRULE(this.bracesTo) },
    { ALT: () => this.SUBRULE(this.cloth) },
    { ALT: () => this.SUBRULE(this.roach) },
    { ALT: () => this.SUBRULE(this.cringle) },
    { ALT: () => this.SUBRULE(this.fits) },
    { ALT: () => this.SUBRULE(this.shackled) },
    { ALT: () => this.SUBRULE(this.without) },
    { ALT: () => this.SUBRULE(this.pair) },
    { ALT: () => this.SUBRULE(this.single) },
    { ALT: () => this.SUBRULE(this.rove) },
    { ALT: () => this.SUBRULE(this.does) },
    { ALT: () => this.SUBRULE(this.against) },
    { ALT: () => this.SUBRULE(this.answered) },
    { ALT: () => this.SUBRULE(this.through) },
    { ALT: () => this.SUBRULE(this.travels) },
    { ALT: () => this.SUBRULE(this.shifts) },
    { ALT: () => this.SUBRULE(this.cut) },
    { ALT: () => this.SUBRULE(this.sides) },
    { ALT: () => this.SUBRULE(this.athwart) },
    { ALT: () => this.SUBRULE(this.around) },
    { ALT: () => this.SUBRULE(this.marked) },
    { ALT: () => this.SUBRULE(this.pinNumber) },
    { ALT: () => this.SUBRULE(this.top) },
    { ALT: () => this.SUBRULE(this.works) },
    { ALT: () => this.SUBRULE(this.takes) },
    { ALT: () => this.SUBRULE(this.manned) },
    { ALT: () => this.SUBRULE(this.allow) },
    { ALT: () => this.SUBRULE(this.for) },
    { ALT: () => this.SUBRULE(this.because) },
    { ALT: () => this.SUBRULE(this.until) },
    { ALT: () => this.SUBRULE(this.mind) },
    { ALT: () => this.SUBRULE(this.aloft) },
  ]

  clause = this.RULE('clause', () => {
    const clause = this.OR<tree.Clause | undefined>(this.clauseKinds)
    this.ACTION(() => this.note(clause))
  })

  /**
   * What is said on a line behind the name. Behind a comma a name tells the class: 'jib, headsail on jib stay'. An
   * "and", which can't follow it, makes it one of a list.
   */
  restOfLine = this.RULE(
    'restOfLine',
    this.breaths(() => {
      const clause = this.SUBRULE(this.class)
      this.ACTION(() => this.note(clause))
      this.ACTION(() => this.LA(1).tokenType === said.and && this.doubt())
    }),
  )

  /** A line of clauses only. They belong to the statement above. */
  particular = this.RULE('particular', () => {
    this.CONSUME(GoesOn)
    this.SUBRULE(this.restOfLine)
    this.block(this.particularLines)
  })

  /** A line that begins with a name where none is due: it is kept, and judged afterwards. */
  otherLine = this.RULE('otherLine', () => {
    this.OR({
      MAX_LOOKAHEAD: 1,
      DEF: [
        { ALT: () => this.SUBRULE(this.hang) },
        { ALT: () => this.SUBRULE(this.sequence) },
        { ALT: () => this.SUBRULE(this.addedLine) },
        { ALT: () => this.SUBRULE(this.phase), IGNORE_AMBIGUITIES: true },
        { ALT: () => this.entry('particular', this.particularLines) },
      ],
    })
  })

  protected readonly particularLines: Lines = this.linesOf(
    () => this.SUBRULE(this.particular),
    () => this.SUBRULE(this.otherLine),
  )

  // --- how lines and blocks are made up; these are no rules, but stand within them, and are made once for all readings

  /** Clauses, with or without a comma between, to the end of the line. `named` takes the name that may follow a comma. */
  protected breaths(named: () => void): () => void {
    const told = {
      MAX_LOOKAHEAD: 1,
      DEF: [{ ALT: () => this.SUBRULE(this.clause), IGNORE_AMBIGUITIES: true }, { ALT: named }],
    }
    const behindComma = () => this.OR2(told)
    const ways = [
      {
        ALT: () => {
          this.CONSUME(Comma)
          this.OPTION(behindComma)
        },
      },
      { ALT: () => this.SUBRULE2(this.clause) },
    ]
    const breath = () => this.OR(ways)
    return () => {
      this.MANY(breath)
      this.CONSUME(LineEnd)
      this.ACTION(() => this.endLine())
    }
  }

  /** Lines of a block, by their rules, tried in this order; where two may begin with one word, the first has it. */
  protected linesOf(...rules: readonly (() => void)[]): Lines {
    const kinds = { MAX_LOOKAHEAD: 1, DEF: rules.map(ALT => ({ ALT, IGNORE_AMBIGUITIES: true })) }
    const line = () => this.OR9(kinds)
    return () => {
      this.CONSUME9(SetIn)
      this.MANY9(line)
      this.CONSUME9(SetOut)
    }
  }

  /** A statement: its name, what is said of it, and the lines set in below it. */
  protected entry(kind: tree.StatementKind, lines: Lines): void {
    const depth = this.depth()
    const name = this.SUBRULE9(this.name)
    this.ACTION(() => this.open(kind, name))
    this.SUBRULE9(this.restOfLine)
    this.block(lines)
    this.ACTION(() => this.close(depth))
  }

  protected block(lines: Lines): void {
    this.OPTION9(lines)
  }

  // --- what is noted

  protected depth(): number {
    return this.notebook.open.length
  }

  protected open(kind: tree.StatementKind, name: tree.Name): void {
    this.onLine = openStatement(this.notebook, { kind, name, span: name.span })
  }

  /** Opens a statement that begins with a small word. Where its name is missing, that is told. */
  protected openAt(
    kind: tree.StatementKind,
    name: tree.Name | undefined,
    first: IToken,
    nameless?: string,
    added = false,
  ): void {
    const span = tokenSpan(this.source, first)
    this.onLine = openStatement(this.notebook, { kind, name, span, added })
    if (name !== undefined || nameless === undefined) return
    this.find(error('syntax/name-missing', span, nameless))
    this.doubt()
  }

  /** Ends a corner or a fact at the comma before the name of the next. */
  protected openNext(kind: tree.StatementKind, name: tree.Name): void {
    const last = this.onLine?.clauses.at(-1)?.span.end ?? this.onLine?.name?.span.end
    if (last !== undefined) this.endLineAt(last)
    this.close(this.depth() - 1)
    this.open(kind, name)
  }

  protected close(depth: number): void {
    this.notebook.open.length = Math.min(this.notebook.open.length, depth)
  }

  /** Adds a clause to the innermost statement; one that could not be read leaves the statement doubtful. */
  protected note(clause: tree.Clause | undefined): void {
    if (clause === undefined) this.doubt()
    else this.notebook.open.at(-1)?.clauses.push(clause)
  }

  protected doubt(): void {
    const innermost = this.notebook.open.at(-1)
    if (innermost !== undefined) innermost.doubtful = true
  }

  protected noteWhen(words: tree.Words | undefined): void {
    const clauses = this.notebook.open.at(-1)?.clauses
    const last = clauses?.at(-1)
    if (clauses === undefined || words === undefined || last?.kind !== 'act') this.doubt()
    else clauses[clauses.length - 1] = { ...last, when: words, span: { ...last.span, end: words.span.end } }
  }

  /** The end of a statement's own line; the lines set in below it do not stretch it. */
  protected endLine(): void {
    this.endLineAt(this.LA(0).startOffset)
  }

  private endLineAt(end: number): void {
    if (this.onLine === undefined) return
    const { source, start, end: before } = this.onLine.span
    this.onLine.span = { source, start, end: Math.max(before, end) }
    this.onLine = undefined
  }
}
