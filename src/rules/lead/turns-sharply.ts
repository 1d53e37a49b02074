import { fixed, units } from '../../measure/index.ts'
import { aboutLine, bothSubject, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import { berthOf } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** A rope that turns further than this, in degrees, without a sheave, is nipped. */
const sharpest = 90

/** A line that turns sharply where no sheave turns with it: at a thimble, a bull's-eye, a hook. */
export const turnsSharply: Rule = {
  slug: 'lead/turns-sharply',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const sharp = [...figures.leads()].flatMap(([address, { way }]) => {
      const line = rig.lineAt.get(address)
      if (!line || !way.known) return []
      return way.value.turns.flatMap(({ what, turn }) => {
        const degrees = turn / units.deg.si
        return hasNoSheave(what) && degrees > sharpest ? [{ line, what, degrees }] : []
      })
    })
    for (const { first, isTwice } of onceAPair(sharp, ({ line, what }) => `${line.pairKey} ${what}`)) {
      const { line, what, degrees } = first
      yield {
        at: whereHung(rig, line),
        message: `${sentence(isTwice ? bothSubject(line) : subject(line))} turns by ${fixed(degrees, 0)} degrees at the ${what}, which has no sheave; without one a rope turns by ${sharpest} at most.`,
        aboard: 'It is nipped there: it wears through, and takes twice the hands.',
        remedy: `Hang a block in place of the ${what}, or lead the line more fairly.`,
        about: aboutLine(line),
        follows: [berthOf(line)],
      }
    }
  },
}

/** What a rope is led through without a sheave. An eye has a block hooked to it; a fairlead on deck is taken for one. */
const hasNoSheave = (what: string): boolean =>
  /\b(?:thimble|bull's-eye|bullseye|hook|cringle|ring)$/.test(what)
