import type { Line, LineFunction, Place, Rail, Rig } from '../../rig/index.ts'
import { deedWords, haulBrings } from '../deed-words.ts'
import { easeWords, easeWordsInShort } from '../ease-words.ts'
import { atPin, hostOnRail, nameOnRail } from '../name-on-rail.ts'

/** A place as its strip tells it. */
export interface StripPin {
  readonly place: Place
  readonly lines: readonly StripLine[]
  /** The sail or spar all its lines are hung on; undefined where they are not of one. */
  readonly host: string | undefined
}

/** A line as its strip tells it. */
export interface StripLine {
  readonly address: string
  readonly deed: LineFunction | undefined
  /** Under a band that names its sail: 'Inner buntline'. */
  readonly nameInBand: string
  /** By itself: 'Royal halyard'. */
  readonly nameAlone: string
  /** Where the ship or a glossary gives one: 'Royal hal.'. */
  readonly nameInShort: string | undefined
  /** 'clew up to the yard'. */
  readonly does: string
  /** Kinds to be eased with it; empty where there is nothing to ease. */
  readonly ease: readonly string[]
  readonly easeInShort: string
}

/** A run of neighbouring pins that belong to one sail. */
export interface Band {
  readonly words: string
  readonly from: number
  readonly to: number
}

/** What stands at each of a rail's places, in the order they are seen. */
export function stripPins(rail: Rail, places: readonly Place[], rig: Rig): readonly StripPin[] {
  return places.map(place => {
    const lines = place.lines.flatMap(address => rig.lineAt.get(address) ?? [])
    const hosts = new Set(lines.map(line => line.host?.name))
    const [host] = hosts
    return {
      place,
      lines: lines.map(line => stripLine(line, rail, rig)),
      host: hosts.size === 1 ? host : undefined,
    }
  })
}

function stripLine(line: Line, rail: Rail, rig: Rig): StripLine {
  return {
    address: line.address,
    deed: line.function,
    nameInBand: atPin(line.labelOnSail, line),
    nameAlone: nameOnRail(line, rail, rig),
    nameInShort: line.short && atPin(line.short, line),
    does: haulBrings(line, rig) || deedWords(line),
    ease: easeWords(line, rig),
    easeInShort: easeWordsInShort(line, rig),
  }
}

/** Runs of two pins and more of one sail: over these stands the sail, so that the name below is the line alone. */
export function bandsOver(pins: readonly StripPin[], rail: Rail, rig: Rig): readonly Band[] {
  const bands: Band[] = []
  for (let from = 0; from < pins.length; ) {
    let to = from
    const host = pins[from]?.host
    while (host !== undefined && pins[to + 1]?.host === host) to += 1
    const first = rig.lineAt.get(pins[from]?.lines[0]?.address ?? '')
    if (to > from && first) bands.push({ words: hostOnRail(first, rail, rig), from, to })
    from = to + 1
  }
  return bands.filter(({ words }) => words !== '')
}

/** The name under a band is the line's alone; elsewhere it is whole. */
export function pinName(line: StripLine, index: number, bands: readonly Band[]): string {
  return bands.some(({ from, to }) => index >= from && index <= to) ? line.nameInBand : line.nameAlone
}
