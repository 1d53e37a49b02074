import type { Figures } from '../../reckon/index.ts'
import type { Rig, Sail } from '../../rig/index.ts'
import { fitted } from '../flow.ts'
import { ink, weight } from '../ink.ts'
import { headed } from '../key.ts'
import { lettered } from '../lettered.ts'
import { areaWords } from '../measure-words.ts'
import { type Rect, rect } from '../plane.ts'
import { plateType } from '../plate-type.ts'
import type { Mark, Point } from '../sheet.ts'
import { rowHead, tagged } from '../tagged.ts'
import { allSail } from '../title-rows.ts'
import type { Ruler, Typeface } from '../typeface.ts'
import { run } from './strokes.ts'

/** How a table of areas is set: in so many columns, each so wide. */
export interface TableForm {
  readonly columns: number
  readonly width: number
  /** The width of the heading's rule: over a single column it is the key's. */
  readonly heading: number
  readonly height: number
  readonly columnWidth: number
  readonly rowsInColumn: number
  /** From the left edge of a column to that of the next. */
  readonly columnStep: number
}

const pitch = 3.62
const groupGap = 1.1
const firstRow = 8.6
/** Figures stand at the left, where the key has its samples; names where it has its words. */
const figuresAt = 10.4
const namesAt = 13
const gutter = 7
/** Beyond this a table would be all there is on the plate. */
const mostRows = 120

/** Sails that the table lists: all of them, but for a rig beyond any ship. */
const listed = ({ sails }: Rig): readonly Sail[] => sails.slice(0, mostRows)

/** The room that a table takes in so many columns; a column is as wide as the key above it, or as its longest name. */
export function tableForm(rig: Rig, columns: number, ruler: Ruler): TableForm {
  const rows = listed(rig).length + (rig.sails.length > mostRows ? 1 : 0)
  const rowsInColumn = Math.ceil((rows + 1) / columns)
  const longest = listed(rig).reduce((most, sail) => Math.max(most, ruler(sail.label, plateType.list)), 0)
  const columnWidth = Math.min(62, Math.max(38, namesAt + longest + 1))
  const width = columns * columnWidth + (columns - 1) * gutter
  const gaps = columns === 1 ? groupsOf(listed(rig)) * groupGap : 0
  return {
    columns,
    columnWidth,
    rowsInColumn,
    width,
    heading: Math.max(width, columns === 1 ? 62 : 0),
    columnStep: columnWidth + gutter,
    height: firstRow + (rowsInColumn - 1) * pitch + gaps + 2.6,
  }
}

/** Whether the sum stands under some sail, and not in a column by itself. */
export const endsUnderSails = (rig: Rig, { columns, rowsInColumn }: TableForm): boolean =>
  listed(rig).length > (columns - 1) * rowsInColumn

/** The table spread over the breadth: the room left over goes between its columns. */
export function spread(form: TableForm, breadth: number): TableForm {
  if (form.columns < 2 || breadth < form.width) return form
  return {
    ...form,
    width: breadth,
    heading: breadth,
    columnStep: (breadth - form.columnWidth) / (form.columns - 1),
  }
}

/** How often the mast changes down the list. */
const groupsOf = (sails: readonly Sail[]): number =>
  sails.filter((sail, i) => i > 0 && sail.mast !== sails[i - 1]?.mast).length

interface Row {
  readonly area: string
  readonly name: string
  readonly isSum: boolean
  /** The first row of another mast. */
  readonly begins: boolean
}

/** The table of all sails with their areas, hung from its upper left corner. */
export function areasTable(
  rig: Rig,
  figures: Figures,
  form: TableForm,
  at: Point,
  ruler: Ruler,
): { readonly mark: Mark; readonly bounds: Rect } {
  const rows = rowsOf(rig, figures)
  const heading = headed('sail areas', at, form.heading, ruler)
  const unit = lettered(
    ruler,
    { x: at.x + ruler('sail areas', plateType.heading) + 2.2, y: at.y + 2.2 },
    unitOf(rig),
    plateType.listItalic,
    ink.rig,
  )
  let y = at.y + firstRow - pitch
  const cells = rows.map((row, i) => {
    const column = Math.floor(i / form.rowsInColumn)
    const isTop = i % form.rowsInColumn === 0
    y = isTop ? at.y + firstRow : y + pitch + (row.begins && form.columns === 1 ? groupGap : 0)
    return rowMark(row, { x: at.x + column * form.columnStep, y }, form.columnWidth, ruler)
  })
  return {
    mark: {
      kind: 'group',
      id: 'sail-areas',
      title: `Sail areas, ${unitOf(rig)}`,
      marks: [...heading, tagged('P', [unit]), tagged('Table', cells)],
    },
    bounds: rect(at.x, at.y, at.x + form.width, at.y + form.height),
  }
}

const figureType: Typeface = { ...plateType.list, tabular: true }

function rowMark({ area, name, isSum }: Row, { x, y }: Point, width: number, ruler: Ruler): Mark {
  const shown = fitted(name, [isSum ? plateType.listItalic : plateType.list], width - namesAt, ruler)
  const rule = run(
    [
      { x, y: y - 2.75 },
      { x: x + figuresAt, y: y - 2.75 },
    ],
    { ink: ink.rig, width: weight.a },
  )
  return tagged('TR', [
    ...(isSum ? [rule] : []),
    tagged('TD', [lettered(ruler, { x: x + figuresAt, y }, area, figureType, ink.ink, { anchor: 'end' })]),
    rowHead([lettered(ruler, { x: x + namesAt, y }, shown.words, shown.type, ink.ink)]),
  ])
}

function rowsOf(rig: Rig, figures: Figures): readonly Row[] {
  const shown = listed(rig)
  const rows = shown.map((sail, i): Row => {
    const area = figures.sails.get(sail.name)?.area
    return {
      area: area?.known ? bare(areaWords(area.value, rig.vessel)) : '–',
      name: `${sail.label}${sail.conjectural ? ' ?' : ''}`,
      isSum: false,
      begins: i > 0 && sail.mast !== shown[i - 1]?.mast,
    }
  })
  const more = rig.sails.length - shown.length
  const rest: readonly Row[] =
    more > 0 ? [{ area: '', name: `and ${more} more`, isSum: false, begins: false }] : []
  const total = figures.total.known ? bare(areaWords(figures.total.value, rig.vessel)) : '–'
  return [
    ...rows,
    ...rest,
    {
      area: total,
      name: figures.total.known ? allSail(rig) : `${allSail(rig)}: not known`,
      isSum: true,
      begins: false,
    },
  ]
}

/** The figure without its unit, which stands in the heading. */
const bare = (words: string): string => words.replace(/ [^ ]+$/, '')

const unitOf = ({ vessel }: Rig): string =>
  areaWords(0 as Parameters<typeof areaWords>[0], vessel).replace(/^\S+ /, '')
