import { known, unknown, workedFrom } from '../../measure/index.ts'
import { type Figures, handsFor, inLargeParty, type LoadFigures } from '../../reckon/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { type Cell, nothing, type Table, words } from '../table.ts'
import { cell, column, plainNumber, type TableUnits } from './units.ts'

const whole = plainNumber(0)
const tenths = plainNumber(1)

/** What each line measures: along its lead, to cut, and to haul. Of a pair, the longer of the two. */
export function lengthsTable(rig: Rig, figures: Figures, units: TableUnits): Table {
  const leads = figures.leads()
  return {
    id: 'lengths',
    title: 'Lengths of lines',
    columns: [
      column('line'),
      column('each', whole),
      column('rope', units.rope),
      column('material'),
      column('length to cut', units.length),
      column('travel', units.length),
      column('to haul', units.length),
    ],
    rows: pairsOf(rig).map(pair => {
      const of = longest(pair, line => leads.get(line.address)?.length)
      const lead = leads.get(of.address)
      return [
        words(of.label),
        cell(known(pair.length), whole),
        of.rope ? cell(known(of.rope.diameter), units.rope) : nothing,
        words(of.rope?.material ?? ''),
        cell(lead?.length ?? unknown('Its lead is not given.'), units.length),
        cell(lead?.travel ?? unknown('Its lead is not given.'), units.length),
        cell(lead?.hauled ?? unknown('Its lead is not given.'), units.length),
      ]
    }),
    notes: [
      'Of a pair, the longer of the two. The length to cut is of all its pieces, with what is left at the pin.',
    ],
  }
}

/** What each line pulls, needs and is good for. Of a pair, the one that is hauled the harder. */
export function loadsTable(rig: Rig, figures: Figures, units: TableUnits): Table {
  const loads = figures.loads()
  return {
    id: 'loads',
    title: 'Loads, hands and safety',
    columns: [
      column('line'),
      column('rove'),
      column('load', units.force),
      column('pull', units.force),
      column('hands'),
      column('many'),
      column('said'),
      column('worst', units.force),
      column('breaks', units.force),
      column('safety'),
    ],
    rows: pairsOf(rig).map(pair => {
      const of = longest(pair, line => loads.get(line.address)?.pull)
      const figuresOf = loads.get(of.address)
      if (!figuresOf) return [words(of.label)]
      const { load, pull, hands, strain, strength, safety } = figuresOf
      return [
        words(of.label),
        words(of.purchase.join(' and ')),
        cell(
          workedFrom([load], ({ hauled }) => hauled),
          units.force,
        ),
        cell(pull, units.force),
        cell(hands, whole),
        ofMany(figuresOf, figures),
        of.hands === undefined ? nothing : cell(known(of.hands), whole),
        cell(strain, units.force),
        cell(
          workedFrom([strength], ({ breaking }) => breaking),
          units.force,
        ),
        cell(safety, tenths),
      ]
    }),
    notes: [assumed(figures, units), many(figures), caution],
  }
}

/** Hands where they are more than four, and each beyond the fourth gives less. */
function ofMany({ pull, hands }: LoadFigures, { assumptions }: Figures): Cell {
  if (!pull.known || !hands.known || hands.value <= 4 || assumptions.hands.loss > 0) return nothing
  return cell(handsFor(pull.value, { ...assumptions.hands, loss: inLargeParty }), whole)
}

const many = ({ assumptions: { hands } }: Figures): string =>
  hands.loss > 0
    ? `Each hand beyond the fourth is taken to give ${hands.loss * 100} % less.`
    : `Hands give less each in a large party (Admiralty Manual of Seamanship vol. III, second-hand, its numbers not seen): under "many" stand the hands wanted where each beyond the fourth gives ${inLargeParty * 100} % less, which is common practice, no source.`

/** What every page with a load on it says. */
export const caution =
  "Planning figures only: the vessel's own documents, makers' certificates, local rules and licensed practice govern."

function assumed({ assumptions }: Figures, { force }: TableUnits): string {
  const { wind, friction, hands, end, age } = assumptions
  const hand = force.unit === 'kN' ? `${hands.hand} N` : `${Math.round(hands.hand / force.si)} ${force.unit}`
  return `Hauled in a wind of ${wind} m/s; friction of ${friction.share * 100} % a sheave, ${friction.model}; ${hand} a hand; rope ${age}, ${end}.`
}

/** The two lines of a pair, or the one single line, in the order of the text. */
const pairsOf = (rig: Rig): readonly (readonly [Line, ...Line[]])[] =>
  [...rig.pairAt.values()].filter((pair): pair is [Line, ...Line[]] => pair.length > 0)

/** The line of a pair whose figure is the greatest; one that is not known goes before, so that it is seen. */
function longest(
  pair: readonly [Line, ...Line[]],
  figureOf: (line: Line) => { readonly known: boolean; readonly value?: number } | undefined,
): Line {
  const size = (line: Line) => {
    const figure = figureOf(line)
    return figure?.known ? (figure.value ?? 0) : Number.POSITIVE_INFINITY
  }
  return pair.reduce((most, line) => (size(line) > size(most) ? line : most))
}
