import { missingCorners } from '../../reckon/index.ts'
import type { Sail } from '../../rig/index.ts'
import { unreadPage } from '../../syntax/index.ts'
import { listed, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A sail of which some corners are given and some are not. */
export const cornerMissing: Rule = {
  slug: 'sail/corner-missing',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const sail of rig.sails) {
      const { given, missing } = cornersOf(sail)
      if (given.length === 0 || missing.length === 0) continue
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} has its ${listed(given)} measured, and not its ${listed(missing)}.`,
        aboard:
          'Until all are known it stands on no sail plan, and neither its area nor her balance is reckoned.',
        remedy: `Say where its ${listed(missing)} ${missing.length > 1 ? 'are' : 'is'}, as in ${exampleOf(sail, missing)}.`,
        about: [sail.name],
        // A corner may be counted from a spar that is not known.
        follows: [sail.name, unreadPage],
      }
    }
  },
}

interface Corners {
  readonly given: readonly string[]
  readonly missing: readonly string[]
}

/** The corners that a sail gives and lacks; of a square sail its head and its foot. */
function cornersOf(sail: Sail): Corners {
  switch (sail.kind) {
    case 'square':
      return parted(['head', 'foot'], name => sail[name as 'head' | 'foot'] !== undefined)
    case 'studdingsail':
      return parted(['clew', 'tack', 'outer head', 'inner head'], name =>
        sail.corners.some(corner => corner.name === name),
      )
    case 'fore-and-aft':
      return { given: sail.corners.map(({ name }) => name), missing: missingCorners(sail) }
  }
}

const parted = (names: readonly string[], isGiven: (name: string) => boolean): Corners => ({
  given: names.filter(isGiven),
  missing: names.filter(name => !isGiven(name)),
})

const exampleOf = ({ kind }: Sail, [name = '']: readonly string[]): string =>
  kind === 'square' ? `"${name} 12.40 m wide 9.80 m up"` : `"${name} 5.30 m aft 9.80 m up"`
