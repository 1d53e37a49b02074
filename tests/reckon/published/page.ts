import { difference, type PublishedRow, type Topic } from './row.ts'

/** The page that stands beside the code: every published figure, what the program makes of it, and how far they differ. */
export function pageOf(topics: readonly Topic[]): string {
  const rows = topics.flatMap(topic => topic.rows)
  const passedOver = topics.reduce((sum, topic) => sum + topic.passedOver.length, 0)
  const count = (kind: PublishedRow['kind']) => rows.filter(row => row.kind === kind).length
  const head = [
    '# Published figures, and what the program makes of them',
    '',
    '<!-- Written by tests/reckon/published/published.test.ts; see there. -->',
    '',
    `${rows.length} figures: ${count('computed')} computed by a method, ${count('tabled')} tabled, ${count('policy')} policy (a`,
    `default, a limit or a warning). ${passedOver} more are passed over, each with its reason; they are not counted.`,
    'A figure from memory, second-hand or of a work not identified is marked so; it never makes more than a warning.',
    "Planning figures only: the vessel's own papers, local rules and licensed practice govern.",
  ]
  return `${[...head, ...topics.flatMap(topicLines)].join('\n')}\n`
}

function topicLines({ title, rows, passedOver }: Topic): readonly string[] {
  return [
    '',
    `## ${title}`,
    '',
    '| figure | source | published | computed | difference | which |',
    '|---|---|--:|--:|--:|---|',
    ...rows.map(row => `| ${cells(row).join(' | ')} |`),
    ...(passedOver.length === 0 ? [] : ['', 'Passed over:', '']),
    ...passedOver.map(({ fact, source, because }) => `- ${fact} (${source}): ${because}`),
  ]
}

function cells(row: PublishedRow): readonly string[] {
  const status = row.status === 'read' ? '' : ` (${row.status})`
  return [
    row.fact,
    `${row.source}${status}`,
    shown(row.published, row.unit),
    shown(row.computed, row.unit),
    differenceShown(row),
    row.kind,
  ]
}

const shown = (figure: number | string, unit: string): string =>
  typeof figure === 'string' ? figure : `${rounded(figure)}${unit === '' ? '' : ` ${unit}`}`

/** Five figures tell all that a table printed. */
const rounded = (figure: number): string => String(Number(figure.toPrecision(5)))

function differenceShown(row: PublishedRow): string {
  const off = difference(row)
  if (off === undefined) return ''
  const share = off / Math.abs(Number(row.published) || 1)
  if (Math.abs(share) < 0.00005) return '0'
  return `${share > 0 ? '+' : '−'}${Math.abs(share * 100).toFixed(2)} %`
}
