import type { Rig } from '../../rig/index.ts'
import { aboutLine, placeName, sentence, subject } from '../naming.ts'
import {
  type BelayedLine,
  type BelayedPair,
  belayedPairsOf,
  berthOf,
  inTextOrder,
  isBelayed,
  standing,
} from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'

const aboard = 'Whoever is sent to the port one goes to the port side, and finds the wrong line there.'

/** A line named for one side that is belayed on the other. */
export const wrongSide: Rule = {
  slug: 'pair/wrong-side',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const crossed = belayedPairsOf(rig).filter(pair => standing(pair) === 'crossed')
    const told = new Set(crossed.flatMap(pair => [pair.port.address, pair.starboard.address]))
    for (const pair of crossed) yield crossedPair(rig, pair)
    for (const line of rig.lines) {
      if (told.has(line.address) || !isBelayed(line) || !isAstray(line)) continue
      yield strayed(rig, line)
    }
  },
}

const isAstray = (line: BelayedLine) =>
  line.side !== undefined && line.belay.side !== 'centre' && line.belay.side !== line.side

function crossedPair(rig: Rig, pair: BelayedPair): Draft {
  const [first, second] = inTextOrder(pair.port, pair.starboard)
  const places = [pair.port, pair.starboard].map(
    line => `the ${line.side} one at the ${placeName(rig, line.belay)}`,
  )
  return {
    at: first.belaySpan ?? first.span,
    message: `${sentence(pair.port.words)} is crossed: ${places.join(', ')}.`,
    aboard,
    remedy: 'Change the two about; or, where the leads do cross, allow it and say why.',
    related: [{ at: second.belaySpan ?? second.span, message: `the ${second.side} one is belayed here` }],
    about: [...aboutLine(pair.port), pair.starboard.address],
    explains: [berthOf(pair.port), berthOf(pair.starboard)],
  }
}

const strayed = (rig: Rig, line: BelayedLine): Draft => ({
  at: line.belaySpan ?? line.span,
  message: `${sentence(subject(line))} is belayed to ${line.belay.side}: ${placeName(rig, line.belay)}.`,
  aboard,
  remedy: `Belay it to ${line.side}; or, where its lead does cross, allow it and say why.`,
  about: aboutLine(line),
  follows: [line.address],
})
