import type { Mast, MastSection, Rig } from '../../rig/index.ts'
import { unreadPage } from '../../syntax/index.ts'
import { listed } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'

/** A part of a stepped mast without the height of its head, in a rig that is measured elsewhere. */
export const partWithoutHeight: Rule = {
  slug: 'mast/part-without-height',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    if (isMeasured(rig)) for (const { part, masts } of partsWithout(rig)) yield told(part, masts)
  },
}

interface Without {
  readonly part: MastSection
  readonly masts: readonly [Mast, ...Mast[]]
}

/** Where the text says them: a part that a mast takes over from another is told once for both. */
function partsWithout({ masts }: Rig): Iterable<Without> {
  const parts = new Map<string, Without>()
  for (const mast of masts.filter(({ foot }) => foot)) {
    for (const part of mast.sections.filter(({ head }) => !head)) {
      const key = `${part.span.source} ${part.span.start}`
      const known = parts.get(key)
      parts.set(key, { part, masts: known ? [...known.masts, mast] : [mast] })
    }
  }
  return parts.values()
}

function told({ name, span }: MastSection, masts: Without['masts']): Draft {
  const isDrawn = masts[0].sections.some(({ foot, head }) => foot && head)
  const orShrouds = /\bshrouds$/.test(name)
    ? '; if the mast has no shrouds, say "without shrouds" behind its own name'
    : ''
  return {
    at: span,
    message: `It isn't said how high the "${name}" of ${listed(masts.map(mast => `the ${mast.name}`))} goes.`,
    aboard: isDrawn
      ? "The part isn't drawn, nor what stands on it."
      : "The mast isn't drawn, and nothing is led to it.",
    remedy: `Say how high it goes, as in "to 9.50 m up"${orShrouds}.`,
    about: masts.map(mast => mast.name),
    // A spar set in under a mast is told as that.
    follows: [name, unreadPage],
  }
}

/** Whether any part of a mast, any spar or any sail stands somewhere. */
const isMeasured = ({ masts, spars, sails }: Rig): boolean =>
  masts.some(({ sections }) => sections.some(({ head }) => head)) ||
  spars.some(spar => (spar.kind === 'yard' ? spar.middle : spar.inner)) ||
  sails.some(sail => (sail.kind === 'square' ? sail.head : sail.corners.length > 0))
