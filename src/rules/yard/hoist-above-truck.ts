import type { Rig } from '../../rig/index.ts'
import { sentence } from '../naming.ts'
import type { Draft, Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { mastOf, truckOf } from './masthead.ts'

/** A yard hoisted, or a sail's head set, above the truck of its mast. */
export const hoistAboveTruck: Rule = {
  slug: 'yard/hoist-above-truck',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const told = new Set<string>()
    for (const { name, mast: on, height, follows, span } of tops(rig)) {
      const mast = mastOf(rig, { mast: on })
      const truck = mast && truckOf(mast)
      if (truck === undefined || height <= truck || told.has(follows ?? '')) continue
      told.add(name)
      yield {
        at: span,
        message: `${sentence(name)} reaches ${shownLength(rig, height)} up, and the truck of the ${mast?.name} is ${shownLength(rig, truck)} up.`,
        aboard: 'There is no mast there for it to hang on.',
        remedy: 'One of the two heights is wrong; both are counted from the waterline.',
        related: mast ? [{ at: mast.span, message: `the ${mast.name} is said here` }] : [],
        about: [name, ...(mast ? [mast.name] : [])],
      } satisfies Draft
    }
  },
}

interface Top {
  readonly name: string
  readonly mast: string | undefined
  readonly height: number
  /** A sail bent to a yard that is itself too high is no fault of its own. */
  readonly follows?: string
  readonly span: Draft['at']
}

/** The highest point of every yard, and of every sail that stands on a mast. */
function tops(rig: Rig): readonly Top[] {
  const yards = rig.spars.flatMap(spar =>
    spar.kind === 'yard' && spar.middle ? [{ ...topOf(spar), height: spar.middle.z }] : [],
  )
  const sails = rig.sails.flatMap(sail => {
    if (sail.kind === 'square')
      return sail.head ? [{ ...topOf(sail), height: sail.head.height, follows: sail.yard }] : []
    const head = sail.corners.find(corner => corner.name === 'head')
    return head && sail.class === 'gaff topsail' ? [{ ...topOf(sail), height: head.at.z }] : []
  })
  return [...yards, ...sails]
}

const topOf = ({ name, mast, span }: { name: string; mast: string | undefined; span: Draft['at'] }) => ({
  name,
  mast,
  span,
})
