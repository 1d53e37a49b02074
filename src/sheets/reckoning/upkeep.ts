import type { Rig } from '../../rig/index.ts'
import { dateWords } from '../revision-words.ts'
import { type Table, words } from '../table.ts'
import { column } from './units.ts'

/** What the last survey found of each line, the condemned and the worn first. */
export function surveysTable({ pairAt }: Rig): Table {
  const found = [...pairAt.values()].flatMap(([line]) =>
    line?.survey ? [{ line, survey: line.survey }] : [],
  )
  const conditions = ['condemned', 'worn', 'sound'] as const
  const inOrder = conditions.flatMap(one => found.filter(({ survey }) => survey.condition === one))
  return {
    id: 'surveys',
    title: 'Lines surveyed',
    columns: ['line', 'condition', 'what was seen', 'on', 'by', 'due again'].map(name => column(name)),
    rows: inOrder.map(({ line, survey: { condition, note, day, by, due } }) =>
      [line.label, condition, note, dateWords(day), by, due && dateWords(due)].map(said => words(said ?? '')),
    ),
    notes: ['What is overdue is judged on the day of the revision, and by "check".'],
  }
}

/** The blocks that can be told from their fellows, as they are numbered. */
export const markedBlocksTable = ({ blocks }: Rig): Table => ({
  id: 'marked-blocks',
  title: 'Blocks by their numbers',
  columns: ['number', 'block', 'inspected'].map(name => column(name)),
  rows: blocks.map(({ number, name, inspected }) =>
    [number, name, inspected && dateWords(inspected)].map(said => words(said ?? '')),
  ),
  notes: [],
})
