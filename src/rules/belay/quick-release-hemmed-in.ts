import type { Line, Rail, Rig } from '../../rig/index.ts'
import { aboutLine, aboutRail, listed, pairSubject, placeName, sentence, subject } from '../naming.ts'
import { type BelayedLine, isBelayed } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'

/** So many pins from an end still count as the end. */
const ends = 3

/** A line that has to be cast off at a word, in the middle of a rail with coils on both sides. */
export const quickReleaseHemmedIn: Rule = {
  slug: 'belay/quick-release-hemmed-in',
  severity: 'note',
  judges: 'vessels and parts',
  *judge({ rig }) {
    for (const lines of rig.pairAt.values()) {
      const hemmed = lines.flatMap(line => hemmedIn(rig, line) ?? [])
      const [one, other] = hemmed
      if (one) yield told(rig, one, other && namesOf(other) === namesOf(one))
      if (other && namesOf(other) !== namesOf(one)) yield told(rig, other, false)
    }
  },
}

interface HemmedIn {
  readonly line: BelayedLine
  readonly rail: Rail
  /** The lines on the pins beside it, from forward. */
  readonly beside: readonly Line[]
}

const namesOf = (one: HemmedIn | undefined) => one && listed(one.beside.map(({ words }) => `the ${words}`))

/** A running backstay, a preventer or a guy with a line on both pins beside it, and no end of the rail near. */
function hemmedIn(rig: Rig, line: Line): HemmedIn | undefined {
  if (line.function !== 'keeps' || !isBelayed(line)) return undefined
  const rail = rig.railAt.get(line.belay.rail)
  const { number } = line.belay
  if (!rail || number <= ends || number > rail.places.length - ends) return undefined
  const beside = [rail.places[number - 2], rail.places[number]].flatMap(
    place => rig.lineAt.get(place?.lines[0] ?? '') ?? [],
  )
  return beside.length === 2 ? { line, rail, beside } : undefined
}

function told(rig: Rig, one: HemmedIn, onBothSides = false): Draft {
  const { line, rail, beside } = one
  const place = onBothSides ? `${rail.name}, pin ${line.belay.pin}` : placeName(rig, line.belay)
  return {
    at: line.belaySpan ?? line.span,
    message: `${sentence(onBothSides ? pairSubject(line) : subject(line))} is at the ${place} of ${rail.places.length}, between ${namesOf(one)}.`,
    aboard:
      'In going about, or when the boom must go out, it is cast off at a word, and there are coils in the way of the hand and of the rope that runs.',
    remedy: 'Give it an end of the rail, a cleat of its own, or a free pin beside it.',
    related: beside.flatMap(other =>
      other.belaySpan ? [{ at: other.belaySpan, message: `the ${other.words} is belayed here` }] : [],
    ),
    about: [...aboutLine(line), ...aboutRail(rail)],
  }
}
