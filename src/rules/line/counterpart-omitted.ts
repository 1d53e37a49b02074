import type { Line, Rig } from '../../rig/index.ts'
import { alsoAgainstEachOther } from '../also-against.ts'
import {
  extendsClew,
  hoistsHead,
  hoistsYard,
  isOuthaul,
  lowersHead,
  lowersYard,
  raisesClew,
  swingsYard,
} from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, lineName, sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'
import { whereSaid } from '../where.ts'

/** Two lines of one sail that undo each other's work, of which neither is said to ease the other. */
export const counterpartOmitted: Rule = {
  slug: 'line/counterpart-omitted',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    const told = new Set<string>()
    for (const sail of rig.sails) {
      for (const [line, other] of opposedIn(gear.ofSail(sail))) {
        if (!isOmitted(line, other)) continue
        // Said once in a gear, it is told once, for the first of the sails that the gear is hung on.
        const at = whereSaid(rig, line)
        const key = `${at.source} ${at.start} ${line.labelOnSail} ${other.labelOnSail}`
        if (told.has(key)) continue
        told.add(key)
        yield omitted(rig, line, other)
      }
    }
  },
}

/** A line with no answer at all is told by another rule, and one that answers the other by a third. */
const isOmitted = (line: Line, other: Line) =>
  isAnswered(line) &&
  isAnswered(other) &&
  !line.counterparts.includes(other.address) &&
  !other.counterparts.includes(line.address)

const isAnswered = ({ counterparts, answeredBy }: Line) => counterparts.length > 0 || answeredBy !== undefined

type Does = (line: Line) => boolean

const isInhaul: Does = line => line.deed?.verb === 'brings'
const opposed: readonly (readonly [Does, Does])[] = [
  [hoistsYard, lowersYard],
  [hoistsHead, lowersHead],
  [extendsClew, raisesClew],
  [swingsYard, swingsYard],
]

/** Lines that can only be worked against each other: on the same side where each has one, or the two of a pair. */
function opposedIn(lines: readonly Line[]): readonly (readonly [Line, Line])[] {
  const outhauls = lines.filter(line => isOuthaul(line) && !isInhaul(line))
  return [
    ...opposed.flatMap(([does, undoes]) => pairs(lines.filter(does), lines.filter(undoes))),
    ...pairs(outhauls, lines.filter(isInhaul)).filter(
      ([out, back]) => out.deed?.object === back.deed?.object,
    ),
  ]
}

const pairs = (some: readonly Line[], others: readonly Line[]): readonly (readonly [Line, Line])[] =>
  some.flatMap(line => others.flatMap(other => (areTogether(line, other) ? [[line, other] as const] : [])))

function areTogether(line: Line, other: Line): boolean {
  if (line.pairKey === other.pairKey) return line.side === 'port' && other.side === 'starboard'
  return !line.side || !other.side || line.side === other.side
}

function omitted(rig: Rig, line: Line, other: Line): Draft {
  const isPair = line.pairKey === other.pairKey
  const [one, two] = isPair
    ? [`${lineName(line)},`, `the ${other.side} one`]
    : [line.words, `the ${other.words}`]
  return {
    at: whereSaid(rig, line),
    message: `${sentence(one)} and ${two} undo each other's work, and neither is said to ease the other.`,
    aboard: 'Whoever hauls the one by the handbook hauls against the other, fast on its pin.',
    remedy: isPair
      ? 'Say "also against other ..." of the pair.'
      : `Say "also against ${other.labelOnSail.toLowerCase()}" of the ${line.words}, and the same the other way about.`,
    ...alsoAgainstEachOther(rig, line, other),
    related: isPair ? [] : [{ at: whereSaid(rig, other), message: `the ${other.words} is said here` }],
    about: [...aboutLine(line), ...aboutLine(other)],
    follows: [line.address, other.address],
  }
}
