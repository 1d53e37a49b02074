import type { Figure, SquareMetres } from '../../measure/index.ts'
import type { ForeAndAftSail, Line, Rig, Sail } from '../../rig/index.ts'
import { gathers, gathersClew, getsHeadIn, lowersYard, raisesClew } from '../deeds.ts'
import { gearOf, isShackled } from '../gear.ts'
import { sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { shownArea } from '../shown.ts'

/** A headsail larger than this, in square metres, can't be got down by hand from the stay's foot. */
const byHand = 20

/** A sail with no line that takes it in: it stays up, or thrashes, once what set it is let go. */
export const nothingGetsItIn: Rule = {
  slug: 'sail/nothing-gets-it-in',
  severity: 'error',
  judges: 'vessels',
  *judge({ rig, figures }) {
    const gear = gearOf(rig)
    for (const sail of rig.sails) {
      const lines = gear.ofSail(sail)
      if (lines.length === 0) continue
      const want = wantOf(rig, sail, lines, figures.sails.get(sail.name)?.area)
      if (!want) continue
      yield {
        at: sail.span,
        severity: want.severity,
        message: `${sentence(sail.name)} ${want.message}.`,
        aboard: want.aboard,
        remedy: want.remedy,
        about: [sail.name],
        follows: [sail.name, takingIn(sail.name)],
      }
    }
  },
}

/** What the rule on yards that can't be brought down explains: the want of clewlines is then told with the yard. */
export const takingIn = (sail: string): string => `taking in the ${sail}`

interface Want {
  readonly severity: 'error' | 'warning'
  readonly message: string
  readonly aboard: string
  readonly remedy: string
}

function wantOf(
  rig: Rig,
  sail: Sail,
  lines: readonly Line[],
  area: Figure<SquareMetres> | undefined,
): Want | undefined {
  if (sail.kind === 'square') return squareWant(isShackled(sail, 'clew'), lines)
  switch (sail.class) {
    case 'headsail':
    case 'staysail':
      return lines.some(getsHeadIn) ? undefined : downhaulWant(rig, area)
    case 'gaff topsail':
      return lines.some(raisesClew) || lines.some(gathersClew) ? undefined : gaffTopsailWant
    case 'gaff sail':
      return isBrailed(rig, sail) && !lines.some(gathers) ? brailsWant : undefined
    case 'lugsail':
    case 'lateen sail':
    case 'fore-and-aft sail':
      // The weight of the yard brings it down with its halyard.
      return undefined
  }
}

/** A sail whose clews are shackled comes in by its yard's downhauls, or by its buntlines where the yard is fixed. */
function squareWant(clewsAreShackled: boolean, lines: readonly Line[]): Want | undefined {
  if (lines.some(raisesClew) || lines.some(gathersClew)) return undefined
  if (clewsAreShackled && (lines.some(lowersYard) || lines.some(gathers))) return undefined
  return {
    severity: 'error',
    message: 'has neither clewlines nor clewgarnets: nothing gets it in',
    aboard: 'With the sheets let go the clews flog, and nobody can lay out on the yard to furl it.',
    remedy:
      'Give it a pair that "raises clew"; or, where the clews are shackled below, say "clews shackled to foot yard".',
  }
}

function downhaulWant(rig: Rig, area: Figure<SquareMetres> | undefined): Want {
  const isLarge = area?.known === true && area.value > byHand
  const size = area?.known ? ` of ${shownArea(rig, area.value)}` : ''
  return {
    severity: isLarge ? 'error' : 'warning',
    message: `has no downhaul: nothing gets it in${isLarge ? `, and a sail${size} is more than ${shownArea(rig, byHand)}` : ''}`,
    aboard:
      'With the halyard let go the sail stays up the stay in any wind, and somebody has to go out to drag it down.',
    remedy: 'Give it a line that "lowers head".',
  }
}

const gaffTopsailWant: Want = {
  severity: 'warning',
  message: 'has no clewline: nothing gets its clew in to the mast',
  aboard: 'It can only be taken in by hands aloft.',
  remedy: 'Give it a line that "raises clew".',
}

const brailsWant: Want = {
  severity: 'error',
  message: 'is set along a standing gaff and has no brails: nothing gets it in',
  aboard: "A sail on a standing gaff can't be lowered; unbrailed, it stays spread.",
  remedy:
    'If the gaff is lowered with it, say how low of the gaff, as in "hoists from 2.30 m up"; or give it pairs that "gathers leech".',
}

const isBrailed = (rig: Rig, sail: ForeAndAftSail) =>
  sail.on.some(name => {
    const spar = rig.sparAt.get(name)
    return spar?.kind === 'gaff' && !spar.hoists
  })
