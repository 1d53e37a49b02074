import type { Rig, Yard } from '../../rig/index.ts'
import { byMast } from '../by-mast.ts'
import { squareYardsOf } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'
import { capBelow, mastOf } from './masthead.ts'

/** Two yards, and the gear under the upper one, want so much between them, in metres. */
const clearance = 0.5

/** A yard that comes down further than what is below it allows: the cap it rides above, or the next yard. */
export const loweredTooLow: Rule = {
  slug: 'yard/lowered-too-low',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const yards = squareYardsOf(rig)
    const yardsOf = byMast(yards)
    for (const yard of yards) {
      const low = yard.loweredHeight
      if (!yard.hoists || low === undefined || !yard.middle) continue
      const stop = stopBelow(rig, yard, yardsOf.get(yard.mast ?? '') ?? [], yard.middle.z)
      if (!stop || low >= stop.height + stop.clear) continue
      yield {
        at: yard.span,
        message: `${sentence(yard.name)} is lowered to ${shownLength(rig, low)} up; ${stop.what} is ${shownLength(rig, stop.height)} up${stop.clear > 0 ? `, and wants ${shownLength(rig, stop.clear)} clear` : ''}.`,
        aboard: 'It comes down on what is below it, and its parrel and lifts take no load.',
        remedy: 'Check the height it hoists from, and that of what is below.',
        related: [{ at: stop.span, message: `${stop.what} is said here` }],
        about: [yard.name],
      }
    }
  },
}

interface Stop {
  readonly what: string
  readonly height: number
  readonly clear: number
  readonly span: Yard['span']
}

/** Whichever is higher: the cap below, or the yard below where it is set. */
function stopBelow(rig: Rig, yard: Yard, yards: readonly Yard[], hoisted: number): Stop | undefined {
  const mast = mastOf(rig, yard)
  const cap = mast && capBelow(mast, hoisted)
  const below = nextBelow(yard, yards, hoisted)
  const stops: readonly Stop[] = [
    ...(cap?.head
      ? [{ what: `the cap of the ${cap.name}`, height: cap.head.z, clear: 0, span: cap.span }]
      : []),
    ...(below
      ? [{ what: `the ${below.name}`, height: below.middle.z, clear: clearance, span: below.span }]
      : []),
  ]
  return stops.reduce<Stop | undefined>(
    (most, stop) => (most && reach(most) >= reach(stop) ? most : stop),
    undefined,
  )
}

const reach = ({ height, clear }: Stop) => height + clear

function nextBelow(yard: Yard, yards: readonly Yard[], hoisted: number) {
  return yards
    .flatMap(other => (other.middle ? [{ ...other, middle: other.middle }] : []))
    .filter(other => other.name !== yard.name && other.middle.z < hoisted)
    .sort((a, b) => b.middle.z - a.middle.z)[0]
}
