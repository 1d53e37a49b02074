import type { Clause, Name, Page, PageKind, Statement, StatementKind } from '../../syntax/index.ts'
import { nearest } from '../../text/index.ts'
import { reasonsMissing } from './leave.ts'
import { capitalised, finding, type Say } from './say.ts'

type ClauseKind = Clause['kind']

/** Which clauses suit which statement. The parser takes any clause anywhere; one out of place is told here. */
const suits: Readonly<Record<StatementKind, readonly ClauseKind[]>> = {
  fact: ['coords', 'measure', 'muster', 'in', 'label', 'date', 'fromTo', 'count', 'at'],
  mast: ['like', 'stepped', 'raked', 'yards', 'without', 'called', 'short', 'thick', 'conjectural'],
  section: ['leadTo', 'thick', 'doubled', 'wide', 'coords', 'at', 'conjectural'],
  spar: [
    'like',
    'class',
    'on',
    'leadTo',
    'reefs',
    'long',
    'thick',
    'walls',
    'bracesTo',
    'measure',
    'fixed',
    'hoistsFrom',
    'fromTo',
    'called',
    'short',
    'conjectural',
  ],
  stay: ['like', 'fromTo', 'thick', 'count', 'apart', 'called', 'short', 'conjectural'],
  sail: ['like', 'class', 'on', 'sheeted', 'cloth', 'wide', 'called', 'short', 'conjectural'],
  corner: ['coords', 'at', 'wide', 'roach', 'offset', 'cringle', 'measure'],
  hang: [],
  particular: ['fits', 'without', 'shackled'],
  block: ['at', 'coords', 'like', 'toBeGiven', 'called', 'short', 'numbered', 'inspected'],
  line: [
    'like',
    'pair',
    'single',
    'rope',
    'rove',
    'count',
    'deed',
    'against',
    'answered',
    'through',
    'leadTo',
    'travels',
    'shifts',
    'on',
    'cut',
    'middled',
    'whipped',
    'coloured',
    'nicknamed',
    'called',
    'short',
    'conjectural',
  ],
  rail: [
    'like',
    'class',
    'sides',
    'athwart',
    'round',
    'on',
    'count',
    'fromTo',
    'at',
    'coords',
    'marked',
    'called',
    'short',
  ],
  pins: ['berth'],
  deckThing: ['class', 'sides', 'extent', 'eachSide', 'top', 'called'],
  station: ['muster', 'works', 'takes', 'mannedBy', 'called', 'count'],
  label: ['label', 'called', 'short', 'nicknamed', 'at'],
  lifted: [],
  surveyed: ['class', 'label', 'due'],
  term: ['label', 'short', 'source'],
  canvas: ['carries', 'like', 'without', 'called'],
  sequence: ['before', 'jams'],
  phase: ['act', 'until', 'mind', 'cautions', 'answer', 'report', 'aloft'],
}

/** Which clauses suit a page itself, behind its word or set in below it before its entries; none where it isn't here. */
const suitsPage: Readonly<Partial<Record<PageKind, readonly ClauseKind[]>>> = {
  edition: ['count'],
  bringIn: ['label'],
  vessel: ['allow'],
  labels: ['in'],
  gear: ['like', 'allow'],
  belayOn: ['like', 'allow'],
  belay: ['leadTo', 'count', 'allow'],
  set: ['allow'],
  allow: ['for', 'on', 'because'],
  lifted: ['because'],
  survey: ['date', 'by'],
  glossary: ['in'],
}

const spoken: Readonly<Record<StatementKind, string>> = {
  fact: 'fact',
  mast: 'mast',
  section: 'part of a mast',
  spar: 'spar',
  stay: 'stay',
  sail: 'sail',
  corner: 'corner or edge of a sail',
  hang: 'gear that is hung',
  particular: 'gear',
  block: 'block',
  line: 'line',
  rail: 'rail',
  pins: 'pin',
  deckThing: 'thing on deck',
  station: 'station',
  label: 'label',
  lifted: 'line that is lifted',
  surveyed: 'line that was surveyed',
  term: 'word of a glossary',
  canvas: 'working sail plan',
  sequence: 'way to set or douse',
  phase: 'phase',
}

const words: Readonly<Partial<Record<ClauseKind, string>>> = {
  coords: 'a place',
  measure: 'a measure',
  class: 'a kind',
  fromTo: 'from … to …',
  toBeGiven: 'to be given',
  hoistsFrom: 'hoists from',
  label: 'quoted words',
  source: 'from memory, or from a work',
  count: 'a count',
  leadTo: 'to',
  rope: 'a rope',
  eachSide: 'each side',
  extent: 'from … to …',
  sides: 'port and starboard',
  act: 'haul, ease or hold',
  jams: 'if it jams',
  mannedBy: 'manned by',
  offset: 'above or below',
  muster: 'in',
  berth: 'a line',
  bracesTo: 'braces to',
  cloth: 'number … canvas',
  carries: 'sails',
  deed: 'a deed',
  raked: 'raked',
  sheeted: 'sheeted to',
  shackled: 'shackled, hooped, hanked or laced',
  shifts: 'shifts to weather or lee',
}

/** Of what nothing is let stand by itself: a block is its line's, a fact the vessel's, and of words and canvas there is nothing to allow. */
const noLeave: ReadonlySet<StatementKind> = new Set([
  'fact',
  'section',
  'block',
  'label',
  'lifted',
  'term',
  'canvas',
])

/** Whether a clause may be said of its statement. */
function isSuited({ kind, clauses }: Statement, one: Clause, index: number): boolean {
  if (one.kind === 'allow') return !noLeave.has(kind)
  return suits[kind].includes(one.kind) || isReason(clauses, index)
}

/** A reason stands behind what is allowed. */
const isReason = (clauses: readonly Clause[], index: number) =>
  clauses[index]?.kind === 'because' && clauses[index - 1]?.kind === 'allow'

/** A finding for each clause that its page or its statement can't have; all the rest is taken. */
export function judgeClauses(pages: readonly Page[], say: Say): void {
  for (const page of pages) {
    if (!page.doubtful) judgePage(page, say)
    judgeStatements(page.block, say)
  }
}

function judgePage(page: Page, say: Say): void {
  const { kind, clauses } = page
  if (kind !== 'allow') reasonsMissing(page).forEach(say)
  clauses.forEach((one, index) => {
    if (suitsPage[kind]?.includes(one.kind) || isReason(clauses, index)) return
    const message = `${subjectOf(one)} isn't said of this page as a whole.`
    say(
      finding('syntax/clause-misplaced', one.span, message, {
        remedy: 'Set it in under what it is said of.',
      }),
    )
  })
}

function judgeStatements(statements: readonly Statement[], say: Say): void {
  for (const statement of statements) {
    if (!statement.doubtful) judgeStatement(statement, say)
    judgeStatements(statement.block, say)
  }
}

function judgeStatement(statement: Statement, say: Say): void {
  const { kind, name, span, clauses } = statement
  reasonsMissing(statement).forEach(say)
  const sparWord = kind === 'mast' || kind === 'section' ? name && sparWordOf(name) : undefined
  if (name && sparWord) {
    const message = `"${name.words}" is set in under "masts".`
    const remedy = `A ${sparWord} is a spar: set it under "spars".`
    say(finding('syntax/clause-misplaced', name.span, message, { remedy, explains: [name.words] }))
    return
  }
  const misplaced = clauses.filter((clause, index) => !isSuited(statement, clause, index))
  if (misplaced.length === 0 && clauses.length > 0) return
  if (kind === 'particular' && name && misplaced.length === clauses.length) {
    const message = `"${name.words}" is set in where nothing with a name is due.`
    say(finding('syntax/clause-misplaced', span, message, { remedy: 'Give it the margin of its like.' }))
    return
  }
  const said = suits[kind].map(one => words[one] ?? one)
  for (const one of misplaced) {
    const near = one.kind === 'class' ? nearest(one.name.words.replace(/ .*/, ''), said, 2) : []
    if (one.kind === 'class' && near.length > 0) {
      const message = `"${one.name.words}" says nothing of a ${spoken[kind]}.`
      const remedy = `Did you mean ${near.map(word => `"${word}"`).join(' or ')}?`
      say(finding('syntax/clause-misplaced', one.span, message, { remedy }))
      return
    }
    const works = clauses.find(({ kind }) => kind === 'works')
    if (one.kind === 'class' && works?.kind === 'works') {
      const more = misplaced.flatMap(other => (other.kind === 'class' ? [other.name] : []))
      const list = [...works.names, ...more].map(({ words }) => words).join(' and ')
      const message = 'A list has "and" between its names, and no comma.'
      say(finding('syntax/clause-misplaced', one.span, message, { remedy: `Say "works ${list}".` }))
      return
    }
    const whose = name ? `; "${name.words}" is a ${spoken[kind]}` : ''
    say(
      finding(
        'syntax/clause-misplaced',
        one.span,
        `${subjectOf(one)} isn't said of a ${spoken[kind]}${whose}.`,
        {
          remedy: `Of a ${spoken[kind]} one says: ${said.join(', ')}.`,
        },
      ),
    )
  }
}

/** 'boom' of a 'mainsail boom': what is a spar by its last word, and no mast nor part of one. */
const sparWordOf = ({ words }: Name) =>
  /(?:^| )(bowsprit|jib-?boom|boom|gaff|yard)$/i.exec(words)?.[1]?.toLowerCase()

function subjectOf({ kind }: Clause): string {
  const what = words[kind] ?? kind
  return what.startsWith('a ') ? capitalised(what) : `"${what}"`
}
