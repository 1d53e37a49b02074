import { units } from '../../measure/index.ts'
import type { Turn } from '../../reckon/index.ts'
import { aboutLine, bothSubject, inWords, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import { berthOf } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** Turns at deck blocks that a line may take. */
const most = 4
/** A lead this near the pin's height, in metres, is one on deck. */
const onDeck = 2
/** A lesser turn, in degrees, costs no more than a fairlead does. */
const slight = 10

/** A line that is led round so many blocks on deck that they eat the pull of its hands. */
export const tooManyTurns: Rule = {
  slug: 'lead/too-many-turns',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const round = [...figures.leads()].flatMap(([address, { way }]) => {
      const line = rig.lineAt.get(address)
      const pin = line?.belay?.at?.z
      if (!line || !way.known || pin === undefined) return []
      const turns = way.value.turns.filter(turn => isOnDeck(turn, pin)).length
      return turns > most ? [{ line, turns }] : []
    })
    for (const { first, isTwice } of onceAPair(round, ({ line }) => line.pairKey)) {
      const { line, turns } = first
      yield {
        at: whereHung(rig, line),
        message: `${sentence(isTwice ? bothSubject(line) : subject(line))} turns round ${inWords(turns)} blocks on deck; ${inWords(most)} are as many as hands should haul round.`,
        aboard: 'Each takes a tenth of the pull, and the line comes to hand late and stiff.',
        remedy: 'Belay it nearer, or lead it with fewer turns.',
        about: aboutLine(line),
        follows: [berthOf(line)],
      }
    }
  },
}

const isOnDeck = ({ at, turn }: Turn, pin: number): boolean =>
  Math.abs(at.z - pin) <= onDeck && turn > slight * units.deg.si
