import type { Line, Rig } from '../../rig/index.ts'
import { nearest } from '../../text/index.ts'
import { aboutLine, listed, sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'

/** A line whose haul does nothing: no deed is said, or what it should act on isn't there. */
export const actsOnNothing: Rule = {
  slug: 'line/acts-on-nothing',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const lines of rig.pairAt.values()) {
      const [line] = lines
      if (!line || line.deed?.found) continue
      yield {
        ...(line.deed ? withoutObject(rig, line, line.deed.object) : withoutDeed(line)),
        ...common(lines),
      }
    }
  },
}

const common = (lines: readonly Line[]) => ({
  aboard: 'A hand sent to haul it hauls on nothing, and what it should have worked stays as it is.',
  about: lines.flatMap(aboutLine),
  // The want of a halyard, a sheet or a clewline on its sail may be no more than this line's.
  explains: lines.flatMap(line => [line.address, line.pairKey, ...(line.host ? [line.host.name] : [])]),
  follows: lines.map(line => line.address),
})

const withoutDeed = (line: Line): Omit<Draft, 'about'> => ({
  at: line.span,
  message: `${sentence(line.words)} acts on nothing: it isn't said what hauling it does.`,
  remedy: 'Say what it does to what, as in "hoists yard", "raises clew" or "draws clew aft".',
})

function withoutObject(rig: Rig, line: Line, object: string): Omit<Draft, 'about'> {
  const there = objectsOn(rig, line)
  const near = nearest(object, there)
  const host = line.host ? `the ${line.host.name} has none` : 'there is none'
  return {
    at: line.span,
    message: `${sentence(line.words)} ${line.deed?.verb} ${object}, and ${host}.`,
    remedy:
      near.length > 0
        ? `Did you mean ${near.map(name => `"${name}"`).join(' or ')}?`
        : `It has ${listed(there)}.`,
  }
}

/** What a line hung on this sail or spar can act on. */
function objectsOn(rig: Rig, line: Line): readonly string[] {
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  if (!sail) return rig.spars.map(spar => spar.name)
  if (sail.kind === 'square') {
    return ['yard', 'clew', 'foot', 'leech', ...(sail.reefs.length > 0 ? ['reef cringle'] : [])]
  }
  const spars = sail.on.flatMap(name => rig.sparAt.get(name)?.kind ?? [])
  return [...sail.corners.map(corner => corner.name), 'leech', 'foot', ...spars]
}
