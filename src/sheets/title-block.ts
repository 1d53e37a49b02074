import type { Figures } from '../reckon/index.ts'
import type { Rig } from '../rig/index.ts'
import { digestMark } from './digest-mark.ts'
import { type Fitted, fitted, wrap } from './flow.ts'
import { ink, weight } from './ink.ts'
import { lettered } from './lettered.ts'
import { speaksFeet } from './measure-words.ts'
import type { Rect } from './plane.ts'
import type { Plate } from './plate.ts'
import { plateType } from './plate-type.ts'
import { feetOnBar, metresOnBar, scaleBar } from './scale-bar.ts'
import type { Setting } from './setting.ts'
import type { Mark } from './sheet.ts'
import { figure, tagged } from './tagged.ts'
import { dimensionRows, revisionRows, sailRows, type TitleRow } from './title-rows.ts'
import type { Ruler } from './typeface.ts'

/** What the title block tells of, and on which plate. `scale` is undefined where nothing is drawn to scale. */
export interface TitleBlock {
  readonly rig: Rig
  readonly figures: Figures
  readonly setting: Setting
  readonly plate: Plate
  /** As composed. */
  readonly scale: number | undefined
}

/** Where each of the five cells begins, as a share of the band; the last share is the band's end. */
const cellStarts = [0, 0.299, 0.487, 0.654, 0.834, 1] as const

/** The band at a plate's foot: scale, sail figures, dimensions, revision, and digest with sheet number. */
export function titleBlock(block: TitleBlock): Mark {
  const { rig, figures, setting, plate } = block
  const cells = cellsOf(plate.band)
  const [scaleCell, sails, dimensions, revision, digest] = cells
  const rows = (cell: Rect, id: string, table: readonly TitleRow[], column: number): Mark => ({
    kind: 'group',
    id,
    marks: rowMarks(cell, table, column, setting.ruler),
  })
  return {
    kind: 'group',
    id: 'title-block',
    title: 'Title block',
    marks: [
      ...cells.slice(1).map(({ left }) => separator(left, plate.band)),
      scaleMarks(scaleCell, block),
      rows(sails, 'sail-figures', sailRows(rig, figures), 28),
      rows(dimensions, 'dimensions', dimensionRows(rig), 27),
      rows(revision, 'revision', revisionRows(rig, setting.imprint), 15),
      digestMarks(digest, setting),
    ],
  }
}

function cellsOf({ left, right, top, bottom }: Rect): readonly [Rect, Rect, Rect, Rect, Rect] {
  const at = (share: number) => left + share * (right - left)
  const cell = (i: 0 | 1 | 2 | 3 | 4): Rect => ({
    left: at(cellStarts[i]),
    right: at(cellStarts[i + 1] ?? 1),
    top,
    bottom,
  })
  return [cell(0), cell(1), cell(2), cell(3), cell(4)]
}

const separator = (x: number, { top, bottom }: Rect): Mark => ({
  kind: 'line',
  points: [
    { x, y: top + 2.4 },
    { x, y: bottom - 2.4 },
  ],
  pen: { ink: ink.rule, width: weight.a },
})

const padding = 3.2

/** How lines stand in a cell, and how many it holds: closer where a long value wants two of them. */
const settings = [
  { lines: 5, first: 7.3, leading: 4.05 },
  { lines: 6, first: 6.4, leading: 3.55 },
] as const

function rowMarks(cell: Rect, rows: readonly TitleRow[], column: number, ruler: Ruler): readonly Mark[] {
  const x = cell.left + padding
  const room = cell.right - x - column - padding
  const wanted = rows.reduce((sum, { value }) => sum + valueLines(value, room, 2, ruler).length, 0)
  const { lines, first, leading } = settings.find(one => one.lines >= wanted) ?? settings[1]
  let line = 0
  return rows.map(({ label, value, isPart }, i) => {
    const y = cell.top + first + line * leading
    const linesLeft = lines - line - (rows.length - 1 - i)
    const values = valueLines(value, room, Math.min(2, linesLeft), ruler)
    line += values.length
    const words = [
      lettered(ruler, { x: isPart ? x + 2.4 : x, y }, label, plateType.bandLabel, ink.rig),
      ...values.map((shown, n) =>
        lettered(ruler, { x: x + column, y: y + n * leading }, shown.words, shown.type, ink.ink),
      ),
    ]
    return tagged('P', words, { actual: `${label}: ${value}` })
  })
}

/** A value on one line if it fits, else on as many as it may take; what is longer still is cut. */
function valueLines(value: string, room: number, most: number, ruler: Ruler): readonly Fitted[] {
  const types = [plateType.bandValue, { ...plateType.bandValue, size: 8 }]
  const whole = fitted(value, types, room, ruler)
  if (!whole.isCut || most < 2) return [whole]
  const [first = '', ...rest] = wrap(value, plateType.bandValue, room, ruler)
  return [first, rest.join(' ')].map(words => fitted(words, types, room, ruler))
}

function scaleMarks(cell: Rect, { rig, setting, plate, scale }: TitleBlock): Mark {
  const { ruler } = setting
  const feet = speaksFeet(rig.vessel)
  const x = cell.left + 5
  const line = (
    words: string,
    y: number,
    type: typeof plateType.scale | typeof plateType.note,
    shade: string,
  ) => lettered(ruler, { x, y: cell.top + y }, words, type, shade)
  if (scale === undefined)
    return { kind: 'group', id: 'scale', marks: [line('Not to scale', 8, plateType.scale, ink.ink)] }
  const bar = scaleBar(
    scale,
    feet ? feetOnBar : metresOnBar,
    { at: { x, y: cell.top + 9.4 }, width: cell.right - x - 1 },
    ruler,
  )
  return {
    kind: 'group',
    id: 'scale',
    marks: [
      figure(`Scale bar in ${feet ? 'feet' : 'metres'}`, [bar]),
      line(`Scale 1 : ${scale / plate.enlarged} on ${plate.name}`, 17.4, plateType.scale, ink.ink),
      line(
        `Lengths in ${feet ? 'feet and inches' : 'metres'}. x aft of FP, z above waterline.`,
        21.8,
        plateType.note,
        ink.rig,
      ),
    ],
  }
}

const digestSide = 17.5

function digestMarks(cell: Rect, { ruler, imprint, sheetNumber }: Setting): Mark {
  const isSound = imprint.errors === 0
  const left = cell.left + padding
  const x = isSound ? left + digestSide + 4 : left
  const top = cell.top + (cell.bottom - cell.top - digestSide) / 2
  const label = (words: string, y: number) =>
    lettered(ruler, { x, y: top + y }, words, plateType.bandLabel, ink.rig)
  const { n, of } = sheetNumber ?? { n: 1, of: 1 }
  const digest = [
    label('digest', 13.2),
    lettered(ruler, { x, y: top + 17.1 }, imprint.digest, plateType.digest, ink.ink),
  ]
  return {
    kind: 'group',
    id: 'sheet-number',
    marks: [
      ...(isSound ? [digestMark(imprint.digest, { x: left, y: top }, digestSide)] : []),
      tagged(
        'P',
        [
          label('Sheet', 2.6),
          lettered(ruler, { x, y: top + 8.6 }, `${n} of ${of}`, plateType.sheetNumber, ink.ink),
        ],
        { actual: `Sheet ${n} of ${of}` },
      ),
      isSound
        ? tagged('P', digest, { actual: `Digest ${imprint.digest}` })
        : tagged('P', [label('no digest: the rig has errors', 13.2)]),
    ],
  }
}
