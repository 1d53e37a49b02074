import type { Clause, Statement, StatementKind } from '../../syntax/index.ts'
import { nearest } from '../../text/index.ts'
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
    'measure',
    'fixed',
    'hoistsFrom',
    'fromTo',
    'called',
    'short',
    'conjectural',
  ],
  stay: ['like', 'fromTo', 'thick', 'count', 'apart', 'called', 'short', 'conjectural'],
  sail: ['like', 'class', 'on', 'sheeted', 'called', 'short', 'conjectural'],
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
  term: ['label', 'source'],
  sequence: ['before', 'jams'],
  phase: ['act', 'until', 'mind', 'cautions', 'answer', 'report', 'aloft'],
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
  deed: 'a deed',
  raked: 'raked',
  sheeted: 'sheeted to',
  shackled: 'shackled, hooped, hanked or laced',
  shifts: 'shifts to weather or lee',
}

/** A finding for each clause that its statement can't have; all the rest is taken. */
export function judgeClauses(statements: readonly Statement[], say: Say): void {
  for (const statement of statements) {
    if (!statement.doubtful) judgeStatement(statement, say)
    judgeClauses(statement.block, say)
  }
}

function judgeStatement({ kind, name, span, clauses }: Statement, say: Say): void {
  const misplaced = clauses.filter(clause => !suits[kind].includes(clause.kind))
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
    const what = words[one.kind] ?? one.kind
    const subject = what.startsWith('a ') ? capitalised(what) : `"${what}"`
    const whose = name ? `; "${name.words}" is a ${spoken[kind]}` : ''
    say(
      finding('syntax/clause-misplaced', one.span, `${subject} isn't said of a ${spoken[kind]}${whose}.`, {
        remedy: `Of a ${spoken[kind]} one says: ${said.join(', ')}.`,
      }),
    )
  }
}
