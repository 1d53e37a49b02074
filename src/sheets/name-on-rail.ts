import type { Line, Rail, Rig, Sail } from '../rig/index.ts'

/**
 * A line's name as a chart gives it beside its rail: the mast's word is left out where the rail's name has it,
 * but staysails and jibs keep theirs, since they take it from another mast than they stand at. A line that shifts
 * stands on both sides of the chart, and says which of them has it.
 */
export function nameOnRail(line: Line, rail: Rail, rig: Rig): string {
  const sail = line.host?.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  const name =
    mastGoesWithoutSaying(line.mast, rail, rig) && !keepsItsWord(sail) ? line.labelOnMast : line.label
  return atPin(name, line)
}

/**
 * A name as it stands at a pin: 'Lug halyard, weather', since a line that is shifted at every tack is on this pin with the
 * wind from its side only; and what it is called aboard, where that is printed: 'Jib halyard “the Monkey”'.
 */
export const atPin = (name: string, { shifts, aside }: Line): string =>
  `${shifts ? `${name}, ${shifts}` : name}${aside === undefined ? '' : ` “${aside}”`}`

/** What the line is hung on as a heading over its pins: 'Upper topsail'; empty for a loose line. */
export function hostOnRail(line: Line, rail: Rail, rig: Rig): string {
  if (!line.host) return ''
  const sail = line.host.kind === 'sail' ? rig.sailAt.get(line.host.name) : undefined
  const label = sail?.label ?? rig.sparAt.get(line.host.name)?.label ?? ''
  const word = rig.mastAt.get(line.mast ?? '')?.word
  if (word === undefined || keepsItsWord(sail) || !mastGoesWithoutSaying(line.mast, rail, rig)) return label
  return label.toLowerCase().startsWith(`${word} `) ? capitalised(label.slice(word.length + 1)) : label
}

const mastGoesWithoutSaying = (mast: string | undefined, rail: Rail, rig: Rig): boolean => {
  const word = rig.mastAt.get(mast ?? '')?.word
  return word !== undefined && rail.name.split(/[ -]/).includes(word)
}

const keepsItsWord = (sail: Sail | undefined): boolean =>
  sail?.class === 'staysail' || sail?.class === 'headsail'

const capitalised = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
