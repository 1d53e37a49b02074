import type { Metres, Point3 } from '../measure/index.ts'
import type { Span } from '../text/index.ts'
import type { BelayingPoint, Side } from './rail.ts'
import type { Survey } from './survey.ts'

/** What a haul does: the eight deeds of the function code. */
export type LineFunction = 'hoists' | 'extends' | 'lowers' | 'clews' | 'gathers' | 'reefs' | 'turns' | 'keeps'

/**
 * One running line. The two of a pair are two lines, each with its side; a single line has no side of its
 * own, but belays on one (`belay.side`).
 */
export interface Line {
  /** Stable and unique: 'fore.upper-topsail.clewline.port'; hyphens join words within the sail's name. */
  readonly address: string
  /** The address without its side: equal for the two of a pair. 'fore.upper-topsail.clewline'. */
  readonly pairKey: string
  /** The words of the name without side: 'fore upper topsail clewline'. */
  readonly words: string
  /** As printed, without side: 'Fore upper topsail clewline'. */
  readonly label: string
  /** As printed where its mast is already told: 'Upper topsail clewline'. */
  readonly labelOnMast: string
  /** As printed where its sail is already told: 'Clewline', 'Inner buntline'. */
  readonly labelOnSail: string
  readonly short: string | undefined
  /** What she is called by besides: aliases and the ship's own nicknames. */
  readonly nicknames: readonly string[]
  /** Printed in quotation marks beside its name at its pin; undefined until nicknames are asked for. */
  readonly aside: string | undefined
  /** Whether its names are of another language than the gear's: they keep their capitals, and take no English plural. */
  readonly foreign: boolean
  /** The kind of line, in the kit's words without inner, outer and the like: 'buntline', 'throat halyard', 'boom guy'. */
  readonly kind: string
  readonly pair: boolean
  /** Its own side, for the lines of a pair. */
  readonly side: Side | undefined
  /** What it is hung on: a sail, a spar, or undefined for a loose line (running backstay, ensign halyard). */
  readonly host: { readonly kind: 'sail' | 'spar'; readonly name: string } | undefined
  /** Name of the mast it belongs to. */
  readonly mast: string | undefined
  readonly deed: LineDeed | undefined
  readonly function: LineFunction | undefined
  readonly rope: Rope | undefined
  /** Address of the line that is the other half of its rope: a tack and sheet in one, made fast at the middle. */
  readonly middledWith: string | undefined
  /** Colour of the whipping at its end, and of the rope: how it is known from its fellows. */
  readonly whipped: string | undefined
  readonly coloured: string | undefined
  readonly conjectural: boolean
  /** On whose word it is conjectured, where the text says. */
  readonly credited: string | undefined
  /** As rove: ['tye', 'runner', 'luff']; empty where the text is silent. */
  readonly purchase: readonly string[]
  /** Whether its tackle stands at the foot of its lead, so that one part goes on to the load; else it lies along the last stretch. */
  readonly tackleBelow: boolean
  readonly hands: number | undefined
  /** Addresses of the lines to be eased when this one is hauled, in the order said. Directed. */
  readonly counterparts: readonly string[]
  /** What answers it where no line does: 'the sail's own pull'. */
  readonly answeredBy: string | undefined
  /** The way of the line from its belaying point to what it acts on; empty where it can't be told. */
  readonly lead: readonly LeadPoint[]
  /** Why the lead is empty or stops short, where it does. */
  readonly leadUnknown: string | undefined
  /**
   * Which way a haul swings the yardarm that a brace is fast to, as its lead goes: aft as a rule, forward on the main of
   * a brig. Undefined of any other line, and where the lead can't be told.
   */
  readonly swings: 'aft' | 'forward' | undefined
  /** Stated travel of the load, where the text states one. */
  readonly travel: Metres | undefined
  /** Length it is cut to, where the text states one: compared with what its lead asks for, never reckoned with. */
  readonly cut: Metres | undefined
  /** Which side a single line is shifted to at every tack; undefined where it stays. */
  readonly shifts: 'weather' | 'lee' | undefined
  /** Name of the horse on deck that its block slides on, from side to side. */
  readonly horse: string | undefined
  /** Why it is sent down for a time, where it is: it is declared and listed, and belays nowhere. */
  readonly lifted: string | undefined
  /** What the last survey found of it. */
  readonly survey: Survey | undefined
  /** Where it is made fast, or undefined for an orphan. Of a line that shifts: with the wind from starboard. */
  readonly belay: BelayingPoint | undefined
  /** Where a line that shifts is made fast on the other tack. */
  readonly otherBelay: BelayingPoint | undefined
  /** Name of the station that works it: named for it, or the station of its rail; undefined where none is. */
  readonly station: string | undefined
  /** Where the line is declared, and where it is belayed. */
  readonly span: Span
  readonly belaySpan: Span | undefined
}

/** What hauling it does, in the words of the text: verb, object, and manner. */
export interface LineDeed {
  readonly verb: string
  /** 'clew', 'yard', 'reef cringle', 'foot'. */
  readonly object: string
  readonly direction: string | undefined
  /** Whether the object was found on the host: an orphan acts on nothing that exists. */
  readonly found: boolean
}

export interface Rope {
  readonly diameter: Metres
  readonly material: string | undefined
}

/** One point of a lead, from the pin outward. */
export interface LeadPoint {
  readonly at: Point3
  /** 'belay', 'quarter block', 'clew'. */
  readonly what: string
  /** Parts of the purchase on the stretch that ends here. */
  readonly parts: number
}
