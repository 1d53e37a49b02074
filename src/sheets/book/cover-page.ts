import type { Finding, Found } from '../../findings/index.ts'
import { fitted, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import { narrowest } from '../narrow.ts'
import type { Mark } from '../sheet.ts'
import { artifact, figure, tagged } from '../tagged.ts'
import type { Book } from './book.ts'
import { editionParts, unsoundWords } from './edition.ts'
import { live, type PageBody } from './page.ts'
import { pageKey } from './page-key.ts'
import { box, level, paragraph } from './page-parts.ts'
import { shipOutline } from './ship-outline.ts'
import { black, points, rule, type, white } from './type.ts'

const waterline = 159

/** The cover: whose book it is, of which ship, and by what to tell whether it is still true. */
export function coverPages(book: Book): Found<readonly PageBody[]> {
  const station = stationName(book)
  const ship = drawing(book)
  const marks = [...vesselBand(book), ...station.marks, ...ship.value, ...imprint(book)]
  const title = `${book.station.label}: station handbook`
  return {
    value: [
      {
        key: pageKey.cover,
        title,
        section: undefined,
        description: `Cover of the ${book.station.name}'s station handbook of the ${book.rig.vessel.name}.`,
        marks,
        bookmarks: [{ level: 1, title: book.station.label }],
        leaf: 'recto',
      },
    ],
    findings: [...station.findings, ...ship.findings],
  }
}

function vesselBand({ rig, setting: { ruler } }: Book): readonly Mark[] {
  const { name, rig: kind } = rig.vessel
  const sizes = [17, 14, 11, 8].map(size => ({ ...type.coverVessel, size }))
  const told =
    kind === undefined
      ? undefined
      : fitted(
          kind,
          [12.5, 10, 8].map(size => ({ ...type.coverRig, size })),
          50,
          ruler,
        )
  const room = live.width - (told ? ruler(told.words, told.type) + 5 : 0)
  const vessel = fitted(name, sizes, room, ruler)
  const y = 25
  return [
    level(0, live.width, 16.8, rule.cover),
    tagged('P', [
      lettered(ruler, { x: 0, y }, `${vessel.words} `, vessel.type, black),
      ...(told
        ? [lettered(ruler, { x: live.width, y }, told.words, told.type, black, { anchor: 'end' })]
        : []),
    ]),
    level(0, live.width, 29.5, rule.furniture),
  ]
}

// A long name is set smaller, then in two lines; the smallest size that is still a cover's is cut at the last.
function stationName(book: Book): { readonly marks: readonly Mark[]; readonly findings: readonly Finding[] } {
  const { ruler } = book.setting
  const { label, span, name } = book.station
  const at = (size: number) => ({ ...type.station, size })
  const oneLine = [54, 40].find(size => ruler(label, at(size)) <= live.width)
  const twoLines = [32, 24, 18].find(size =>
    narrowest(label, 2, at(size), ruler).every(line => ruler(line, at(size)) <= live.width),
  )
  const size = oneLine ?? twoLines ?? 18
  const lines = oneLine === undefined ? narrowest(label, 2, at(size), ruler) : [label]
  const set = lines.map(line => fitted(line, [at(size)], live.width, ruler))
  const first = oneLine === undefined ? 43 : 50.8
  const led = points(size * 1.06)
  const name_ = set.map((line, index) =>
    lettered(ruler, { x: 0, y: first + index * led }, `${line.words} `, line.type, black),
  )
  const under = first + (set.length - 1) * led + 10.2
  const kind = lettered(ruler, { x: 0, y: under }, 'Station handbook', type.coverKind, black)
  return {
    marks: [tagged('H1', [...name_, kind], { actual: `${label}. Station handbook` })],
    findings: set.some(line => line.isCut)
      ? [
          {
            rule: 'sheet/name-cut',
            severity: 'warning',
            at: span,
            message: `The name of the station ${name} is too long for the cover of its handbook, and is cut there.`,
            remedy: 'Call it by a shorter name: called "...".',
            related: [],
          },
        ]
      : [],
  }
}

function drawing(book: Book): Found<readonly Mark[]> {
  const { rig, station, lines, setting } = book
  const room = { width: live.width, waterline, height: 74 }
  const own = lines.sails.map(sail => sail.label)
  const outline = shipOutline(rig, new Set(lines.sails.map(sail => sail.name)), room)
  const told = own.length === 0 ? 'No sail of hers is this station’s own.' : 'Your sails in black.'
  if (outline) {
    const alt = `${rig.vessel.name} in outline, bow to the right. Solid: ${own.length === 0 ? 'none' : own.join(', ')}.`
    const caption = paragraph([words(told, type.chartSubtitle)], waterline + 5.3, setting.ruler)
    const water = artifact([level(0, live.width, waterline, rule.frame)])
    return { value: [figure(alt, outline), water, ...caption.marks], findings: [] }
  }
  const list = own.length === 0 ? told : `Your sails: ${own.join(', ')}.`
  return {
    value: paragraph([words(list, type.chartSubtitle)], 112, setting.ruler, { led: 5 }).marks,
    findings: [
      {
        rule: 'sheet/no-outline',
        severity: 'note',
        at: rig.vessel.span,
        message: `The cover of the ${station.name}'s handbook shows no ship: the text gives neither her length nor her sails' corners.`,
        related: [],
      },
    ],
  }
}

function imprint(book: Book): readonly Mark[] {
  const { ruler } = book.setting
  const { mark, date, digest } = editionParts(book)
  const unsound = unsoundWords(book)
  const y = 182
  const first = mark ?? 'No revision given'
  const rest = [date, digest && `digest ${digest}`].filter(part => part !== undefined).join(' · ')
  const lead = fitted(`${first} `, [type.coverStrong], 40, ruler)
  const x = ruler(lead.words, type.coverStrong) + 3
  const pages = book.pageCount === undefined ? '' : `${book.pageCount} pages`
  const advice =
    unsound === undefined
      ? ' Compare the digest with the copy posted on board before you trust a pin.'
      : ' Do not work from it: her rig has errors, and what could not be made sense of is left out.'
  return [
    level(0, live.width, 175.8, rule.box),
    tagged('P', [
      lettered(ruler, { x: 0, y }, lead.words, lead.type, black),
      lettered(ruler, { x, y }, `${fitted(rest, [type.cover], 66, ruler).words} `, type.cover, black),
      ...(unsound === undefined ? [] : unsoundBlock(unsound, ruler(rest, type.cover) + x + 3, y, book)),
      ...(pages === ''
        ? []
        : [lettered(ruler, { x: live.width, y }, pages, type.cover, black, { anchor: 'end' })]),
    ]),
    ...paragraph(
      [words('Uncontrolled when printed.', type.noteStrong), words(advice, type.note)],
      187.4,
      ruler,
      { led: 4.1 },
    ).marks,
    ...toFill(book),
    level(0, live.width, 202, rule.cover),
  ]
}

function unsoundBlock(told: string, x: number, y: number, { setting: { ruler } }: Book): readonly Mark[] {
  const width = ruler(told, type.noteStrong) + 3
  return [
    artifact([box(x, y - 3.6, width, 4.9)]),
    lettered(ruler, { x: x + 1.5, y }, told, type.noteStrong, white),
  ]
}

function toFill({ setting: { ruler } }: Book): readonly Mark[] {
  const y = 197.4
  return [
    tagged('P', [
      lettered(ruler, { x: 0, y }, 'name ', type.note, black),
      artifact([level(8.6, 74, y + 0.7, rule.frame)]),
      lettered(ruler, { x: 78, y }, 'watch ', type.note, black),
      artifact([level(87.4, live.width, y + 0.7, rule.frame)]),
    ]),
  ]
}
