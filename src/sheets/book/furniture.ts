import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import type { Book } from './book.ts'
import { monthNames } from './date.ts'
import { fitted } from './flow.ts'
import { type Leaf, live } from './page.ts'
import { black, rule, type, white } from './type.ts'

const head = { blockTop: 10.4, rule: 14.95, baseline: 13.6, pad: 2.1, between: 2.4 } as const
const foot = { rule: 198.3 } as const

/** The running head: the station in a black block at the fore-edge, the section beside it, the ship at the spine. */
export function runningHead(book: Book, section: string, leaf: Leaf): readonly Mark[] {
  const { ruler } = book.setting
  const station = fitted(
    book.station.label.toUpperCase(),
    [type.headStation, type.headStationSmall],
    44,
    ruler,
  )
  const block = ruler(station.words, station.type) + 2 * head.pad
  const vessel = fitted(book.rig.vessel.name, [type.headVessel, type.headVesselSmall], 50, ruler)
  const room = live.width - block - ruler(vessel.words, vessel.type) - 2 * head.between - 2
  const part = fitted(section, [type.headSection, type.headSectionSmall], room, ruler)
  const outward = leaf === 'verso'
  const at = (inset: number): Point => ({ x: outward ? inset : live.width - inset, y: head.baseline })
  const [foreEdge, spine] = outward ? (['start', 'end'] as const) : (['end', 'start'] as const)
  return [
    box(outward ? 0 : live.width - block, head.blockTop, block, head.rule - head.blockTop),
    lettered(ruler, at(head.pad), station.words, station.type, white, { anchor: foreEdge }),
    lettered(ruler, at(block + head.between), part.words, part.type, black, { anchor: foreEdge }),
    lettered(ruler, at(live.width), vessel.words, vessel.type, black, { anchor: spine }),
    level(head.rule, rule.furniture),
  ]
}

/** The foot: page n of m at the fore-edge, what the paper is worth in the middle, which edition it is at the spine. */
export function runningFoot(book: Book, page: number, of: number, leaf: Leaf): readonly Mark[] {
  const { ruler } = book.setting
  const outward = leaf === 'verso'
  const y = live.footBaseline
  const [foreEdge, spine] = outward ? (['start', 'end'] as const) : (['end', 'start'] as const)
  const number = lettered(
    ruler,
    { x: outward ? 0 : live.width, y },
    `page ${page} of ${of}`,
    type.footStrong,
    black,
    {
      anchor: foreEdge,
    },
  )
  const room = live.width / 2 - 22
  const edition = fitted(editionLine(book), [type.foot], room, ruler)
  return [
    level(foot.rule, rule.furniture),
    number,
    ...worth(book, outward),
    lettered(ruler, { x: outward ? live.width : 0, y }, edition.words, edition.type, black, {
      anchor: spine,
    }),
  ]
}

/** 'Revision C · 14 March 2027 · 7f3a 91c2': which edition of the rig the paper shows, as far as the text says. */
export function editionLine(book: Book): string {
  const { revision } = book.rig.vessel
  const { digest, errors } = book.setting.imprint
  return [
    revision && `Revision ${revision.mark}`,
    revision && dateWords(book),
    errors === 0 ? printedDigest(digest) : undefined,
  ]
    .filter(part => part !== undefined)
    .join(' · ')
}

/** '14 March 2027', or undefined where the rig has no revision. */
export function dateWords(book: Book): string | undefined {
  const { revision } = book.rig.vessel
  return revision && `${revision.day} ${monthNames[revision.month - 1] ?? ''} ${revision.year}`
}

/** The digest in two groups of four, parted by a space. */
export const printedDigest = (digest: string): string => digest.replace('-', ' ')

/** 'From a rig with 3 errors', or undefined for a sound rig. */
export function unsoundWords({ setting }: Book): string | undefined {
  const { errors } = setting.imprint
  if (errors === 0) return undefined
  return `From a rig with ${errors} ${errors === 1 ? 'error' : 'errors'}`
}

// Not in the middle of the measure, but of what is left of it: page numbers are short and editions long.
function worth(book: Book, outward: boolean): readonly Mark[] {
  const { ruler } = book.setting
  const x = outward ? live.width * 0.433 : live.width * 0.567
  const y = live.footBaseline
  const unsound = unsoundWords(book)
  if (unsound === undefined)
    return [
      lettered(ruler, { x, y }, 'Uncontrolled when printed', type.footStrong, black, { anchor: 'middle' }),
    ]
  const width = ruler(unsound, type.footStrong) + 3
  return [
    box(x - width / 2, y - 2.9, width, 3.9),
    lettered(ruler, { x, y }, unsound, type.footStrong, white, { anchor: 'middle' }),
  ]
}

const level = (y: number, width: number): Mark => ({
  kind: 'line',
  points: [
    { x: 0, y },
    { x: live.width, y },
  ],
  pen: { ink: black, width },
})

const box = (x: number, y: number, width: number, height: number): Mark => ({
  kind: 'line',
  points: [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ],
  closed: true,
  fill: { ink: black },
})
