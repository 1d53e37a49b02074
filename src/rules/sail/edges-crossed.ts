import { edgesCross } from '../../reckon/index.ts'
import { listed, measuresOf, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A fore-and-aft sail whose edges cross, as two corners stand in each other's place. */
export const edgesCrossed: Rule = {
  slug: 'sail/edges-crossed',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const sail of rig.sails) {
      if (sail.kind !== 'fore-and-aft' || sail.corners.length < 4) continue
      if (!edgesCross(sail.corners.map(({ at }) => at))) continue
      yield {
        at: sail.span,
        message: `${sentence(sail.name)} has edges that cross: its corners, ${listed(sail.corners.map(({ name }) => name))}, don't go round it in that order.`,
        aboard: "No cloth can be cut so: two corners stand in each other's place, or a figure is wrong.",
        remedy:
          'Check how far aft and how high each corner stands; the peak and the clew are the after ones.',
        about: [sail.name],
        explains: [measuresOf(sail.name)],
      }
    }
  },
}
