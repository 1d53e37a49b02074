import { fixed, units } from '../../measure/index.ts'
import { braceLimit, sharpestEver } from '../../reckon/index.ts'
import type { Yard } from '../../rig/index.ts'
import { sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'

/** Of what the rigging leaves: measures are seldom better than this, common practice, no source. */
const slack = units.deg.si

/** A yard said to brace sharper than its shrouds and backstays let it, or than any yard goes. */
export const bracedTooSharp: Rule = {
  slug: 'yard/braced-too-sharp',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const yard of rig.spars) {
      if (yard.kind !== 'yard' || yard.bracesTo === undefined) continue
      const said = yard.bracesTo
      const limit = braceLimit(yard, rig)
      if (limit.known && said < limit.value.angle - slack)
        yield {
          ...draft(yard, `and the ${limit.value.stoppedBy} stop it at ${shown(limit.value.angle)}`),
          related: rig.standing
            .filter(({ name }) => name === limit.value.stoppedBy)
            .map(({ name, span }) => ({ at: span, message: `the ${name} are said here` })),
        }
      else if (said < sharpestEver)
        yield draft(yard, `sharper than any yard goes, ${shown(sharpestEver)} from fore and aft`)
      else if (said > Math.PI / 2) yield draft(yard, 'which is beyond square')
    }
  },
}

const draft = (yard: Yard, why: string): Draft => ({
  at: yard.span,
  message: `${sentence(yard.name)} is said to brace to ${shown(yard.bracesTo ?? 0)}, ${why}.`,
  aboard:
    'Braced up to that, its lee arm lies hard against the rigging, or it never gets there and the fan is wrong.',
  remedy:
    'Say how sharp it goes, or check where the shrouds and backstays stand and how far the yards hang forward.',
  about: [yard.name],
})

const shown = (angle: number): string => `${fixed(angle / units.deg.si, 0)}°`
