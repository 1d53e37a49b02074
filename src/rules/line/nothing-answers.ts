import type { Line, Rig } from '../../rig/index.ts'
import {
  drawsClewForward,
  gathers,
  getsHeadIn,
  hoistsHead,
  isHalyard,
  isLazyJack,
  isOuthaul,
  isWorkingGear,
} from '../deeds.ts'
import { type Gear, gearOf } from '../gear.ts'
import { hungAlike, soOthers } from '../hung-alike.ts'
import { aboutLine, bothSubject, sentence, subject } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A line of a kind that is worked against another, with nothing said to be eased when it is hauled. */
export const nothingAnswers: Rule = {
  slug: 'line/nothing-answers',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const gear = gearOf(rig)
    const unanswered = rig.lines.filter(
      line => isUnanswered(line) && needsAnswer(rig, line) && !wantsDownhaul(rig, gear, line),
    )
    for (const { at, first, others } of hungAlike(rig, unanswered)) {
      const lines = [first, ...others]
        .flatMap(({ pairKey }) => rig.pairAt.get(pairKey) ?? [])
        .filter(isUnanswered)
      const isPair = lines.filter(line => line.pairKey === first.pairKey).length > 1
      yield {
        at,
        message: `${sentence(isPair ? bothSubject(first) : subject(first))} is answered by nothing: no line is said to be eased when it is hauled.${soOthers(others, others.length > 1 ? 'are' : 'is')}`,
        aboard: 'Hauled against a line that is still fast, it tears the sail or carries away the gear.',
        remedy:
          'Say what is eased with it, as in "against sheet and halyard", or what gives way, as in "answered by the sail\'s own pull".',
        about: lines.flatMap(aboutLine),
        follows: lines.map(line => line.address),
      }
    }
  },
}

const isUnanswered = (line: Line) => line.counterparts.length === 0 && !line.answeredBy

/** The halyard of a jib that has no downhaul: the want of that is told of the sail. */
function wantsDownhaul(rig: Rig, gear: Gear, line: Line): boolean {
  const sail = rig.sailAt.get(line.host?.name ?? '')
  if (!rig.isVessel || !sail || !hoistsHead(line)) return false
  return (sail.class === 'headsail' || sail.class === 'staysail') && !gear.ofSail(sail).some(getsHeadIn)
}

/**
 * Whether lines of this kind have something that fights them. Not asked of the lines that pull only against the
 * sail or a weight: a flag halyard, a tack hauled down, an outhaul, the single sheet of a boom, a slab line.
 */
function needsAnswer(rig: Rig, line: Line): boolean {
  if (!line.deed?.found || !isWorkingGear(line) || isLazyJack(line)) return false
  switch (line.function) {
    case 'hoists':
      return isHalyard(line) || line.deed.verb !== 'hoists'
    case 'extends':
      return extendsAgainstAnother(rig, line)
    case 'gathers':
      return gathers(line) && line.kind !== 'slab line' && line.kind !== 'tricing line'
    case 'reefs':
      return line.kind === 'reef tackle'
    case 'keeps':
      return line.pair || line.deed.object === 'boom'
    case 'lowers':
    case 'clews':
    case 'turns':
      return true
    case undefined:
      return false
  }
}

/** Every sheet of a square sail has a clewline, a course's tack its clewgarnet, one of two sheets the other. */
function extendsAgainstAnother(rig: Rig, line: Line): boolean {
  if (isOuthaul(line)) return false
  const isSquare = line.host?.kind === 'sail' && rig.sailAt.get(line.host.name)?.kind === 'square'
  return isSquare || drawsClewForward(line) || (line.pair && line.deed?.object !== 'tack')
}
