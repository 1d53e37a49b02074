import type { Line, Rig } from '../../rig/index.ts'
import type { Span } from '../../text/index.ts'
import { alsoAgainst } from '../also-against.ts'
import { drawsClewForward, isOuthaul } from '../deeds.ts'
import { aboutLine, lineName, sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'
import { whereSaid } from '../where.ts'

/** Two lines of one sail that pull against each other, of which only one is said to ease the other. */
export const counterpartOneWay: Rule = {
  slug: 'line/counterpart-one-way',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const told = new Set<string>()
    for (const line of rig.lines) {
      for (const other of line.counterparts.flatMap(address => rig.lineAt.get(address) ?? [])) {
        if (!isOneWay(rig, line, other)) continue
        // Said once in a gear, it is told once, for the first of the sails that the gear is hung on.
        const at = whereSaid(rig, other)
        const key = `${at.source} ${at.start} ${other.labelOnSail} ${line.labelOnSail}`
        if (told.has(key)) continue
        told.add(key)
        yield oneWay(rig, line, other, at)
      }
    }
  },
}

function oneWay(rig: Rig, line: Line, other: Line, at: Span): Draft {
  const isPair = line.pairKey === other.pairKey
  const [easer, eased] = isPair
    ? [lineName(line), `the ${other.side} one`]
    : [line.words, `the ${other.words}`]
  const back = isPair ? `the ${line.side} one` : `the ${line.words}`
  return {
    at,
    message: `${sentence(isPair ? `${easer},` : easer)} is said to ease ${eased} when it is hauled, but ${eased} isn't said to ease ${back}.`,
    aboard: 'The two pull against each other: whichever is hauled, the other has to be eased.',
    remedy: isPair
      ? 'Say "against other ..." of the pair.'
      : `Say "also against ${line.labelOnSail.toLowerCase()}" of the ${other.words}.`,
    ...alsoAgainst(rig, other, line),
    related: [{ at: whereSaid(rig, line), message: `the ${line.words} is said here` }],
    about: [...aboutLine(line), ...aboutLine(other)],
    follows: [line.address, other.address],
  }
}

/** A line that has no answer at all is told by another rule. */
function isOneWay(rig: Rig, line: Line, other: Line): boolean {
  if (other.counterparts.length === 0 || !fight(rig, line, other)) return false
  return !other.counterparts.some(address => address === line.address)
}

/**
 * Whether two lines must each ease the other: what extends a corner and what gathers or clews it; what hoists and
 * what lowers or clews; the two that swing one spar; the tack and sheet of one clew. Not so a topping lift, which
 * the sheet lets rise, or a tack against buntlines, which hang slack from it.
 */
function fight(rig: Rig, line: Line, other: Line): boolean {
  if (!line.host || sailOf(rig, line) !== sailOf(rig, other)) return false
  return opposes(line, other) || opposes(other, line)
}

function opposes(a: Line, b: Line): boolean {
  switch (a.function) {
    case 'hoists':
      return (
        a.deed?.verb === 'hoists' &&
        (b.function === 'lowers' || b.function === 'clews' || b.function === 'gathers')
      )
    case 'extends':
      if (b.function === 'gathers') return !drawsClewForward(a)
      return b.function === 'clews' || (b.function === 'extends' && !isOuthaul(b))
    case 'turns':
      return b.function === 'turns'
    default:
      return false
  }
}

const sailOf = (rig: Rig, line: Line): string | undefined => {
  const { host } = line
  if (host?.kind !== 'spar') return host?.name
  const bent = rig.sails.find(sail =>
    sail.kind === 'square' ? sail.yard === host.name : sail.on.includes(host.name),
  )
  return bent?.name ?? host.name
}
