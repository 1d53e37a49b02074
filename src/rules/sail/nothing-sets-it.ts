import type { Line, Rig, Sail } from '../../rig/index.ts'
import { hoistsPeak, hoistsThroat, isHalyard, isOuthaul } from '../deeds.ts'
import { gearOf, sparsOf } from '../gear.ts'
import { listed, sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'

/**
 * A sail that can't be set: without any gear, or without the line its kind is set by. Square sails are set by
 * the halyard of a hoisting yard or else by their sheets, which have rules of their own.
 */
export const nothingSetsIt: Rule = {
  slug: 'sail/nothing-sets-it',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    if (rig.lines.length === 0 && rig.sails.length > 1) {
      yield withoutRigging(rig)
      return
    }
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      const lines = gear.ofSail(sail)
      const want = lines.length === 0 ? noGear : wantOf(rig, sail, lines)
      if (want) yield unset(sail, want)
    }
  },
}

interface Want {
  readonly message: string
  readonly remedy: string
}

const noGear: Want = {
  message: 'has no gear: nothing sets it, and nothing gets it in',
  remedy: 'Hang a gear on it, as in "gear jib", or say its lines.',
}

function unset(sail: Sail, { message, remedy }: Want): Draft {
  return {
    at: sail.span,
    message: `${sentence(sail.name)} ${message}.`,
    aboard: "The sail can't be spread.",
    remedy,
    about: [sail.name],
    ...(message === noGear.message ? { explains: [sail.name, ...sparsOf(sail)] } : {}),
    follows: [sail.name],
  }
}

/** What a sail that has lines lacks to be set; undefined where it lacks nothing. */
function wantOf(rig: Rig, sail: Sail, lines: readonly Line[]): Want | undefined {
  if (sail.kind === 'square') return undefined
  if (sail.class !== 'gaff sail') return lines.some(isHalyard) ? undefined : halyardWanted
  const gaff = sail.on.map(name => rig.sparAt.get(name)).find(spar => spar?.kind === 'gaff')
  if (!gaff) return lines.some(isHalyard) || lines.some(isOuthaul) ? undefined : halyardWanted
  const isStanding = gaff.kind === 'gaff' && !gaff.hoists
  if (isStanding) return lines.some(isOuthaul) ? undefined : outhaulWanted
  const missing = [
    ...(lines.some(hoistsThroat) ? [] : ['throat']),
    ...(lines.some(hoistsPeak) ? [] : ['peak']),
  ]
  return missing.length > 0 ? gaffHalyardsWanted(missing) : undefined
}

const halyardWanted: Want = {
  message: 'has no halyard: nothing sets it',
  remedy: 'Give it a line that "hoists head".',
}

const outhaulWanted: Want = {
  message: 'is set along a standing gaff and has no outhaul: nothing sets it',
  remedy:
    'Give it a line that "spreads peak", and one that "spreads clew"; or say from what height the gaff hoists.',
}

const gaffHalyardsWanted = (missing: readonly string[]): Want => ({
  message: `has a hoisting gaff and no ${missing.join(' or ')} halyard: nothing sets it`,
  remedy: `Give it ${listed(missing.map(corner => `a line that "hoists ${corner}"`))}; or, where the gaff stands aloft, leave out the height it hoists from.`,
})

function withoutRigging(rig: Rig): Draft {
  return {
    at: rig.vessel.span,
    message: `The rig has ${rig.sails.length} sails and no line: nothing sets them, and nothing gets them in.`,
    aboard: 'No sail can be spread.',
    remedy: "Hang a gear on each sail; or, where her running rigging isn't recorded, allow this and say so.",
    about: rig.sails.map(sail => sail.name),
    explains: [
      ...rig.sails.flatMap(sail => [sail.name, ...sparsOf(sail)]),
      ...rig.spars.map(spar => spar.name),
    ],
  }
}
