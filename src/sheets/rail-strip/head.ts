import type { Rail, Rig } from '../../rig/index.ts'
import { dash, ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { cutTo } from '../narrow.ts'
import type { RailView } from '../rail-view.ts'
import { revisionWords, unsoundWords } from '../revision-words.ts'
import type { Setting } from '../setting.ts'
import type { Group, Mark, Pen, Point } from '../sheet.ts'
import { styleOf } from '../style.ts'
import type { StripFrame } from './frame.ts'
import { headType, readingDistance } from './type.ts'

/** What the head and the foot of a strip say. */
export interface HeadWords {
  readonly code: string
  /** 'Fore rail, port'. */
  readonly title: string
  readonly vessel: string
  /** Under the vessel's name: how many places, or what to do with a blank. */
  readonly beside: string
  /** At the foot: 'sheet 5 of 14'. */
  readonly sheet: string
}

/** Frame, code, title, vessel, the words at either end of the rail, and from where it is seen. */
export function stripHead(
  words: HeadWords,
  view: RailView,
  frame: StripFrame,
  { ruler }: Setting,
): readonly Mark[] {
  const right = frame.right - 4
  const codeAt = { x: frame.left + 4.1, y: 21.1 }
  const titleX = codeAt.x + ruler(words.code, headType.code) + 5.5
  const besideWidth = Math.max(ruler(words.vessel, headType.vessel), ruler(words.beside, headType.beside))
  const room = Math.max(30, right - titleX - 8 - Math.min(besideWidth, 120))
  const title = headType.titles.find(each => ruler(words.title, each) <= room) ?? headType.titleLeast
  const besideRoom = right - titleX - Math.min(room, ruler(words.title, title)) - 6
  return [
    { kind: 'group', tag: { role: 'Artifact' }, marks: rules(frame) },
    {
      kind: 'group',
      tag: { role: 'H1' },
      marks: [
        lettered(ruler, codeAt, words.code, headType.code, ink.ink),
        lettered(ruler, { x: titleX, y: 21.1 }, cutTo(room, words.title, title, ruler), title, ink.ink),
      ],
    },
    paragraph(
      lettered(
        ruler,
        { x: right, y: 15.4 },
        cutTo(besideRoom, words.vessel, headType.vessel, ruler),
        headType.vessel,
        ink.ink,
        { anchor: 'end' },
      ),
    ),
    paragraph(
      lettered(ruler, { x: right, y: 21.6 }, words.beside, headType.beside, ink.ink, { anchor: 'end' }),
    ),
    ...ends(view, frame, { ruler }),
  ]
}

/** The last line of the sheet: for which distance it is set, which edition it shows, which sheet it is. */
export function stripFoot(
  words: HeadWords,
  rig: Rig,
  bodySize: number,
  frame: StripFrame,
  setting: Setting,
): Group {
  const { ruler, imprint } = setting
  const y = frame.foot - 1.35
  const unsound = unsoundWords(imprint)
  const revision = revisionWords(rig.vessel)
  const edition = [revision && `Revision ${revision}`, unsound ?? `digest ${imprint.digest}`]
    .filter(Boolean)
    .join('    ')
  const distance = `Set for reading at ${readingDistance(bodySize) * styleOf(setting).enlarged} m`
  return {
    kind: 'group',
    tag: { role: 'P' },
    marks: [
      lettered(ruler, { x: frame.left + 4, y }, distance, headType.footItalic, ink.ink),
      lettered(ruler, { x: frame.width / 2, y }, edition, headType.foot, ink.ink, { anchor: 'middle' }),
      lettered(ruler, { x: frame.right - 2.2, y }, words.sheet, headType.foot, ink.ink, { anchor: 'end' }),
    ],
  }
}

/** 'Fore rail, port': the side is told of a rail that has its mirror. */
export const railTitle = (rail: Rail): string => (rail.mirrored ? `${rail.label}, ${rail.lie}` : rail.label)

function rules(frame: StripFrame): readonly Mark[] {
  const { left, right, top, foot } = frame
  return [
    {
      kind: 'line',
      closed: true,
      pen: { ink: ink.ink, width: weight.e, join: 'miter' },
      points: [
        { x: left, y: top },
        { x: right, y: top },
        { x: right, y: foot },
        { x: left, y: foot },
      ],
    },
    level(left, right, frame.headRule, { ink: ink.ink, width: weight.b }),
    level(left + 1.9, right - 1.9, frame.endsRule, { ink: ink.ink, width: 1 }),
    level(left + 1.9, right - 1.9, frame.footRule, { ink: ink.ink, width: weight.b }),
  ]
}

/** A level line from x to x. */
export const level = (from: number, to: number, y: number, pen: Pen): Mark => ({
  kind: 'line',
  points: [
    { x: from, y },
    { x: to, y },
  ],
  pen,
})

/** Bow is in ink with its arrow, stern in grey: one look tells which way the ship goes. */
function ends(view: RailView, frame: StripFrame, { ruler }: Pick<Setting, 'ruler'>): readonly Mark[] {
  const y = 31.6
  const left = frame.left + 4
  const right = frame.right - 4
  const isBow = (side: 'left' | 'right') => view.bow === side
  const tone = (side: 'left' | 'right') => (view.bow === undefined || isBow(side) ? ink.ink : ink.rig)
  const inset = (side: 'left' | 'right') => (isBow(side) ? 8.6 : 0)
  return [
    ...(isBow('left') ? [arrow({ x: left - 1, y: y - 1.6 }, 1)] : []),
    ...(isBow('right') ? [arrow({ x: right + 1, y: y - 1.6 }, -1)] : []),
    paragraph(
      lettered(ruler, { x: left + inset('left'), y }, view.leftEnd, headType.beside, tone('left')),
      lettered(ruler, { x: frame.width / 2, y }, view.sentence, headType.beside, ink.ink, {
        anchor: 'middle',
      }),
      lettered(ruler, { x: right - inset('right'), y }, view.rightEnd, headType.beside, tone('right'), {
        anchor: 'end',
      }),
    ),
  ]
}

/** A swallow-tailed dart with its point at `tip`; `way` is 1 where its tail is to the right. */
function arrow(tip: Point, way: 1 | -1): Mark {
  const at = (x: number, y: number): Point => ({ x: tip.x + way * x, y: tip.y + y })
  return {
    kind: 'line',
    closed: true,
    fill: { ink: ink.ink },
    points: [at(0, 0), at(7, -1.7), at(5.4, 0), at(7, 1.7)],
  }
}

const paragraph = (...marks: readonly Mark[]): Group => ({
  kind: 'group',
  tag: { role: 'P' },
  marks: marks.filter(mark => mark.kind !== 'text' || mark.words !== ''),
})

/** The dash of a place that is free. */
export const freeDash = dash.byRule
