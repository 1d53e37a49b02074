import type { Place } from '../../rig/index.ts'
import { type Piece, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { columnHead, rowHead, tagged } from '../tagged.ts'
import type { Ruler } from '../typeface.ts'
import type { Book } from './book.ts'
import type { Room } from './chart-layout.ts'
import { level, paragraph, upright } from './page-parts.ts'
import type { Tier } from './rail-tiers.ts'
import { black, rule, type, white } from './type.ts'

/** The days on which a blank is filled again: gaps that grow. */
export const practiceDays = [1, 3, 7, 28] as const

const legendAt = 194.4

type Sign = readonly [draw: (x: number, y: number) => Mark, width: number, told: string]

const pen = { ink: black, width: rule.frame }

const signs = {
  own: [(x, y) => ({ kind: 'circle', at: { x, y }, radius: 1.2, fill: { ink: black } }), 2.4, 'your line '],
  others: [
    (x, y) => ({ kind: 'circle', at: { x, y }, radius: 1.1, fill: { ink: white }, pen }),
    2.4,
    'another station’s ',
  ],
  freeDot: [(x, y) => ({ kind: 'circle', at: { x, y }, radius: 0.45, fill: { ink: black } }), 1, 'free '],
  freeTick: [(x, y) => upright(x, y - 1.15, y + 1.15, rule.frame), 1, 'free '],
  gear: [(x, y) => level(x - 2.2, x + 2.2, y, rule.table), 4.4, 'one sail’s gear '],
  bow: [(x, y) => pointedEnd({ x, y }), 3.4, 'this end to the bow'],
} satisfies Record<string, Sign>

/** What the pins and bars of a chart mean, in a line at its foot. */
export const chartLegend = (ruler: Ruler): readonly Mark[] =>
  legend([signs.own, signs.others, signs.freeDot, signs.gear, signs.bow], legendAt, ruler)

/** The same for rails drawn small, without names, on this baseline. */
export const stripLegend = (baseline: number, ruler: Ruler): readonly Mark[] =>
  legend([signs.own, signs.others, signs.freeTick, signs.bow], baseline, ruler)

function legend(shown: readonly Sign[], baseline: number, ruler: Ruler): readonly Mark[] {
  const marks: Mark[] = []
  let x = 0
  for (const [draw, wide, told] of shown) {
    const text = lettered(ruler, { x: x + wide + 1.2, y: baseline }, told, type.legend, black)
    marks.push(draw(x + wide / 2, baseline - 1), text)
    x += wide + 1.2 + text.width + 3.6
  }
  return [tagged('P', marks)]
}

const pointedEnd = ({ x, y }: Point): Mark => ({
  kind: 'line',
  points: [
    { x: x + 1.7, y: y - 1.3 },
    { x: x - 0.1, y: y - 1.3 },
    { x: x - 1.7, y },
    { x: x - 0.1, y: y + 1.3 },
    { x: x + 1.7, y: y + 1.3 },
  ],
  pen: { ink: black, width: rule.frame },
})

/** Where the two rails of a mirrored pair carry the same, and where they don't: learnt apart, and first. */
export function likenessNote(tiers: readonly Tier[], room: Room, book: Book): readonly Mark[] {
  const told = tiers
    .flatMap(tier => tier.slots)
    .flatMap(slot => {
      if (!slot.port || !slot.starboard || slot.port.rail.mark !== slot.starboard.rail.mark) return []
      return likeness(slot.port.places, slot.starboard.places, slot.port.rail.name, book)
    })
  const [pieces] = told
  if (!pieces) return []
  const measure = Math.min(room.width, 58)
  const x = room.x + (room.width > 90 ? 0 : 0)
  return paragraph(pieces, room.top + (room.bottom - room.top) * 0.42, book.setting.ruler, {
    x,
    measure,
    led: 4.7,
  }).marks
}

function likeness(
  port: readonly Place[],
  starboard: readonly Place[],
  rail: string,
  { rig }: Book,
): readonly (readonly Piece[])[] {
  const carried = (place: Place | undefined) =>
    (place?.lines ?? []).map(address => rig.lineAt.get(address)?.pairKey ?? address).join(' ')
  const across = new Map(starboard.map(place => [place.number, place]))
  const numbers = port.map(place => place.number).toSorted((a, b) => a - b)
  if (numbers.length < 4) return []
  const at = new Map(port.map(place => [place.number, place]))
  const differ = numbers.filter(number => carried(at.get(number)) !== carried(across.get(number)))
  const alike = numbers.filter(number => !differ.includes(number) && carried(at.get(number)) !== '')
  const shown = (number: number) => at.get(number)?.pin ?? String(number)
  const many = `The two sides of the ${rail} are alike`
  if (differ.length === 0) return [[words(`${many}, pin for pin: learn one and you know both.`, type.text)]]
  if (alike.length === 0 || differ.length > 8) return []
  return [
    [
      words(`${many} at ${ranges(alike, shown)}. They differ at `, type.text),
      words(listed(differ.map(shown)), type.textStrong),
      words(': learn those first.', type.text),
    ],
  ]
}

// '3 to 17', '1, 2 and 5 to 9'
function ranges(numbers: readonly number[], shown: (number: number) => string): string {
  const runs: [number, number][] = []
  for (const number of numbers) {
    const last = runs.at(-1)
    if (last && number === last[1] + 1) last[1] = number
    else runs.push([number, number])
  }
  return listed(
    runs.map(([from, to]) =>
      from === to ? shown(from) : `${shown(from)}${to === from + 1 ? ', ' : ' to '}${shown(to)}`,
    ),
  )
}

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`

/** How to use a blank, and a table for the score of each day. */
export function scoreTable(pins: number, leaves: number, room: Room, ruler: Ruler): readonly Mark[] {
  const measure = Math.min(room.width, 57)
  const told = paragraph([words(fillingWords(leaves), type.text)], room.top + 2, ruler, {
    x: room.x,
    measure,
    led: 4.55,
  })
  const columns = [room.x, room.x + 18, room.x + 38] as const
  const headAt = told.bottom + 9
  const cell = (x: number, y: number, text: string, face: (typeof type)[keyof typeof type]) =>
    lettered(ruler, { x, y }, text, face, black)
  const head = tagged(
    'TR',
    ['day', 'right', 'of'].map((word, at) =>
      columnHead([cell(columns[at] ?? 0, headAt, word, type.tableHead)]),
    ),
  )
  const rows = practiceDays.map((day, index) => {
    const y = headAt + 7 + index * 7
    const blank = level(columns[1], columns[1] + 16, y + 1, rule.tableRow)
    return tagged('TR', [
      rowHead([cell(columns[0], y, String(day), type.chartLine)]),
      tagged('TD', [blank], { actual: 'to fill in' }),
      tagged('TD', [cell(columns[2], y, String(pins), type.chartSail)]),
    ])
  })
  const under = level(room.x, room.x + Math.min(measure, 56), headAt + 2, rule.tableRow)
  return [...told.marks, under, tagged('Table', [tagged('THead', [head]), tagged('TBody', rows)])]
}

/** The same in one line, for a page without room for more. */
export function scoreLine(pins: number, ruler: Ruler): readonly Mark[] {
  const words_ = lettered(
    ruler,
    { x: 0, y: legendAt },
    `Right without help, of ${pins}: `,
    type.legend,
    black,
  )
  const marks: Mark[] = [words_]
  let x = words_.width + 2
  for (const day of practiceDays) {
    const label = lettered(ruler, { x, y: legendAt }, `day ${day} `, type.legend, black)
    marks.push(label, level(x + label.width + 0.8, x + label.width + 9.8, legendAt + 0.6, rule.tableRow))
    x += label.width + 13
  }
  return [tagged('P', marks)]
}

function fillingWords(leaves: number): string {
  const back = leaves === 1 ? 'one leaf' : `${leaves} leaves`
  return `Fill in pencil, then turn back ${back}. Write “free” where a pin is free. Count only what you had right without help.`
}
