import type { Line } from '../../rig/index.ts'
import { functionInk, functionLetter, functionMark, functionWords } from '../function-mark.ts'
import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import type { Group, Mark } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import type { PlacedList } from './layout.ts'
import { headingBaseline, headingStart, listPlaces, ruleBelowHead, type SetRow } from './set-list.ts'
import { chartType, listStep } from './type.ts'

/** A list: code and name of the rail, then number, mark, letter and name, going away from the ship on both sides. */
export function listMarks(list: PlacedList, ruler: Ruler): Group {
  const rows = list.rows.map((row, index) => rowMarks(list, row, index, ruler))
  return {
    kind: 'group',
    ...(list.group.rail ? { title: `${list.group.code} ${list.group.rail.label}` } : {}),
    marks: [
      { kind: 'group', tag: { role: 'H2' }, marks: headingMarks(list, ruler) },
      {
        kind: 'line',
        points: [at(list, 0, headRule(list)), at(list, list.width, headRule(list))],
        pen: { ink: ink.ink, width: weight.b },
      },
      ...fiveRules(list),
      { kind: 'group', tag: { role: 'L' }, marks: rows },
    ],
  }
}

const headRule = (list: PlacedList): number => headingBaseline(list) + ruleBelowHead

/** A point of the list, so far from the edge nearer the ship: to port that is leftward. */
const at = (list: PlacedList, out: number, down: number) => ({
  x: list.edge + (list.group.side === 'port' ? -out : out),
  y: list.top + down,
})

/** Words that begin at the ship's side of the list: to port they end there. */
const anchorOf = (list: PlacedList) => (list.group.side === 'port' ? ('end' as const) : ('start' as const))

function headingMarks(list: PlacedList, ruler: Ruler): readonly Mark[] {
  const { group, headingWords } = list
  const anchor = anchorOf(list)
  const last = headingBaseline(list)
  const first = last - (headingWords.length - 1) * listStep
  const out = headingStart(group.code, ruler)
  return [
    ...(group.code === ''
      ? []
      : [lettered(ruler, at(list, 0, first), group.code, chartType.code, ink.ink, { anchor })]),
    ...headingWords.map((words, index) =>
      lettered(ruler, at(list, out, first + index * listStep), words, chartType.railName, ink.ink, {
        anchor,
      }),
    ),
  ]
}

/** A faint rule under every fifth row leads the eye across. */
function fiveRules(list: PlacedList): readonly Mark[] {
  return list.rows.flatMap((row, index): readonly Mark[] => {
    if (index % 5 !== 4 || index === list.rows.length - 1) return []
    const down = row.baseline + (row.words.length - 1) * listStep + 1
    return [
      {
        kind: 'line',
        points: [at(list, 0, down), at(list, list.width, down)],
        pen: { ink: ink.rule, width: weight.a },
      },
    ]
  })
}

function rowMarks(list: PlacedList, row: SetRow, index: number, ruler: Ruler): Group {
  const { line } = row
  const anchor = anchorOf(list)
  const label: readonly Mark[] =
    row.numbers === ''
      ? []
      : [lettered(ruler, at(list, 0, row.baseline), row.numbers, chartType.number, ink.ink, { anchor })]
  const name = row.words.map((words, step) =>
    lettered(
      ruler,
      at(list, listPlaces.name, row.baseline + step * listStep),
      words,
      line ? chartType.line : chartType.free,
      line ? ink.ink : ink.rig,
      { anchor },
    ),
  )
  return {
    kind: 'group',
    ...(line
      ? { id: `line.${line.address}${isOtherTack(line, row) ? '.other-tack' : ''}`, title: line.label }
      : { id: `free.${list.group.code}.${list.group.side}.${index}` }),
    tag: { role: 'LI' },
    marks: [
      { kind: 'group', tag: { role: 'Lbl' }, marks: label },
      {
        kind: 'group',
        tag: { role: 'LBody' },
        marks: [...deedMarks(list, row, ruler), { kind: 'group', tag: { role: 'Span' }, marks: name }],
      },
    ],
  }
}

/** Whether the row is the second of a line that shifts: where it is made fast with the wind from port. */
const isOtherTack = ({ otherBelay }: Line, { place }: SetRow): boolean =>
  otherBelay !== undefined && place?.rail === otherBelay.rail && place.number === otherBelay.number

function deedMarks(list: PlacedList, { line, baseline }: SetRow, ruler: Ruler): readonly Mark[] {
  const deed = line?.function
  if (!deed) return []
  const letter = lettered(
    ruler,
    at(list, listPlaces.letter, baseline),
    functionLetter[deed],
    chartType.letter,
    functionInk(deed),
    { anchor: 'middle' },
  )
  return [
    ...functionMark(deed, at(list, listPlaces.mark, baseline - 0.97), 1.05),
    { kind: 'group', tag: { role: 'Span', actual: `${functionWords[deed]}:` }, marks: [letter] },
  ]
}
