import type { Finding, Found } from '../findings/index.ts'
import { byPair } from './build/hung.ts'
import type { Evolution, Phase } from './evolution.ts'
import type { Line } from './line.ts'
import type { Rig } from './rig.ts'
import type { Sail } from './sail.ts'
import {
  type Foreign,
  lineIn,
  type Missing,
  sailIn,
  shortIn,
  spokenIn,
  type Tongue,
  wordIn,
} from './tongue.ts'

/** Stands behind a name that is from memory. */
export const fromMemoryMark = '°'

/**
 * The rig with its sails and lines called, its rails and spars labelled, and its orders spoken, in another language. What the glossary has no word for
 * keeps its own name, and a note tells of it. Undefined where the texts say nothing in that language.
 */
export function inLanguage(rig: Rig, language: string): Found<Rig> | undefined {
  const tongue = rig.tongues.get(language.toLowerCase())
  if (!tongue) return undefined
  const sails = rig.sails.map(sail => sailSpoken(sail, tongue))
  const lines = rig.lines.map(line => lineSpoken(line, tongue))
  const rails = rig.rails.map(rail => labelled(rail, tongue))
  const spars = rig.spars.map(spar => labelled(spar, tongue))
  const words = wordsOf(rig, tongue)
  const isFromMemory = words.some(one => 'words' in one && one.fromMemory)
  const credit = `${fromMemoryMark} ${tongue.language} from memory`
  return {
    value: {
      ...rig,
      vessel: { ...rig.vessel, credits: isFromMemory ? [...rig.vessel.credits, credit] : rig.vessel.credits },
      sails,
      lines,
      rails,
      spars,
      lineAt: new Map(lines.map(line => [line.address, line])),
      pairAt: byPair(lines),
      sailAt: new Map(sails.map(sail => [sail.name, sail])),
      railAt: new Map(rails.map(rail => [rail.code, rail])),
      sparAt: new Map(spars.map(spar => [spar.name, spar])),
    },
    findings: wordsMissing(rig, tongue, words),
  }
}

const printed = (own: string, foreign: Foreign | Missing): string =>
  'missing' in foreign ? own : `${foreign.words}${foreign.fromMemory ? fromMemoryMark : ''}`

/** A thing under the ship's own label in the language, where she has one: glossaries speak of lines and sails. */
const labelled = <T extends { readonly name: string; readonly label: string }>(
  thing: T,
  { labels }: Tongue,
): T => ({
  ...thing,
  label: labels.get(thing.name)?.label ?? thing.label,
})

function sailSpoken(sail: Sail, tongue: Tongue): Sail {
  const called = sailIn(tongue, sail)
  return {
    ...sail,
    foreign: 'words' in called,
    label: printed(sail.label, called),
    toSet: sail.toSet && orderSpoken(sail.toSet, tongue),
    toDouse: sail.toDouse && orderSpoken(sail.toDouse, tongue),
  }
}

function lineSpoken(line: Line, tongue: Tongue): Line {
  const label = printed(line.label, lineIn(tongue, line))
  const word = wordIn(tongue, line)
  const short = shortIn(tongue, line)
  return {
    ...line,
    foreign: 'words' in word,
    kind: printed(line.kind, word),
    label,
    labelOnMast: label === line.label ? line.labelOnMast : label,
    labelOnSail: printed(line.labelOnSail, word),
    short: short ? printed(short.words, short) : label === line.label ? line.short : undefined,
  }
}

function orderSpoken(evolution: Evolution, tongue: Tongue): Evolution {
  const spoken = (words: string | undefined) => words && printed(words, spokenIn(tongue, words))
  const phases = evolution.phases.map(
    (phase): Phase => ({
      ...phase,
      order: printed(phase.order, spokenIn(tongue, phase.order)),
      answer: spoken(phase.answer),
      report: spoken(phase.report),
    }),
  )
  return { ...evolution, phases }
}

/** Every name and every order of the rig as the language has it, or the words it lacks. */
function wordsOf({ sails, lines }: Rig, tongue: Tongue): readonly (Foreign | Missing)[] {
  const phases = sails.flatMap(({ toSet, toDouse }) => [toSet, toDouse].flatMap(order => order?.phases ?? []))
  return [
    ...sails.map(sail => sailIn(tongue, sail)),
    ...lines.map(line => lineIn(tongue, line)),
    ...phases.flatMap(({ order, answer, report }) =>
      [order, answer, report].flatMap(said => (said === undefined ? [] : [spokenIn(tongue, said)])),
    ),
  ]
}

const mostTold = 8

function wordsMissing(
  rig: Rig,
  { language }: Tongue,
  words: readonly (Foreign | Missing)[],
): readonly Finding[] {
  const missing = [...new Set(words.flatMap(one => ('missing' in one ? one.missing : [])))]
  if (missing.length === 0) return []
  const told = missing.slice(0, mostTold).map(word => `"${word}"`)
  const rest = missing.length - told.length
  return [
    {
      rule: 'name/no-word',
      severity: 'note',
      at: rig.vessel.span,
      message: `There is no ${language} for ${told.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}; they stand in the papers in their own words.`,
      remedy: `Give the words on a page "glossary in ${language}", each with where it is from.`,
      related: [],
    },
  ]
}
