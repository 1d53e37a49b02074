import type { Slug } from '../findings/index.ts'
import type { Source, Span } from '../text/index.ts'
import type { Block } from './block.ts'
import type { Canvas } from './canvas.ts'
import type { DeckThing } from './deck.ts'
import type { Hull } from './hull.ts'
import type { Line } from './line.ts'
import type { Mast } from './mast.ts'
import type { Place, Rail } from './rail.ts'
import type { Sail } from './sail.ts'
import type { Spar } from './spar.ts'
import type { Station } from './station.ts'
import type { StandingRigging } from './stay.ts'
import type { Tongue } from './tongue.ts'
import type { Vessel } from './vessel.ts'

/**
 * A rig, whole: every name in it resolves, every list keeps the order of the text. What the builder could
 * not make sense of is left out, with a finding.
 */
export interface Rig {
  readonly vessel: Vessel
  readonly hull: Hull | undefined
  readonly masts: readonly Mast[]
  readonly spars: readonly Spar[]
  readonly standing: readonly StandingRigging[]
  readonly sails: readonly Sail[]
  readonly rails: readonly Rail[]
  readonly lines: readonly Line[]
  readonly deck: readonly DeckThing[]
  readonly stations: readonly Station[]
  /** Blocks of which the text keeps a number or a day of inspection. */
  readonly blocks: readonly Block[]
  /** Labels and glossaries in other languages, by the language's name in small letters. */
  readonly tongues: ReadonlyMap<string, Tongue>
  /** Names of sails in the order of setting; those not named in the text are absent. */
  readonly order: readonly string[]
  /** Working sail plans, each with a name of its own. */
  readonly canvas: readonly Canvas[]
  readonly allowances: readonly Allowance[]
  /** The texts it was built from, the entry first: findings point into them. */
  readonly sources: readonly Source[]
  /** False for a part: a text without a vessel. */
  readonly isVessel: boolean
  readonly lineAt: ReadonlyMap<string, Line>
  /** Both lines of a pair, or the one single line, by `pairKey`. */
  readonly pairAt: ReadonlyMap<string, readonly Line[]>
  readonly placeAt: ReadonlyMap<string, Place>
  readonly railAt: ReadonlyMap<string, Rail>
  readonly mastAt: ReadonlyMap<string, Mast>
  readonly sparAt: ReadonlyMap<string, Spar>
  readonly sailAt: ReadonlyMap<string, Sail>
  readonly stationAt: ReadonlyMap<string, Station>
}

/** A finding the text allows, with its reason: it is lowered to a note for these things. */
export interface Allowance {
  readonly rule: Slug
  /** Addresses or names (pairKeys, rails, sails) it holds for; empty means the whole rig. */
  readonly things: readonly string[]
  readonly because: string
  /** Set in under what it concerns; under a gear it holds for all sails that carry it, and it is enough that one needs it. */
  readonly beside: boolean
  readonly span: Span
}
