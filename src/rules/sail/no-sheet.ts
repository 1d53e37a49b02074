import type { Line, Rig, Sail } from '../../rig/index.ts'
import { isOuthaul, sheetsBoom, sheetsClew } from '../deeds.ts'
import { gearOf, isShackled } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A sail whose clew is held by nothing: neither sheeted nor shackled. */
export const noSheet: Rule = {
  slug: 'sail/no-sheet',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      const lines = gear.ofSail(sail)
      if (lines.length === 0 || isShackled(sail, 'clew') || isSheeted(rig, sail, lines)) continue
      const clews =
        sail.kind === 'square' ? 'its clews are neither sheeted nor shackled' : 'nothing holds its clew'
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} has no sheet: ${clews}.`,
        aboard: 'The sail flogs, and can neither be set nor trimmed.',
        remedy:
          sail.kind === 'square'
            ? 'Give it a pair that "spreads clew"; or, where the clews are shackled below, say "clews shackled to foot yard".'
            : 'Give it a sheet that "draws clew aft", or "draws boom in" where its foot is on a boom.',
        about: [sail.name],
        follows: [sail.name],
      }
    }
  },
}

/** A sail on a boom is sheeted by the boom; an outhaul only stretches its foot. */
function isSheeted(rig: Rig, sail: Sail, lines: readonly Line[]): boolean {
  if (sail.kind === 'square') return lines.some(sheetsClew)
  const hasBoom = sail.on.some(name => rig.sparAt.get(name)?.kind === 'boom')
  if (hasBoom && lines.some(sheetsBoom)) return true
  return lines.some(line => sheetsClew(line) && (!hasBoom || !isOuthaul(line)))
}
