import type { Line, Rig, Sail } from '../../rig/index.ts'
import { sheetsClew } from '../deeds.ts'
import { gearOf } from '../gear.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** A sheet block no further out than this, in metres, stands on the centreline: on a horse. */
const onCentreline = 0.3

/** A jib or staysail with a sheet on one side only: it can't go about. */
export const sheetOneSide: Rule = {
  slug: 'sail/sheet-one-side',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      if (sail.kind === 'square' || (sail.class !== 'headsail' && sail.class !== 'staysail')) continue
      const sheets = gear.ofSail(sail).filter(sheetsClew)
      const [sheet, second] = sheets
      if (!sheet || second || sheet.pair || runsAmidships(rig, sail, sheet)) continue
      yield {
        at: whereHung(rig, sheet),
        message: `${sentence(sail.name)} has a sheet on one side only.`,
        aboard: "She can't go about with it: on the other tack nothing holds the clew.",
        remedy:
          'Say "pair" of the sheet, and belay one on each side. A sail with a boom, or a sheet on a horse, needs only one.',
        about: [sail.name, ...aboutLine(sheet)],
        follows: [sail.name],
      }
    }
  },
}

/** On a boom, or through a block on a horse, one sheet serves both tacks. */
function runsAmidships(rig: Rig, sail: Sail, sheet: Line): boolean {
  const hasBoom = sail.kind !== 'square' && sail.on.some(name => rig.sparAt.get(name)?.kind === 'boom')
  return (
    hasBoom ||
    sheet.horse !== undefined ||
    sheet.belay?.side === 'centre' ||
    sheet.lead.slice(1, -1).some(({ at }) => Math.abs(at.y) <= onCentreline)
  )
}
