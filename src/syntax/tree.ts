import type { Source, Span } from '../text/index.ts'

/**
 * The tree of a rig file: what was said, in the order it was said, with nothing yet made of it.
 * A page holds statements; a statement has a name, clauses on its own line or set in below it,
 * and statements of its own in its block. Names are not resolved, and which clause suits which
 * statement is judged by the builder: so a half-typed file still gives a tree.
 */
export interface Tree {
  readonly source: Source
  readonly pages: readonly Page[]
}

/** A name as written. `words` has single spaces and no quotes; compare names with `nameKey`. */
export interface Name {
  readonly words: string
  readonly quoted: boolean
  readonly span: Span
}

export type Dimension = 'length' | 'mass' | 'angle' | 'share'

/** A measure in SI: metres, kilograms, radians; a share is a fraction (35 % is 0.35). */
export interface Measure {
  readonly value: number
  readonly dimension: Dimension
  /** As written, e.g. '41 ft 6 in'. */
  readonly written: string
  readonly span: Span
}

/** A bare number: it only counts (pins, hands). */
export interface Count {
  readonly value: number
  readonly written: string
  readonly span: Span
}

export type Side = 'port' | 'starboard'

export type Direction = 'aft' | 'forward' | 'up' | 'below' | 'down' | 'out' | Side

/** One step of a place: '0.50 m aft', '35 % out', '50 % down'. */
export interface Step {
  readonly measure: Measure
  readonly direction: Direction
  readonly span: Span
}

/**
 * A place said in one breath, without commas: a thing to start from (or none: the ship's own axes) and
 * steps from it. 'at cap 0.20 m aft 0.60 m below', '9.40 m aft 0.90 m out 6.70 m up',
 * 'foot yard abreast clew', 'lead block', 'gaff end'.
 */
export interface Place {
  readonly from: Name | undefined
  readonly steps: readonly Step[]
  readonly abreast: Name | undefined
  readonly span: Span
}

/**
 * A reference with the small words beside it: 'other sheet', 'every boom guy', 'lee clewline', 'named brace'
 * (the side the order names), 'sheets above' (of the sail above, sheeted to this yard).
 */
export interface Reference {
  readonly name: Name
  readonly reach: 'other' | 'every' | 'weather' | 'lee' | 'named' | 'above' | Side | undefined
  readonly span: Span
}

/** Said aloud or printed: what stands between double quotes, or runs to the end of a prose line. */
export interface Words {
  readonly text: string
  readonly span: Span
}

export type Deed =
  | 'hoists'
  | 'cocks'
  | 'tops'
  | 'spreads'
  | 'draws'
  | 'lowers'
  | 'raises'
  | 'gathers'
  | 'brings'
  | 'swings'
  | 'steadies'

/** How a corner or an edge is made fast without a line. */
export type Fastening = 'shackled' | 'hooped' | 'hanked' | 'laced'

export type Act = 'haul' | 'ease' | 'hold' | 'stand by' | 'tend' | 'let go'

interface Said {
  readonly span: Span
}

/** One clause. The comment shows how each is said. */
export type Clause =
  // --- any statement
  | (Said & { readonly kind: 'class'; readonly name: Name }) // fore topsail, SQUARE TOPSAIL on ...
  | (Said & { readonly kind: 'like'; readonly name: Name }) // like fore mast
  | (Said & { readonly kind: 'coords'; readonly steps: readonly Step[] }) // 6.04 m forward 5.65 m up
  | (Said & { readonly kind: 'at'; readonly place: Place }) // at cap 0.30 m out
  | (Said & { readonly kind: 'fromTo'; readonly from: Place; readonly to: Place }) // from 8.01 m aft 13.20 m up to 0.30 m forward 2.92 m up
  | (Said & { readonly kind: 'on'; readonly names: readonly Name[] }) // on mainsail gaff and mainsail boom
  | (Said & { readonly kind: 'called'; readonly label: Words }) // called "Bowsprit and jib-boom"
  | (Said & { readonly kind: 'short'; readonly label: Words }) // short "F t bunt"
  | (Said & { readonly kind: 'label'; readonly label: Words }) // mainsail "Großsegel"  (labels; quoted facts)
  | (Said & { readonly kind: 'measure'; readonly measure: Measure }) // 214 kg; keel drag 0.80 m
  | (Said & { readonly kind: 'count'; readonly count: Count; readonly of: Name | undefined }) // 3 pins; 6 hands; 5 a side
  | (Said & { readonly kind: 'muster'; readonly count: Count; readonly in: Name }) // hands 14 IN all, 5 IN a watch
  | (Said & { readonly kind: 'in'; readonly names: readonly Name[] }) // measure IN m and mm; labels IN German
  | (Said & { readonly kind: 'date'; readonly day: number; readonly month: number; readonly year: number }) // 25 November 2026
  | (Said & { readonly kind: 'toBeGiven' }) // to be given
  | (Said & { readonly kind: 'conjectural'; readonly by: Words | undefined }) // conjectural; conjectural by "a photograph of 1911"
  | (Said & { readonly kind: 'nicknamed'; readonly names: readonly Words[] }) // nicknamed "the Kicker" and "Old Tom"
  | (Said & { readonly kind: 'by'; readonly words: Words }) // survey 14 October 2026 BY "the bosun"
  | (Said & { readonly kind: 'source'; readonly words: Words | undefined }) // from "A Sailor's Word List, 1901, p. 12"; from memory
  | (Said & { readonly kind: 'numbered'; readonly label: Words }) // brace block numbered "B 12"
  | (Said & {
      readonly kind: 'inspected' | 'due'
      readonly day: number
      readonly month: number
      readonly year: number
    }) // inspected 3 March 2026; due 1 April 2027
  // --- masts, spars, stays
  | (Said & { readonly kind: 'stepped'; readonly place: Place }) // stepped 7.40 m aft 1.60 m up
  | (Said & { readonly kind: 'raked'; readonly angle: Measure; readonly forward: boolean }) // raked 3 deg aft
  | (Said & { readonly kind: 'yards'; readonly steps: readonly Step[] }) // yards 0.50 m forward
  | (Said & { readonly kind: 'thick'; readonly measure: Measure }) // 320 mm thick
  | (Said & { readonly kind: 'doubled'; readonly measure: Measure }) // doubled 1.70 m
  | (Said & { readonly kind: 'long'; readonly measure: Measure }) // 11.60 m long
  | (Said & { readonly kind: 'fixed'; readonly step: Step }) // fixed 11.50 m up
  | (Said & { readonly kind: 'hoistsFrom'; readonly from: Measure; readonly to: Measure | undefined }) // hoists from 14.40 m to 16.90 m up; hoists from 3.80 m up
  | (Said & { readonly kind: 'apart'; readonly measure: Measure }) // 0.40 m apart
  | (Said & { readonly kind: 'reefs'; readonly measures: readonly Measure[] }) // reefs 1.20 m and 2.40 m
  | (Said & { readonly kind: 'walls'; readonly measure: Measure }) // 8 mm walls
  | (Said & { readonly kind: 'bracesTo'; readonly angle: Measure }) // braces to 35 deg
  // --- sails
  | (Said & { readonly kind: 'cloth'; readonly number: Count; readonly of: Name }) // number 2 canvas; number 2 navy flax
  | (Said & { readonly kind: 'carries'; readonly sails: readonly CarriedSail[] }) // every topsail and fore course; 2 reefs in spanker
  | (Said & { readonly kind: 'sheeted'; readonly to: Name }) // sheeted to fore yard
  | (Said & { readonly kind: 'wide'; readonly measure: Measure }) // 10.60 m wide
  | (Said & { readonly kind: 'roach'; readonly measure: Measure }) // roach 0.50 m
  | (Said & {
      readonly kind: 'offset'
      readonly measure: Measure
      readonly side: 'above' | 'below'
      readonly name: Name
    }) // reef 1.83 m BELOW head
  | (Said & { readonly kind: 'cringle'; readonly steps: readonly Step[] }) // cringle 4.29 m out
  // --- gear and lines
  | (Said & { readonly kind: 'fits'; readonly names: readonly Name[] }) // fits square sail on hoisting yard (each side of 'on', 'or', 'and', 'over')
  | (Said & { readonly kind: 'shackled'; readonly by: Fastening; readonly to: Name }) // clews shackled to foot yard; luff hooped to mast
  | (Said & { readonly kind: 'without'; readonly names: readonly Name[] }) // without halyard and buntline
  | (Said & { readonly kind: 'pair' })
  | (Said & { readonly kind: 'single' })
  | (Said & {
      readonly kind: 'rope'
      readonly size: Measure
      readonly round: boolean
      readonly material: Name | undefined
    }) // 16 mm spun polyester; 3 in round manila; 22 mm wire with spun polyester fall
  | (Said & { readonly kind: 'rove'; readonly parts: readonly Name[]; readonly below: boolean }) // rove tye and runner and luff; rove gun below
  | (Said & {
      readonly kind: 'deed'
      readonly deed: Deed
      readonly object: Name
      readonly direction: Direction | 'in' | undefined
      readonly on: Name | undefined
    }) // draws clew forward; hoists ensign on mainsail gaff
  | (Said & {
      readonly kind: 'against'
      readonly mode: 'only' | 'also' | 'not'
      readonly lines: readonly Reference[]
    }) // against clewline and other sheet; also against sheet; not against sheet
  | (Said & { readonly kind: 'answered'; readonly by: Words }) // answered by the sail's own pull
  | (Said & { readonly kind: 'through'; readonly places: readonly Place[]; readonly to: Place | undefined }) // through tack block then yard block to bunt cringle
  | (Said & { readonly kind: 'leadTo'; readonly place: Place }) // to gaff end   (a lead's end, said alone)
  | (Said & { readonly kind: 'travels'; readonly measure: Measure }) // travels 3.20 m
  | (Said & { readonly kind: 'shifts'; readonly to: 'weather' | 'lee' }) // shifts to weather
  | (Said & { readonly kind: 'cut'; readonly measure: Measure }) // cut 45 m
  | (Said & { readonly kind: 'middled'; readonly with: Name }) // tack ... middled with sheet
  | (Said & { readonly kind: 'whipped' | 'coloured'; readonly label: Words }) // whipped "red over white"; coloured "tan"
  // --- phases
  | (Said & {
      readonly kind: 'act'
      readonly act: Act
      readonly lines: readonly Reference[]
      readonly then: readonly Reference[]
      readonly when: Words | undefined
    }) // haul lee buntline then weather buntline, when running
  | (Said & { readonly kind: 'until'; readonly words: Words }) // until the leeches are taut
  | (Said & { readonly kind: 'mind'; readonly words: Words }) // mind nobody under the yard
  | (Said & { readonly kind: 'cautions'; readonly numbers: readonly Count[] }) // cautions 5 and 7 and 13
  | (Said & { readonly kind: 'answer'; readonly words: Words }) // answer "Lower away."
  | (Said & { readonly kind: 'report'; readonly words: Words }) // report "Yard down, fast."
  | (Said & { readonly kind: 'aloft'; readonly count: Count | undefined; readonly words: Words }) // aloft 4 hands, gaskets off from the yardarms in
  | (Said & { readonly kind: 'before'; readonly words: Words }) // before "The lower topsail is set."   (on a sequence)
  | (Said & { readonly kind: 'jams'; readonly words: Words }) // if it jams "Hold. Word aft."         (on a sequence)
  // --- rails and belaying
  | (Said & { readonly kind: 'sides' }) // port and starboard   (a rail, a deck thing)
  | (Said & { readonly kind: 'athwart' })
  | (Said & { readonly kind: 'round'; readonly name: Name }) // round main mast
  | (Said & { readonly kind: 'marked'; readonly code: Name }) // marked FF-A
  | (Said & { readonly kind: 'berth'; readonly berth: Berth })
  // --- deck and stations
  | (Said & {
      readonly kind: 'extent'
      readonly axis: 'aft' | 'out'
      readonly side: Side | undefined
      readonly from: Measure
      readonly to: Measure
      readonly fromForward: boolean
      readonly toForward: boolean
    }) // from 1.00 m forward to 9.00 m aft; 2.40 m to 3.20 m out; 0.80 m to 1.60 m starboard
  | (Said & { readonly kind: 'eachSide'; readonly measure: Measure }) // 1.10 m each side
  | (Said & { readonly kind: 'top'; readonly step: Step }) // top 2.60 m up
  | (Said & { readonly kind: 'works'; readonly names: readonly Name[] }) // works fore rail and fore fife rail
  | (Said & { readonly kind: 'takes'; readonly names: readonly Name[] }) // takes helm
  | (Said & { readonly kind: 'mannedBy'; readonly names: readonly Name[] }) // manned by foremast and mainmast
  // --- allow
  | (Said & { readonly kind: 'allow'; readonly check: Words }) // allow belay/two-on-a-pin, and because ... behind it
  | (Said & { readonly kind: 'for'; readonly names: readonly Name[] })
  | (Said & { readonly kind: 'because'; readonly words: Words })

/** A sail that is carried, or 'every' of a kind, and how many reefs are taken in it. */
export interface CarriedSail {
  readonly name: Name
  readonly reefs: Count | undefined
}

/** What sits on a pin, or why none does. */
export type Berth =
  | { readonly kind: 'line'; readonly side: Side | undefined; readonly line: Name; readonly span: Span }
  | {
      readonly kind: 'free'
      readonly side: Side | undefined
      readonly for: Words | undefined
      readonly span: Span
    }
  | {
      readonly kind: 'shared'
      readonly side: Side | undefined
      readonly lines: readonly Name[]
      readonly because: Words | undefined
      readonly span: Span
    }

export type StatementKind =
  | 'fact'
  | 'mast'
  | 'section'
  | 'spar'
  | 'stay'
  | 'sail'
  | 'corner'
  | 'hang'
  | 'particular'
  | 'block'
  | 'line'
  | 'rail'
  | 'pins'
  | 'deckThing'
  | 'station'
  | 'label'
  | 'lifted'
  | 'surveyed'
  | 'term'
  | 'canvas'
  | 'sequence'
  | 'phase'

/**
 * One statement: an entry of a page or a particular set in below one.
 * - fact: vessel and hull ('waterline 25.00 m', 'lower deck 1.50 m up', or a bare name: the rig, 'barque').
 * - mast, section, spar, stay, sail, rail, deckThing, station, label: entries of their page, named.
 * - corner: in a sail, a named point or edge ('tack 6.04 m forward 5.65 m up', 'reef 1.83 m below head').
 * - hang: 'gear jib' in a sail or spar; `name` is the gear's, its block holds blocks, lines, withouts.
 * - block: a named place of a gear or of a loose line ('quarter block at yard 0.50 m aft 1.00 m out').
 * - line: in a gear, a hang or the page of lines. `added` marks 'with ...'.
 * - lifted, surveyed: `name` is a line's, as a label's is. - term: `name` is a word of the trade or, quoted, words spoken.
 * - canvas: `name` is that of a working sail plan, its clauses say what it carries.
 * - label: `name` may begin with 'every' or a side ('every clewline', 'port jib halyard').
 * - section: its height is leadTo ('to 14.00 m up'); a top or crosstrees has wide and coords instead.
 * - sequence: 'to set' or 'to douse' in a gear or hang (`name` 'set' | 'douse'), its block holds phases.
 * - phase: `name` is the order spoken (quoted), its clauses the acts.
 * - pins: in 'belay on', `from`/`to` are the pin numbers, the clauses are berths.
 * - particular: a line that has clauses only, belonging to the statement above (its clauses are folded
 *   into that statement by the parser where it can: this kind is left for what stands alone in a gear, such
 *   as 'fits ...' or 'without ...', and for 'clews shackled to foot yard' or 'luff hooped to mast', which have a name).
 *
 * In a sail, spar, hang or gear the parser cannot always tell 'block' from 'line' from 'corner' by the words
 * alone ('lead block 0.50 m up' and 'sheet 14 mm, rove single' and 'tack 6.04 m forward 5.65 m up' are all
 * a name and clauses). It decides thus: in a sail, 'corner'; in a gear or a hang, 'block' if all clauses are among
 * at, coords, like, toBeGiven, and 'line' otherwise ('outer buntline like inner buntline' with a block is a line if
 * its block holds clauses of a line; the builder may re-read a 'block' whose name is a line of the kit).
 */
export interface Statement {
  readonly kind: StatementKind
  readonly name: Name | undefined
  readonly clauses: readonly Clause[]
  readonly block: readonly Statement[]
  /** 'with ...': a line that the kit does not have. */
  readonly added: boolean
  /** Pin numbers of 'pins'; equal for one pin. */
  readonly pins: { readonly from: Count; readonly to: Count } | undefined
  /** A part of it could not be read, and a finding says so: what it then lacks is no fault of its own. */
  readonly doubtful: boolean
  /** The statement's own line (not its block). */
  readonly span: Span
}

export type PageKind =
  | 'edition'
  | 'bringIn'
  | 'vessel'
  | 'hull'
  | 'masts'
  | 'spars'
  | 'stays'
  | 'sails'
  | 'lines'
  | 'rails'
  | 'deck'
  | 'stations'
  | 'labels'
  | 'gear'
  | 'belayOn'
  | 'belay'
  | 'set'
  | 'allow'
  | 'lifted'
  | 'survey'
  | 'glossary'
  | 'canvas'

/**
 * A page: a page word at the margin, and what is set in below it.
 * - edition: clauses [count]. - bringIn: clauses [label] for a path, or `name` 'standard gear'.
 * - vessel, gear: `name`; clauses may hold like. - belayOn: `name` the rail, clauses may hold like; block of pins.
 * - belay: `name` the line, which may begin or end with a side, clauses [leadTo place] and an optional count (pin). - set: clauses [act-less] `names` in order.
 * - allow: `name` the slug, clauses for, on, because. - lifted: clauses because. - survey: clauses date, by. - glossary: clauses in. - labels: clauses may hold in.
 */
export interface Page {
  readonly kind: PageKind
  readonly name: Name | undefined
  readonly clauses: readonly Clause[]
  /** 'set A then B then C'. */
  readonly names: readonly Name[]
  readonly block: readonly Statement[]
  /** A part of the page's own line could not be read, and a finding says so. */
  readonly doubtful: boolean
  readonly span: Span
}
