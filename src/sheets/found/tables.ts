import { type Found, type LineName, namesOf } from '../../assist/index.ts'
import type { Line, Place, Rig } from '../../rig/index.ts'
import { addressInFull, placeAddress } from '../book/address.ts'
import { speaksFeet } from '../measure-words.ts'
import { conjectureWords, surveyWords } from '../survey-words.ts'
import { type Table, words } from '../table.ts'
import { easedWith, haulWords, placesWords } from './about-line.ts'

/** What was found, a table for each line that says where it is and what it does; places that stand free in one. */
export const foundTables = (rig: Rig, { lines, free }: Found): readonly Table[] => [
  ...lines.map(({ pair, by }) => lineTable(pair, by, rig)),
  ...(free.length > 0 ? [table('free', 'Free', freeRows(free, rig))] : []),
]

function lineTable(pair: readonly Line[], by: LineName, rig: Rig): Table {
  const [line] = pair
  if (!line) return table('line', '', [])
  const called = (kind: LineName['kind']) =>
    namesOf(line, rig)
      .filter(name => name.kind === kind)
      .map(({ words, language }) => (language === undefined ? words : `${words} (${language})`))
  const eased = easedWith(pair, rig).map(lines => easedWords(line, lines, rig))
  const side = pair.length === 1 ? line.side : undefined
  return table(line.pairKey, side === undefined ? line.label : `${line.label}, ${side}`, [
    ['short', line.short],
    ['called', line.nicknames.join(', ')],
    ['in other tongues', called('other language').join(', ')],
    ['found as', by.kind === 'place' ? undefined : by.words === line.words ? undefined : by.words],
    ...severally('at', placesWords(pair, rig), 'belayed nowhere'),
    ['lifted', line.lifted],
    ['hauling', haulWords(pair)],
    ...severally('ease', eased, line.answeredBy ?? 'nothing'),
    ['hands', line.hands === undefined ? undefined : `${line.hands}${pair.length > 1 ? ' to each' : ''}`],
    ['rope', ropeWords(line, rig)],
    ['rove', line.purchase.join(' and ')],
    ['worked by', rig.stationAt.get(line.station ?? '')?.label],
    ['surveyed', surveyWords(line)],
    ['known', conjectureWords(line)],
    ['address', pair.map(({ address }) => address).join(', ')],
  ])
}

/** A row for each, named once; one where there is none. */
const severally = (name: string, told: readonly string[], none: string): readonly Row[] =>
  (told.length > 0 ? told : [none]).map((words, index) => [index === 0 ? name : '', words])

function easedWords(line: Line, eased: readonly Line[], rig: Rig): string {
  const name = eased[0]?.pairKey === line.pairKey ? 'the other one' : (eased[0]?.label ?? '')
  return [name, ...placesWords(eased, rig)].join(', ')
}

function ropeWords({ rope, whipped, coloured }: Line, rig: Rig): string {
  const inches = `${(rope ? rope.diameter / 0.0254 : 0).toFixed(2)} in`
  const size = rope && (speaksFeet(rig.vessel) ? inches : `${Math.round(rope.diameter * 1000)} mm`)
  return [
    [size, rope?.material].filter(Boolean).join(' '),
    coloured && `coloured ${coloured}`,
    whipped && `whipped ${whipped}`,
  ]
    .filter(Boolean)
    .join(', ')
}

const freeRows = (free: readonly Place[], rig: Rig): readonly Row[] =>
  free.map(({ rail, number }) => {
    const address = placeAddress(rail, number, rig)
    return ['free', address ? addressInFull(address) : `${rail} ${number}`]
  })

type Row = readonly [string, string | undefined]

/** Rows of what there is to say; what there isn't is left out. */
const table = (id: string, title: string, rows: readonly Row[]): Table => ({
  id,
  title,
  columns: [
    { heading: 'figure', unit: '' },
    { heading: 'figure', unit: '' },
  ],
  rows: rows.flatMap(([name, said]) => (said ? [[words(name), words(said)]] : [])),
  notes: [],
})
