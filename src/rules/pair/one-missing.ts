import type { Line, Rig } from '../../rig/index.ts'
import { aboutLine, sentence, subject } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** Work that is done on both sides of a sail or a mast, with a line for one side only. */
export const oneMissing: Rule = {
  slug: 'pair/one-missing',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const counts = countedByName(rig)
    for (const lines of rig.pairAt.values()) {
      const [line, second] = lines
      if (!line || second) continue
      const work = line.pair ? undefined : workOfTwo(rig, line)
      if (!line.pair && (!work || (counts.get(withoutSide(line.words)) ?? 0) > 1)) continue
      yield {
        at: whereHung(rig, line),
        message: work
          ? `${sentence(line.words)} is a single line, and ${work}.`
          : `${sentence(subject(line))} has no fellow on the other side.`,
        aboard: 'One side is worked and the other is left, so that the sail or the spar is dragged askew.',
        remedy: 'Say "pair" of it, and belay one on each side.',
        about: aboutLine(line),
      }
    }
  },
}

/** What a line does that has to be done on both sides alike: at the clews, leeches and yardarms of square sails. */
function workOfTwo(rig: Rig, line: Line): string | undefined {
  const { host, deed } = line
  if (!deed?.found) return undefined
  const isSquare = host?.kind === 'sail' && rig.sailAt.get(host.name)?.kind === 'square'
  const object = deed.object
  if (isSquare && object === 'clew') return 'a square sail has two clews'
  if (isSquare && object === 'leech') return 'a square sail has two leeches'
  if (deed.verb === 'swings' && object.endsWith('yard')) return 'a yard has two yardarms'
  if (deed.verb === 'cocks' && object.endsWith('yard')) return 'a yard has two yardarms'
  if (line.kind === 'running backstay') return 'a mast wants its backstay on both sides'
  return undefined
}

/** Names said without their side, with how many lines bear each: two single lines named for their sides make a pair too. */
function countedByName(rig: Rig): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { words } of rig.lines) counts.set(withoutSide(words), (counts.get(withoutSide(words)) ?? 0) + 1)
  return counts
}

const withoutSide = (words: string) =>
  words
    .replace(/\b(port|starboard)\b/g, '')
    .replace(/ +/g, ' ')
    .trim()
