import { fixed, known, units, workedFrom } from '../../measure/index.ts'
import type { Figures, Way } from '../../reckon/index.ts'
import type { Line, Rig } from '../../rig/index.ts'
import { type Cell, type Table, words } from '../table.ts'
import { cell, column, type Shown, type TableUnits } from './units.ts'

const degrees: Shown = { unit: '°', si: units.deg.si, decimals: 0 }

/** Each line along its lead: how it leaves its pin, how it turns, and the rope in it at both ends of its load's travel. Of a pair, the first. */
export function waysTable(rig: Rig, figures: Figures, { length }: TableUnits): Table {
  const leads = figures.leads()
  return {
    id: 'ways',
    title: 'Leads of lines',
    columns: [
      column('line'),
      column('from upright', degrees),
      column('turns'),
      column('hauled home', length),
      column('slack', length),
    ],
    rows: firstOfPairs(rig).flatMap(line => {
      const lead = leads.get(line.address)
      if (!lead) return []
      const { way, home, slack } = lead
      return [
        [
          words(line.label),
          cell(
            workedFrom([way], ({ lean }) => lean),
            degrees,
          ),
          way.known ? words(turnsOf(way.value)) : words(''),
          cell(home, length),
          cell(slack, length),
        ],
      ]
    }),
    notes: [
      'Rope in a line is counted along all its parts. A turn is nothing where the line goes straight on, 180° where it comes back.',
    ],
  }
}

const turnsOf = ({ turns }: Way): string =>
  turns.map(({ what, turn }) => `${what} ${fixed(turn / units.deg.si, 0)}°`).join(', ')

const firstOfPairs = (rig: Rig): readonly Line[] => [...rig.pairAt.values()].flatMap(pair => pair.slice(0, 1))

/** Where leads pass within 15 cm of each other or of standing rigging, clear of blocks and masts. */
export function foulsTable(figures: Figures, { length, rope }: TableUnits): Table {
  const { crossings, chafes, braced } = figures.fouls()
  const row = (yards: string, line: Line, what: string, clear: number, up: number): readonly Cell[] => [
    words(sided(line)),
    words(what),
    words(yards),
    cell(known(clear), rope),
    cell(known(up), length),
  ]
  return {
    id: 'fouls',
    title: 'Leads that pass close',
    columns: [column('line'), column('passes'), column('yards'), column('clear', rope), column('up', length)],
    rows: [
      { yards: 'square', crossings, chafes },
      { yards: 'sharp', ...braced },
    ].flatMap(({ yards, crossings, chafes }) => [
      ...crossings.map(({ line, other, clear, at }) => row(yards, line, sided(other), clear, at.z)),
      ...chafes.map(({ line, part, clear, at }) => row(yards, line, part.name, clear, at.z)),
    ]),
    notes: [
      'Passings nearer than 15 cm from rope to rope, between pin and last block; what is gathered by a mast, a spar or a block is left out. With the yards sharp, the braces from their last blocks to the yardarms, as far as each yard goes on either tack. The checks speak below 5 cm.',
    ],
  }
}

const sided = ({ label, side }: Line): string => (side ? `${label}, ${side}` : label)
