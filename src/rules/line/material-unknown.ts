import { knowsMaterial, materials } from '../../reckon/index.ts'
import { nearest } from '../../text/index.ts'
import { hungAlike, soOthers } from '../hung-alike.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'

/** Rope of a material for which there is no table of strength. */
export const materialUnknown: Rule = {
  slug: 'line/material-unknown',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const strange = rig.lines.filter(
      ({ rope }) => rope?.material !== undefined && !knowsMaterial(rope.material),
    )
    for (const { at, first, others } of hungAlike(rig, strange)) {
      const material = first.rope?.material ?? ''
      const near = nearest(material, materials)
      yield {
        at,
        message: `${sentence(first.words)} is of "${material}", for which there is no table of strength: its safety can't be reckoned.${soOthers(others, others.length > 1 ? 'are' : 'is')}`,
        aboard: 'Nobody can say what it bears.',
        remedy:
          near.length > 0
            ? `Say its material as one of these: ${near.join(', ')}.`
            : `Say its material as one that is known, as ${materials.slice(0, 3).join(', ')}.`,
        about: [first, ...others].flatMap(aboutLine),
      }
    }
  },
}
