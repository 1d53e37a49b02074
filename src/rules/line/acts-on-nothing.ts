import type { Line, LineDeed, Rig } from '../../rig/index.ts'
import { unreadPage } from '../../syntax/index.ts'
import { nearest } from '../../text/index.ts'
import { type HungAlike, hungAlike, soOthers } from '../hung-alike.ts'
import { aboutLine, listed, sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'

/** A line whose haul does nothing: no deed is said, or what it should act on isn't there. */
export const actsOnNothing: Rule = {
  slug: 'line/acts-on-nothing',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const alike of hungAlike(
      rig,
      rig.lines.filter(line => !line.deed?.found),
    ))
      yield idle(rig, alike)
  },
}

function idle(rig: Rig, { at, first, others }: HungAlike): Draft {
  const lines = [first, ...others].flatMap(({ pairKey }) => rig.pairAt.get(pairKey) ?? [])
  const { deed } = first
  return {
    at,
    message: `${deed ? withoutObject(first, deed) : withoutDeed(first)}${soOthers(others, others.length > 1 ? 'do' : 'does')}`,
    aboard: 'A hand sent to haul it hauls on nothing, and what it should have worked stays as it is.',
    remedy: deed
      ? objectsThere(rig, first, deed)
      : 'Say what it does to what, as in "hoists yard" or "draws clew aft".',
    about: lines.flatMap(aboutLine),
    // The want of a halyard, a sheet or a clewline on its sail may be no more than this line's.
    explains: lines.flatMap(line => [line.address, line.pairKey, ...(line.host ? [line.host.name] : [])]),
    follows: [unreadPage, ...lines.flatMap(({ address, host }) => (host ? [address, host.name] : [address]))],
  }
}

const withoutDeed = (line: Line) =>
  `${sentence(line.words)} acts on nothing: it isn't said what hauling it does.`

function withoutObject(line: Line, { verb, object }: LineDeed): string {
  const none = line.host ? `the ${line.host.name} has none` : 'there is none'
  return `${sentence(line.words)} ${verb} ${object}, and ${none}.`
}

/** What it could have meant, or else all that it could act on. */
function objectsThere(rig: Rig, line: Line, { object }: LineDeed): string {
  const there = objectsOn(rig, line)
  const near = nearest(object, there)
  if (near.length > 0) return `Did you mean ${near.map(name => `"${name}"`).join(' or ')}?`
  return there.length > 0 ? `It can act on ${listed(there)}.` : 'Say what it acts on, and declare that.'
}

/** What a line hung on this sail, or on nothing, can act on. */
function objectsOn(rig: Rig, { host }: Line): readonly string[] {
  const sail = host?.kind === 'sail' ? rig.sailAt.get(host.name) : undefined
  if (!sail) return host ? ['yard', 'yardarm', 'boom', 'gaff'] : rig.spars.map(spar => spar.name)
  if (sail.kind === 'square') {
    return ['yard', 'clew', 'foot', 'leech', ...(sail.reefs.length > 0 ? ['reef cringle'] : [])]
  }
  const spars = sail.on.flatMap(name => rig.sparAt.get(name)?.kind.replace('slung ', '') ?? [])
  const isFourCornered =
    sail.class === 'gaff sail' ||
    sail.class === 'lugsail' ||
    sail.corners.some(({ name }) => name === 'throat')
  return [
    ...(isFourCornered ? ['throat', 'peak'] : ['head']),
    'tack',
    'clew',
    'luff',
    'leech',
    'foot',
    ...spars,
  ]
}
