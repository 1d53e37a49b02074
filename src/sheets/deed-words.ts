import type { Line, Rig, Sail } from '../rig/index.ts'

/**
 * What hauling a line does, as a predicate: 'hoists the yard', 'lifts the clew', 'swings its arm aft'. Composed
 * from the deed as the text says it; empty where the text gives none.
 */
export function deedWords(line: Line): string {
  const { deed } = line
  if (!deed) return ''
  const verb = printedVerb(line, deed.verb)
  const onItsArm = line.side !== undefined && deed.object === 'yard'
  if (onItsArm && verb === 'swings') return join('swings its arm', deed.direction ?? line.swings)
  if (onItsArm && verb === 'cocks') return join('cocks its arm', deed.direction ?? 'up')
  if (verb === 'swings' && line.side !== undefined)
    return join(`swings the ${deed.object}`, `to ${line.side}`)
  return join(`${verb} the ${deed.object}`, deed.direction)
}

/**
 * What comes where when a line is hauled, for those who stand at the pin: 'clew up to the yard', 'leech in to
 * the mast'. Where no spar is drawn to, it is the deed's words.
 */
export function haulBrings(line: Line, rig: Rig): string {
  const { deed } = line
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  if (!deed || !sail) return deedWords(line)
  const way = wayToSpar(line, sail, deed.object)
  return way === undefined ? deedWords(line) : `${deed.object} ${way}`
}

/** The text's verb as the papers print it: a yard is hoisted and a clew lifted, whatever the one word 'raises' said. */
function printedVerb(line: Line, verb: string): string {
  if (verb !== 'raises') return verb
  return line.function === 'hoists' ? 'hoists' : 'lifts'
}

function wayToSpar(line: Line, sail: Sail, object: string): string | undefined {
  const square = sail.kind === 'square'
  switch (line.function) {
    case 'clews':
      return square ? 'up to the yard' : 'in to the mast'
    case 'gathers':
      if (!square) return 'in to the mast'
      return object.includes('leech') ? 'in to the yard' : 'up to the yard'
    case 'reefs':
      return square ? 'to the yardarm' : 'down to the boom'
    default:
      return undefined
  }
}

const join = (words: string, direction: string | undefined): string =>
  direction === undefined ? words : `${words} ${direction}`
