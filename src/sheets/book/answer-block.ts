import type { Sail } from '../../rig/index.ts'
import { fitted, flow, setLines, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { artifact, columnHead, figure, tagged } from '../tagged.ts'
import { answerBox, boxHeight } from './answer-boxes.ts'
import { type Bracket, brackets } from './answer-brackets.ts'
import { type AnswerGraph, type AnswerNode, answerGraph, type Join } from './answer-graph.ts'
import { type AnswerLayout, answerLayout, gap, type Placed, stretchesOf } from './answer-layout.ts'
import type { Book } from './book.ts'
import { listed, lowered } from './order-names.ts'
import { live } from './page.ts'
import { level } from './page-parts.ts'
import { black, rule, type } from './type.ts'

/** One sail's boxes and joins, once it knows where its upper edge is. */
export interface AnswerBlock {
  readonly height: number
  readonly pairKeys: readonly string[]
  readonly draw: (y: number) => readonly Mark[]
}

const pitch = 5.3
const head = { baseline: 4.3, rule: 5.2, boxes: 7.1 } as const
const foot = 1.6
const bracketStep = 2.3
const toldLeading = 4.1

/** Who answers whom in one sail: its name over a rule, two columns of boxes, the joins, and in words what can't be drawn. */
export function answerBlock(sail: Sail, book: Book): AnswerBlock | undefined {
  const graph = answerGraph(sail, book.rig)
  const layout = answerLayout(graph)
  if (layout.rows === 0) return undefined
  const left = brackets(graph.withinSetting, layout.setting)
  const right = brackets(graph.withinTaking, layout.taking)
  const sentence = toldWords([...layout.told, ...left.told, ...right.told], graph)
  const told = sentence === '' ? [] : flow([words(sentence, type.noteItalic)], live.width, book.setting.ruler)
  const boxes = head.boxes + (layout.rows - 1) * pitch + boxHeight
  const height = boxes + told.length * toldLeading + foot
  const columns: Columns = {
    setting: { left: left.depth * bracketStep, right: gap.left },
    taking: { left: gap.right, right: live.width - right.depth * bracketStep },
  }
  const draw = (y: number): readonly Mark[] => {
    const first = y + head.boxes
    const lines = setLines(told, { x: 0, y: y + boxes + 3.3 }, toldLeading, book.setting.ruler)
    return [
      ...heading(sail, y, book),
      ...rows(layout, columns, first, book),
      tagged('TR', [
        tagged('TD', [figure(altOf(graph), joinMarks(layout, left.drawn, right.drawn, columns, first))], {
          columns: 2,
        }),
      ]),
      ...(told.length > 0 ? [tagged('TR', [tagged('TD', lines.marks, { columns: 2 })])] : []),
    ]
  }
  return { height, pairKeys: [...graph.setting, ...graph.taking].map(({ pairKey }) => pairKey), draw }
}

interface Column {
  readonly left: number
  readonly right: number
}

interface Columns {
  readonly setting: Column
  readonly taking: Column
}

function heading(sail: Sail, y: number, { setting: { ruler } }: Book): readonly Mark[] {
  const face = type.sectionInTable
  const fit = fitted(sail.label, [face, { ...face, size: 9 }], live.width, ruler)
  const mark = lettered(ruler, { x: 0, y: y + head.baseline }, fit.words, fit.type, black)
  const cell = columnHead([mark], { columns: 2, ...(fit.isCut ? { actual: sail.label } : {}) })
  return [tagged('TR', [cell]), artifact([level(0, live.width, y + head.rule, rule.section)])]
}

// A row of the table for every row of boxes: what sets to the left, what takes in to the right.
function rows(
  { setting, taking, rows: count }: AnswerLayout,
  columns: Columns,
  y: number,
  book: Book,
): readonly Mark[] {
  const cell = ({ node, row }: Placed, column: Column) =>
    answerBox(node, { ...column, top: y + row * pitch }, book)
  return Array.from({ length: count }, (_, index) => {
    const left = setting[index]
    const right = taking[index]
    return tagged('TR', [
      tagged('TD', left ? cell(left, columns.setting) : []),
      tagged('TD', right ? cell(right, columns.taking) : []),
    ])
  })
}

function joinMarks(
  { setting, taking, bus, fans }: AnswerLayout,
  left: readonly Bracket[],
  right: readonly Bracket[],
  columns: Columns,
  y: number,
): readonly Mark[] {
  const middle = (row: number) => y + row * pitch + boxHeight / 2
  const straight = stretchesOf({ setting, taking }, bus, fans).map(({ from, to }) =>
    line([
      { x: from.x, y: middle(from.y) },
      { x: to.x, y: middle(to.y) },
    ]),
  )
  const bracket =
    (edge: number, way: -1 | 1) =>
    ({ top, foot: last, depth }: Bracket) => {
      const out = edge + way * (depth * bracketStep - 0.5)
      const [from, to] = [middle(top) + 0.8, middle(last) - 0.8]
      return line([
        { x: edge, y: from },
        { x: out, y: from },
        { x: out, y: to },
        { x: edge, y: to },
      ])
    }
  return [
    ...straight,
    ...left.map(bracket(columns.setting.left, -1)),
    ...right.map(bracket(columns.taking.right, 1)),
  ]
}

const line = (points: readonly Point[]): Mark => ({
  kind: 'line',
  points,
  pen: { ink: black, width: rule.frame, join: 'miter' },
})

const nameOf = ({ lines: [line] }: AnswerNode): string => (line ? lowered(line.labelOnSail, line) : '')

/** 'halyard answered by downhaul and inner buntline; ...': the joins for those who can't see them. */
function altOf({ setting, taking, across, withinSetting, withinTaking }: AnswerGraph): string {
  const joins = [...across, ...withinSetting, ...withinTaking]
  const nodes = [...setting, ...taking]
  const clauses = nodes.flatMap(node => {
    const others = joins.filter(([a]) => a === node.pairKey).map(([, b]) => b)
    const names = nodes.filter(({ pairKey }) => others.includes(pairKey)).map(nameOf)
    return names.length === 0 ? [] : [`${nameOf(node)} answered by ${listed(names)}`]
  })
  return clauses.length === 0 ? 'No line answers another.' : `Joined: ${clauses.join('; ')}.`
}

function toldWords(joins: readonly Join[], { setting, taking }: AnswerGraph): string {
  const nodes = [...setting, ...taking]
  const name = (key: string) => nodes.filter(({ pairKey }) => pairKey === key).map(nameOf)[0] ?? ''
  const firsts = [...new Set(joins.map(([a]) => a))]
  const clauses = firsts.map(key => {
    const others = joins.filter(([a]) => a === key).map(([, b]) => name(b))
    return `${name(key)} against ${listed(others)}`
  })
  return clauses.length === 0 ? '' : `Also: ${clauses.join('; ')}.`
}
