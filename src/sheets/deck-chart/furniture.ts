import { fromMemoryMark, type LineFunction, type Rig } from '../../rig/index.ts'
import { digestMark } from '../digest-mark.ts'
import {
  functionAnswer,
  functionInk,
  functionLetter,
  functionMark,
  functionsInOrder,
  functionWords,
} from '../function-mark.ts'
import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { speaksFeet } from '../measure-words.ts'
import { cutTo, setWithin } from '../narrow.ts'
import { revisionInShort, unsoundWords } from '../revision-words.ts'
import type { Setting } from '../setting.ts'
import type { Group, Mark, Point, Tag } from '../sheet.ts'
import type { Typeface } from '../typeface.ts'
import type { ChartLayout } from './layout.ts'
import { shortBar } from './short-bar.ts'
import { chartType } from './type.ts'

const group = (tag: Tag, marks: readonly Mark[]): Group => ({ kind: 'group', tag, marks })

/** The double frame. */
export function frameMarks({ paper }: ChartLayout): Group {
  const box = (within: number, width: number): Mark => {
    const [left, top, right, foot] = [within, within, paper.width - within, paper.height - within]
    return {
      kind: 'line',
      closed: true,
      pen: { ink: ink.ink, width, join: 'miter' },
      points: [
        { x: left, y: top },
        { x: right, y: top },
        { x: right, y: foot },
        { x: left, y: foot },
      ],
    }
  }
  const [outer, inner, apart] = paper.frame
  return group({ role: 'Artifact' }, [box(paper.margin, outer), box(paper.margin + apart, inner)])
}

/** Vessel and title to the left, the count of lines and places to the right, bow and the words of the sides between. */
export function headMarks(rig: Rig, layout: ChartLayout, { ruler, imprint }: Setting): readonly Mark[] {
  const { paper, left, hull, sideWords } = layout
  const sidesAt = Math.max(
    36,
    layout.lists.reduce((least, list) => Math.min(least, list.top), Number.POSITIVE_INFINITY) - 5,
  )
  const middle = paper.width / 2
  const right = paper.width - left
  const room = middle - left - 12
  const top = paper.margin + 12
  const vessel = chartType.vessels.find(type => ruler(rig.vessel.name, type) <= room) ?? chartType.vesselLeast
  const unsound = unsoundWords(imprint)
  const rigWords = rig.vessel.rig ? rig.vessel.rig.charAt(0).toUpperCase() + rig.vessel.rig.slice(1) : ''
  const subtitle = unsound ? `Deck chart ${unsound}` : 'Deck chart: where every line belays'
  return [
    group({ role: 'H1' }, [
      lettered(ruler, { x: left, y: top }, cutTo(room, rig.vessel.name, vessel, ruler), vessel, ink.ink),
    ]),
    group({ role: 'P' }, [lettered(ruler, { x: left, y: top + 6.4 }, subtitle, chartType.subtitle, ink.ink)]),
    group({ role: 'P' }, [
      ...(rigWords === ''
        ? []
        : [
            lettered(
              ruler,
              { x: right, y: top - 1 },
              cutTo(room, rigWords, chartType.subtitle, ruler),
              chartType.subtitle,
              ink.ink,
              { anchor: 'end' },
            ),
          ]),
      lettered(ruler, { x: right, y: top + 4.4 }, countWords(rig), chartType.fact, ink.ink, {
        anchor: 'end',
      }),
    ]),
    group({ role: 'P' }, [
      lettered(ruler, { x: middle - sideWords, y: sidesAt }, 'port', chartType.side, ink.ink, {
        anchor: 'end',
      }),
      lettered(ruler, { x: middle + sideWords, y: sidesAt }, 'starboard', chartType.side, ink.ink),
    ]),
    ...(hull
      ? bowArrow(
          { x: middle + 6.5, y: Math.max(paper.margin + 5, layout.onSheet(hull.stem, 0).y - 22) },
          ruler,
        )
      : []),
  ]
}

function bowArrow(tip: Point, ruler: Setting['ruler']): readonly Mark[] {
  const at = (x: number, y: number): Point => ({ x: tip.x + x, y: tip.y + y })
  return [
    {
      kind: 'line',
      closed: true,
      fill: { ink: ink.ink },
      points: [at(0, 0), at(1.6, 7), at(0, 5.4), at(-1.6, 7)],
    },
    lettered(ruler, at(2.6, 6.6), 'bow', chartType.subtitle, ink.ink),
  ]
}

function countWords(rig: Rig): string {
  const places = rig.rails.flatMap(rail => rail.places)
  const free = places.filter(place => place.lines.length === 0).length
  const counted = (count: number, noun: string) => `${count} ${count === 1 ? noun : `${noun}s`}`
  return `${counted(rig.lines.length, 'line')}, ${counted(places.length, 'place')}, ${free} free`
}

const heading = (
  words: string,
  beside: string,
  at: Point,
  width: number,
  ruler: Setting['ruler'],
): readonly Mark[] => [
  lettered(ruler, at, words, chartType.keyHead, ink.ink),
  ...(beside === ''
    ? []
    : [
        lettered(ruler, { x: at.x + width, y: at.y }, beside, chartType.keyHead, ink.ink, {
          anchor: 'end' as const,
        }),
      ]),
  {
    kind: 'line',
    points: [
      { x: at.x, y: at.y + 1.3 },
      { x: at.x + Math.max(width, ruler(words, chartType.keyHead)), y: at.y + 1.3 },
    ],
    pen: { ink: ink.ink, width: weight.b },
  },
]

const answers = [
  ['more', 'Solid: more sail.'],
  ['less', 'Open or barred: less sail.'],
  ['neither', 'Black: neither.'],
] as const

/** What the marks mean: only those that stand on this sheet. */
export function keyOfMarks(rig: Rig, { left, footTop }: ChartLayout, { ruler }: Setting): Group {
  const shown = functionsInOrder.filter(deed => rig.lines.some(line => line.function === deed))
  const rows = shown.map((deed: LineFunction, index): Mark => {
    const y = footTop + 9 + index * 4.5
    return group({ role: 'LI' }, [
      ...functionMark(deed, { x: left + 1.5, y: y - 1.05 }, 1.3),
      group({ role: 'Lbl' }, [
        lettered(ruler, { x: left + 5.5, y }, functionLetter[deed], chartType.letter, functionInk(deed), {
          anchor: 'middle',
        }),
      ]),
      group({ role: 'LBody' }, [
        lettered(ruler, { x: left + 8.5, y }, functionWords[deed], chartType.key, ink.ink),
      ]),
    ])
  })
  const after = footTop + 9 + shown.length * 4.5 + 1
  const isForeign = rig.lines.some(({ label }) => label.endsWith(fromMemoryMark))
  const notes = [
    ...answers
      .filter(([answer]) => shown.some(deed => functionAnswer[deed] === answer))
      .map(([, told]) => told),
    ...(isForeign ? [`${fromMemoryMark} word from memory`] : []),
  ]
  const legend = after + notes.length * 3.8 + 0.4
  return {
    kind: 'group',
    id: 'key',
    title: 'Key',
    marks: [
      group({ role: 'H2' }, heading('what hauling does', '', { x: left, y: footTop + 2.6 }, 36, ruler)),
      group({ role: 'L' }, rows),
      group(
        { role: 'P' },
        notes.map((words, index) =>
          lettered(ruler, { x: left, y: after + index * 3.8 }, words, chartType.note, ink.ink),
        ),
      ),
      group({ role: 'P' }, [
        { kind: 'circle', at: { x: left + 0.8, y: legend - 1 }, radius: 0.62, fill: { ink: ink.ink } },
        lettered(ruler, { x: left + 3, y: legend }, 'in use', chartType.value, ink.ink),
        {
          kind: 'circle',
          at: { x: left + 14.4, y: legend - 1 },
          radius: 0.53,
          pen: { ink: ink.ink, width: weight.b },
        },
        lettered(ruler, { x: left + 16.6, y: legend }, 'free', chartType.value, ink.ink),
      ]),
    ],
  }
}

/** Scale, edition, rights, digest and how to count, at the foot of the starboard outer column. */
export function titleColumn(rig: Rig, layout: ChartLayout, setting: Setting): Group {
  const { ruler, imprint, sheetNumber } = setting
  const { paper, left, footTop, scale } = layout
  const width = 36
  const x = paper.width - left - width
  const unsound = unsoundWords(imprint)
  const rows: readonly (readonly [string, string, Typeface])[] = [
    [
      'Scale',
      scale === undefined ? 'not to scale' : `1 : ${scale / paper.enlarged} on ${paper.name}`,
      chartType.value,
    ],
    ['Revision', revisionInShort(rig.vessel) ?? 'none given', chartType.value],
    ['Rights', rig.vessel.rights ?? 'not stated', chartType.value],
    ...(unsound ? [] : [['Digest', imprint.digest, chartType.digest] as const]),
  ]
  let y = footTop + 9
  const written = rows.flatMap(([label, value, type]) => {
    const lines = setWithin(value, width - 13, type, ruler).slice(0, 3)
    const marks = [
      lettered(ruler, { x, y }, label, chartType.note, ink.rig),
      ...lines.map((words, index) =>
        lettered(
          ruler,
          { x: x + 13, y: y + index * 3.6 },
          cutTo(width - 13, words, type, ruler),
          type,
          ink.ink,
        ),
      ),
    ]
    y += lines.length * 3.6 + 0.6
    return marks
  })
  const codeTop = y - 0.6
  const note = ['Pins count', 'from forward;', 'across the ship,', 'from port.']
  const foot = footTop + 63.5
  return {
    kind: 'group',
    id: 'title-block',
    title: 'Title block',
    marks: [
      group(
        { role: 'H2' },
        heading(
          'sheet',
          sheetNumber ? `${sheetNumber.n} of ${sheetNumber.of}` : 'single',
          { x, y: footTop + 2.6 },
          width,
          ruler,
        ),
      ),
      group({ role: 'P' }, written),
      ...(unsound ? [] : [digestMark(imprint.digest, { x, y: codeTop }, 14)]),
      group(
        { role: 'P' },
        note.map((words, index) =>
          lettered(
            ruler,
            { x: unsound ? x : x + 17, y: codeTop + 2.6 + index * 3.7 },
            words,
            chartType.note,
            ink.ink,
          ),
        ),
      ),
      ...(scale === undefined
        ? []
        : [...shortBar(scale, speaksFeet(rig.vessel), { x: x + 1, y: foot - 7.6 }, ruler)]),
      group({ role: 'P' }, [
        lettered(
          ruler,
          { x, y: foot },
          `Set for reading at ${0.4 * paper.enlarged} m`,
          chartType.note,
          ink.ink,
        ),
      ]),
    ],
  }
}
