import type { Span } from '../text/index.ts'
import type { Clause, Name, Page, PageKind, Statement, StatementKind } from './tree.ts'

/*
 * What is written down while a text is being read. A page or a statement is put in its place as soon as it opens, and so
 * stays there with all it has so far, whatever is wrong with what follows.
 */
export interface OpenStatement {
  kind: StatementKind
  name: Name | undefined
  readonly clauses: Clause[]
  readonly block: OpenStatement[]
  readonly added: boolean
  readonly pins: Statement['pins']
  doubtful: boolean
  span: Span
}

export interface OpenPage {
  kind: PageKind
  name: Name | undefined
  readonly clauses: Clause[]
  readonly names: Name[]
  readonly block: OpenStatement[]
  doubtful: boolean
  span: Span
}

export interface Notebook {
  readonly pages: OpenPage[]
  /** The page and the statements that are open, the innermost last. */
  readonly open: (OpenPage | OpenStatement)[]
}

export const emptyNotebook = (): Notebook => ({ pages: [], open: [] })

/** Opens a page; whatever was open is done with. */
export function openPage(notebook: Notebook, kind: PageKind, span: Span): OpenPage {
  const page: OpenPage = { kind, name: undefined, clauses: [], names: [], block: [], doubtful: false, span }
  notebook.pages.push(page)
  notebook.open.length = 0
  notebook.open.push(page)
  return page
}

/** Opens a statement in the innermost that is open. */
export function openStatement(
  notebook: Notebook,
  {
    kind,
    name,
    span,
    added = false,
    pins,
  }: Pick<OpenStatement, 'kind' | 'name' | 'span'> & Partial<Pick<OpenStatement, 'added' | 'pins'>>,
): OpenStatement {
  const statement = { kind, name, clauses: [], block: [], added, pins, doubtful: false, span }
  notebook.open.at(-1)?.block.push(statement)
  notebook.open.push(statement)
  return statement
}

/** The finished pages. In gear and among lines it is only now clear which statements are blocks. */
export function finish(notebook: Notebook): readonly Page[] {
  for (const page of notebook.pages) {
    for (const statement of page.block) settle(statement)
  }
  return notebook.pages
}

/** Tells blocks from lines, and names that are shackled from both. */
function settle(statement: OpenStatement): void {
  for (const inner of statement.block) settle(inner)
  if (statement.kind !== 'line') return
  if (statement.clauses.some(clause => clause.kind === 'shackled')) statement.kind = 'particular'
  else if (isBlock(statement)) statement.kind = 'block'
}

/**
 * Of a block nothing is said but where it is, and what may be said of anything: what is let stand, and what is conjectured. A
 * name with nothing else is a line: its kit says the rest.
 */
function isBlock({ clauses, block, added }: OpenStatement): boolean {
  const own = clauses.filter(({ kind }) => !saidOfAll.has(kind))
  return !added && block.length === 0 && own.length > 0 && own.every(({ kind }) => saidOfBlocks.has(kind))
}

const saidOfAll: ReadonlySet<Clause['kind']> = new Set(['allow', 'because', 'conjectural'])
const saidOfBlocks: ReadonlySet<Clause['kind']> = new Set([
  'at',
  'coords',
  'like',
  'toBeGiven',
  'called',
  'short',
  'numbered',
  'inspected',
])
