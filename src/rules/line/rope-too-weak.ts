import { newtons, showForce } from '../../measure/index.ts'
import { type LoadFigures, leastSafety } from '../../reckon/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { type HungAlike, hungAlike, soOthers } from '../hung-alike.ts'
import { aboutLine, measuresOf, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownThickness, speaksFeet } from '../shown.ts'

/** Rope that is good for less than the least factor of what its line may bear. */
export const ropeTooWeak: Rule = {
  slug: 'line/rope-too-weak',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const loads = figures.loads()
    const weak = rig.lines.filter(line => {
      const safety = loads.get(line.address)?.safety
      return safety?.known && safety.value < leastSafety(line)
    })
    for (const group of hungAlike(rig, weak)) {
      const { at, first, others } = group
      const breaks = [first, ...others].some(line => (safetyOf(loads.get(line.address)) ?? 1) < 1)
      yield {
        at,
        severity: breaks ? 'error' : 'warning',
        message: told(rig, group, loads.get(first.address)),
        aboard: 'It parts in a squall, when nobody can be spared to mend it.',
        remedy: 'Reeve thicker or stronger rope, or more purchase.',
        about: [first, ...others].flatMap(aboutLine),
        follows: first.host ? [measuresOf(first.host.name)] : [],
      }
    }
  },
}

const safetyOf = (loads: LoadFigures | undefined): number | undefined =>
  loads?.safety.known ? loads.safety.value : undefined

function told(rig: Rig, { first, others }: HungAlike, loads: LoadFigures | undefined): string {
  const strain = newtons(loads?.strain.known ? loads.strain.value : 0)
  const safety = safetyOf(loads) ?? 0
  const unit = speaksFeet(rig) ? 'lbf' : 'kN'
  return (
    `${sentence(first.words)} may bear ${showForce(strain, unit)}, and its ${rope(rig, first)} is good for ${showForce(newtons(strain * safety), unit)}: ` +
    `${safety.toFixed(1)} times, where ${leastSafety(first)} is the least.${soOthers(others, others.length > 1 ? 'are' : 'is')}`
  )
}

const rope = (rig: Rig, { rope }: Line): string =>
  `${shownThickness(rig, rope?.diameter ?? 0)} ${rope?.material ?? 'rope'}`
