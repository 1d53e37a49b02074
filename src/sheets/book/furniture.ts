import { fitted } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import type { Book } from './book.ts'
import { editionParts, unsoundWords } from './edition.ts'
import { type Leaf, live } from './page.ts'
import { box, level } from './page-parts.ts'
import { black, rule, type, white } from './type.ts'

const head = { blockTop: 10.4, rule: 14.95, baseline: 13.6, pad: 2.1, between: 2.4 } as const

// The middle of the foot leans to the fore-edge: page numbers are short, and editions long.
const foot = { rule: 198.3, middle: 0.4, edition: 53 } as const

/** The running head: the station in a black block at the fore-edge, the section beside it, the ship at the spine. */
export function runningHead(book: Book, section: string, leaf: Leaf): readonly Mark[] {
  const { ruler } = book.setting
  const name = book.station.label.toUpperCase()
  const station = fitted(name, [type.headStation, type.headStationSmall], 44, ruler)
  const block = ruler(station.words, station.type) + 2 * head.pad
  const vessel = fitted(book.rig.vessel.name, [type.headVessel, type.headVesselSmall], 46, ruler)
  const room = live.width - block - ruler(vessel.words, vessel.type) - 2 * head.between - 2
  const part = fitted(section, [type.headSection, type.headSectionSmall], room, ruler)
  const { at, foreEdge, spine } = ends(leaf, head.baseline)
  return [
    box(leaf === 'verso' ? 0 : live.width - block, head.blockTop, block, head.rule - head.blockTop),
    lettered(ruler, at(head.pad), station.words, station.type, white, foreEdge),
    lettered(ruler, at(block + head.between), part.words, part.type, black, foreEdge),
    lettered(ruler, at(live.width), vessel.words, vessel.type, black, spine),
    level(0, live.width, head.rule, rule.furniture),
  ]
}

/** The foot: page n of m at the fore-edge, what the paper is worth in the middle, which edition it is at the spine. */
export function runningFoot(book: Book, page: number, of: number, leaf: Leaf): readonly Mark[] {
  const { ruler } = book.setting
  const { at, foreEdge, spine } = ends(leaf, live.footBaseline)
  const edition = fitted(fittingEdition(book), [type.foot], foot.edition, ruler)
  return [
    level(0, live.width, foot.rule, rule.furniture),
    lettered(ruler, at(0), `page ${page} of ${of}`, type.footStrong, black, foreEdge),
    ...worth(book, at(live.width * foot.middle)),
    lettered(ruler, at(live.width), edition.words, edition.type, black, spine),
  ]
}

// Counted from the fore-edge, whichever side of the page that is.
function ends(leaf: Leaf, y: number) {
  const outward = leaf === 'verso'
  return {
    at: (inset: number): Point => ({ x: outward ? inset : live.width - inset, y }),
    foreEdge: { anchor: outward ? 'start' : 'end' },
    spine: { anchor: outward ? 'end' : 'start' },
  } as const
}

// The digest is what a page is verified by: the date, then the mark, give way to it.
function fittingEdition(book: Book): string {
  const { mark, date, digest } = editionParts(book)
  const tries = [[mark, date, digest], [mark, digest], [digest ?? mark]].map(parts =>
    parts.filter(part => part !== undefined).join(' · '),
  )
  const fits = tries.find(words => book.setting.ruler(words, type.foot) <= foot.edition)
  return fits ?? tries[tries.length - 1] ?? ''
}

function worth(book: Book, at: Point): readonly Mark[] {
  const { ruler } = book.setting
  const unsound = unsoundWords(book)
  if (unsound === undefined)
    return [lettered(ruler, at, 'Uncontrolled when printed', type.footStrong, black, { anchor: 'middle' })]
  const width = ruler(unsound, type.footStrong) + 3
  return [
    box(at.x - width / 2, at.y - 2.9, width, 3.9),
    lettered(ruler, at, unsound, type.footStrong, white, { anchor: 'middle' }),
  ]
}
