import type { Severity } from '../../findings/index.ts'
import type { OverDeck } from '../../reckon/index.ts'
import type { DeckThing, Rig } from '../../rig/index.ts'
import { deckBelow } from '../deck-below.ts'
import { aboutLine, bothSubject, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import { berthOf } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** Headroom for people on the move, in metres. */
const headroom = 2
/** Below this a hand raised, or a sea, still reaches a lead. */
const overhead = 2.5

/** A lead so low across a companion, a ladder, a walkway, the wheel or a hatch that it catches who comes and goes. */
export const overPassage: Rule = {
  slug: 'lead/over-passage',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const low = figures.fouls().overDeck.flatMap(over => {
      const deck = deckBelow(over.thing.top, rig)
      // Without its pin a lead is not known to its end.
      if (deck === undefined || !over.line.belay) return []
      const above = over.at.z - deck
      const severity = severityOf(over.thing, above)
      return severity ? [{ ...over, above, severity }] : []
    })
    const key = ({ line, thing }: (typeof low)[number]) => `${line.pairKey} ${thing.name}`
    for (const { first, isTwice } of onceAPair(low, key)) yield draft(first, isTwice, rig)
  },
}

type Low = OverDeck & { readonly above: number; readonly severity: Severity }

function draft({ line, thing, above, severity }: Low, isTwice: boolean, rig: Rig): Draft {
  return {
    at: line.belaySpan ?? line.span,
    severity,
    message: `${sentence(isTwice ? bothSubject(line) : subject(line))} passes over the ${thing.name} ${shownLength(rig, above)} above the deck; people need ${shownLength(rig, isHatch(thing) || above < headroom ? headroom : overhead)}.`,
    aboard: 'It trips or strikes who comes and goes, most of all in the dark and when it runs.',
    remedy: 'Belay it on this side of the way, or lead it higher.',
    related: [{ at: thing.span, message: `the ${thing.name} is here` }],
    about: [...aboutLine(line), thing.name],
    follows: [berthOf(line)],
  }
}

function severityOf(thing: DeckThing, above: number): Severity | undefined {
  if (isHatch(thing)) return above < headroom ? 'note' : undefined
  if (!isWay(thing)) return undefined
  return above < headroom ? 'error' : above < overhead ? 'warning' : undefined
}

const isHatch = ({ kind }: DeckThing): boolean => /\bhatch$/.test(kind)

/** A tiller's people sit, under leads that pass their heads as they are used to. */
const isWay = ({ kind, name }: DeckThing): boolean =>
  /companion|ladder|stair|steps|walk|gangway|door|wheel|binnacle/.test(`${kind} ${name}`) ||
  (kind === 'helm' && !name.includes('tiller'))
