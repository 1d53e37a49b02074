import type { Line, Rig } from '../../rig/index.ts'
import { drawsClewForward, isOuthaul } from '../deeds.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** Two lines of one sail that pull against each other, of which only one is said to ease the other. */
export const counterpartOneWay: Rule = {
  slug: 'line/counterpart-one-way',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const told = new Set<string>()
    for (const line of rig.lines) {
      for (const other of line.counterparts.flatMap(address => rig.lineAt.get(address) ?? [])) {
        const key = `${line.pairKey} ${other.pairKey}`
        if (told.has(key) || !isOneWay(rig, line, other)) continue
        told.add(key)
        const easy = line.pairKey === other.pairKey ? 'the other one' : `the ${line.words}`
        yield {
          at: other.span,
          message: `${sentence(line.words)} eases the ${other.words} when it is hauled, but ${other.words} isn't said to ease ${easy}.`,
          aboard: 'They fight over one corner of the sail: whichever is hauled, the other has to be eased.',
          remedy: `Say "also against ${wordsOnHost(line)}" of the ${other.words}.`,
          related: [{ at: line.span, message: `${line.words} is said here` }],
          about: [...aboutLine(line), ...aboutLine(other)],
          follows: [line.address, other.address],
        }
      }
    }
  },
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

/** The line as its own gear calls it: 'clewline', 'inner buntline'. */
const wordsOnHost = (line: Line) => line.labelOnSail.toLowerCase()
