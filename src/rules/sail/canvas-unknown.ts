import { canvasNames, knowsCanvas } from '../../reckon/index.ts'
import { nearest } from '../../text/index.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** A sail of canvas that is on no list, or of a number that its list doesn't have. */
export const canvasUnknown: Rule = {
  slug: 'sail/canvas-unknown',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    for (const { name, span, cloth } of rig.sails) {
      const list = cloth.list ?? figures.assumptions.canvas
      if (cloth.number === undefined || knowsCanvas(list, cloth.number)) continue
      const isListed = canvasNames.includes(list)
      const near = isListed ? [] : nearest(list, canvasNames)
      yield {
        at: span,
        message: isListed
          ? `${sentence(name)} is of number ${cloth.number} ${list}, and no weight of that number is known.`
          : `${sentence(name)} is of "${list}", which is on no list of canvas.`,
        aboard: 'What it weighs is not reckoned, and so neither are the hands that get it in.',
        remedy:
          near.length > 0
            ? `Say it as one of these: ${near.join(', ')}.`
            : `Say a number of one of these: ${canvasNames.join(', ')}.`,
        about: [name],
      }
    }
  },
}
