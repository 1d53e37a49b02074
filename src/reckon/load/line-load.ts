import {
  type Figure,
  known,
  type Newtons,
  newtons,
  onceKnown,
  unknown,
  workedFrom,
} from '../../measure/index.ts'
import type { Spar } from '../../rig/index.ts'
import { sparMass } from '../spars/index.ts'
import { pullOfHeld } from './held.ts'
import type { SailLoad } from './sail-load.ts'
import * as share from './shares.ts'
import type { Work } from './work.ts'

/** What a line works against, before any purchase. */
export interface LineLoad {
  /** While it is hauled. */
  readonly hauled: Newtons
  /** The most it must bear. */
  readonly borne: Newtons
}

/** What the loads of lines are worked from. */
export interface Loads {
  readonly sail: (work: Work) => Figure<SailLoad>
  readonly timber: string
}

const gravity = 9.80665

/** The load of a line by what it does; `load.md` has the method of each. */
export function lineLoad(work: Work, loads: Loads): Figure<LineLoad> {
  const { deed } = work
  const sail = () => loads.sail(work)
  const spar = () => sparWeight(work.spar, loads.timber)
  switch (deed.verb) {
    case 'hoists':
      return hoisted(work, sail, spar)
    case 'cocks':
      return workedFrom([sail(), spar()], (sail, spar) => {
        const half = (share.hoisting * (spar + (isBent(work) ? wetWeight(sail) : 0))) / 2
        return load(half * (hangsFromMast(work) ? share.balanced : 1), half)
      })
    case 'tops':
      return workedFrom([sail(), spar()], (sail, spar) =>
        both(share.hoisting * pullOfHeld(work) * (spar + wetWeight(sail) / 2)),
      )
    case 'lowers':
      return workedFrom([sail()], sail => both((share.lowering * shaking(sail)) / (work.line.pair ? 2 : 1)))
    case 'raises':
      return workedFrom([sail()], sail => both(cornerRaised(deed.object) * gathered(sail)))
    case 'gathers':
      return workedFrom([sail()], sail => both((share.gathering * gathered(sail)) / work.gathering))
    case 'brings':
      return deed.direction === 'out'
        ? spread(work, sail())
        : workedFrom([sail()], sail => both(share.corner.broughtIn * gathered(sail)))
    case 'spreads':
    case 'draws':
      return spread(work, sail())
    case 'swings':
      return workedFrom([sail()], sail => drawing(sail, deed.object === 'gaff' ? share.vang : share.brace))
    case 'steadies':
      return deed.object === 'boom'
        ? workedFrom([sail()], sail => beforeItDraws(sail, share.guy))
        : unknown(`What a ${work.line.kind} bears of the pull of the rig is not reckoned.`)
    default:
      return noMethod(work)
  }
}

function hoisted(work: Work, sail: () => Figure<SailLoad>, spar: () => Figure<number>): Figure<LineLoad> {
  switch (work.deed.object) {
    case 'yard':
      return workedFrom([sail(), spar()], (sail, spar) => {
        const lifted = share.hoisting * (spar * (1 + share.fittings) + wetWeight(sail))
        const held = work.spar?.kind === 'yard' ? share.parrel : share.lug
        return load(lifted + share.parrel * sail.force, lifted + held * sail.strongForce)
      })
    case 'throat':
    case 'peak':
      return workedFrom([sail(), spar()], (sail, spar) => {
        const lifted = pullOfHeld(work) * (share.hoisting * (spar + sail.mass * gravity) + shaking(sail))
        return load(lifted, lifted + share.gaffHalyard * sail.strongForce)
      })
    case 'head':
    case 'outer head':
      return workedFrom([sail()], sail => {
        const lifted = sail.mass * gravity + shaking(sail)
        return load(lifted, Math.max(lifted, share.luff * sail.strongForce))
      })
    default:
      return noMethod(work)
  }
}

/** A corner hauled out or down to where it draws. */
function spread(work: Work, sail: Figure<SailLoad>): Figure<LineLoad> {
  const { deed, line } = work
  if (line.kind === 'outhaul' && deed.object !== 'tack') {
    return workedFrom([sail], sail =>
      load(share.gathering * gathered(sail), share.outhaul * sail.strongForce),
    )
  }
  switch (deed.object) {
    case 'boom':
      return workedFrom([sail], sail => drawing(sail, share.clew.boomed))
    case 'clew':
    case 'outer clew':
      return workedFrom([sail], sail =>
        drawing(sail, share.clew[work.sail?.kind === 'square' ? 'square' : 'triangular']),
      )
    case 'tack':
      return workedFrom([sail], sail =>
        load(shaking(sail), (work.spar?.kind === 'slung yard' ? share.lug : share.luff) * sail.strongForce),
      )
    case 'leech':
    case 'luff':
      return workedFrom([sail], sail => drawing(sail, share.bowline))
    default:
      return noMethod(work)
  }
}

/** A fixed yard is borne by its slings or its truss, and lies balanced on them. */
const hangsFromMast = ({ spar }: Work): boolean => spar?.kind === 'yard' && !spar.hoists

/** A yard may carry no sail of its own, but the clews of the one above. */
const isBent = ({ sail, spar }: Work): boolean => sail?.kind !== 'square' || sail.yard === spar?.name

const noMethod = ({ deed }: Work): Figure<never> =>
  unknown(`There is no method for the load of a line that ${deed.verb} the ${deed.object}.`)

function sparWeight(spar: Spar | undefined, timber: string): Figure<number> {
  if (!spar) return unknown('The spar it works on is not known.')
  return onceKnown(sparMass(spar, timber), mass => known(mass * gravity))
}

const wetWeight = (sail: SailLoad): number => sail.mass * share.wet * gravity

const shaking = (sail: SailLoad): number => share.handling * sail.area

/** Wet cloth, and what it shakes and slides. */
const gathered = (sail: SailLoad): number => wetWeight(sail) + shaking(sail)

function cornerRaised(object: string): number {
  if (object === 'tack') return share.corner.triced
  return object === 'clew' ? share.corner.raised : share.corner.reefed
}

const load = (hauled: number, borne: number): LineLoad => ({ hauled: newtons(hauled), borne: newtons(borne) })
const both = (force: number): LineLoad => load(force, force)
/** A share of the force of a sail, set up before it draws. */
const beforeItDraws = (sail: SailLoad, part: number): LineLoad =>
  load(share.beforeItDraws * part * sail.force, part * sail.strongForce)
/** A share of the force of a sail that draws. */
const drawing = (sail: SailLoad, part: number): LineLoad => load(part * sail.force, part * sail.strongForce)
