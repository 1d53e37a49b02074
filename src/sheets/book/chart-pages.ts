import type { Finding, Found } from '../../findings/index.ts'
import type { Place } from '../../rig/index.ts'
import { fitted, words } from '../flow.ts'
import type { Mark } from '../sheet.ts'
import { artifact, figure } from '../tagged.ts'
import type { Book } from './book.ts'
import {
  type ChartSide,
  facingWords,
  largestRoom,
  type PlacedRail,
  type PlacedTier,
  placedTiers,
  tierRule,
} from './chart-layout.ts'
import { chartLegend, likenessNote, scoreLine, scoreTable } from './chart-notes.ts'
import { live, type PageBody } from './page.ts'
import { lineKey, pageKey, railKey } from './page-key.ts'
import { level, pageTitle, paragraph } from './page-parts.ts'
import type { PinName } from './pin-name.ts'
import { blankRail, keyRail } from './rail-drawing.ts'
import { chartOpenings, pageSide, type Tier } from './rail-tiers.ts'
import { sideMark } from './side-mark.ts'
import { rule, type } from './type.ts'

/**
 * The rails of a station as openings of the book: port on the left page with its bow to the right, starboard on
 * the right page with its bow to the left, so that the bow is at the fold. First all keys, then all blanks.
 */
export function chartPages(book: Book): Found<readonly PageBody[]> {
  const openings = chartOpenings(book)
  const sheets = openings.value.flatMap((tiers, index) => chartSheets(tiers, index, openings.value.length))
  const keys = sheets.map(sheet => keyPage(sheet, book))
  const blanks = sheets.map(sheet => blankPage(sheet, book, openings.value.length))
  return {
    value: [...keys.map(found => found.value), ...blanks],
    findings: [...openings.findings, ...keys.flatMap(found => found.findings)],
  }
}

interface ChartSheet {
  readonly side: ChartSide
  readonly title: string
  readonly hasSide: boolean
  readonly tiers: readonly PlacedTier[]
  readonly opening: readonly Tier[]
  readonly key: string
  /** Whether the words about both pages stand on this one. */
  readonly speaks: boolean
}

function chartSheets(opening: readonly Tier[], index: number, of: number): readonly ChartSheet[] {
  const pages = (['port', 'starboard'] as const)
    .map(side => ({ side, tiers: placedTiers(opening, side) }))
    .filter(({ tiers }) => tiers.some(tier => tier.rails.length > 0))
  return pages.map(({ side, tiers }, page) => {
    const sides = new Set(tiers.flatMap(tier => tier.rails.map(rail => pageSide(rail.part.rail))))
    const hasSide = sides.has(side)
    const name = hasSide ? (side === 'port' ? 'Port rails' : 'Starboard rails') : 'Rails amidships'
    const title = of > 1 ? `${name}, ${index + 1} of ${of}` : name
    return {
      side,
      title,
      hasSide,
      tiers,
      opening,
      key: `chart ${side} ${index + 1}`,
      speaks: page === pages.length - 1,
    }
  })
}

function keyPage(sheet: ChartSheet, book: Book): Found<PageBody> {
  const { ruler } = book.setting
  const findings: Finding[] = []
  const tiers = sheet.tiers.map(tier => {
    const rails = tier.rails.map(rail => {
      const drawn = keyRail(rail.part, rail.spot, book)
      findings.push(...drawn.forced.flatMap(({ place, fit }) => forcedFinding(place, fit, book)))
      return figure(keyAlt(rail, sheet.side, book), drawn.marks)
    })
    return [...tierHead(tier, sheet.side, book), ...rails]
  })
  const room = sheet.speaks ? largestRoom(sheet.tiers) : undefined
  const note = room ? likenessNote(sheet.opening, room, book) : []
  const marks = [
    ...chartTitle(sheet.title, sheet, book),
    ...withRules(tiers, sheet),
    ...note,
    ...chartLegend(ruler),
  ]
  const held = sheet.tiers.flatMap(tier => tier.rails.map(rail => rail.part))
  const pairKeys = held
    .flatMap(part => part.places.flatMap(place => place.lines))
    .flatMap(address => book.rig.lineAt.get(address)?.pairKey ?? [])
  return {
    value: {
      key: sheet.key,
      title: sheet.title,
      section: 'Rail chart',
      description: tiersAlt(sheet),
      marks,
      bookmarks: [{ level: 1, title: sheet.title }],
      leaf: sheet.side === 'port' ? 'verso' : 'recto',
      alsoHolds: [...held.map(part => railKey(part.rail.code)), ...pairKeys.map(lineKey)],
    },
    findings,
  }
}

function blankPage(sheet: ChartSheet, book: Book, openings: number): PageBody {
  const { ruler } = book.setting
  const title = `${sheet.title}, to fill`
  const tiers = sheet.tiers.map(tier => [
    ...tierHead(tier, sheet.side, book),
    ...tier.rails.map(rail => figure(blankAlt(rail), blankRail(rail.part, rail.spot, book))),
  ])
  const pins = sheet.opening
    .flatMap(tier => tier.slots.flatMap(slot => [slot.port, slot.starboard]))
    .reduce((total, part) => total + (part?.places.length ?? 0), 0)
  const room = sheet.speaks ? largestRoom(sheet.tiers) : undefined
  const score = !sheet.speaks ? [] : room ? scoreTable(pins, openings, room, ruler) : scoreLine(pins, ruler)
  return {
    key: `${sheet.key} blank`,
    title,
    section: 'Rail chart, to fill',
    description: `${tiersAlt(sheet)} Numbered pins without names, to fill in.`,
    marks: [...chartTitle(title, sheet, book), ...withRules(tiers, sheet), ...score],
    bookmarks: [{ level: 1, title }],
    leaf: sheet.side === 'port' ? 'verso' : 'recto',
  }
}

function chartTitle(
  title: string,
  { side, hasSide }: ChartSheet,
  { setting: { ruler } }: Book,
): readonly Mark[] {
  const baseline = 26.4
  const head = pageTitle(title, ruler, baseline)
  if (!hasSide) return head.marks
  const x = ruler(title, type.title) + 3.4
  const mark = sideMark(side === 'port' ? 'P' : 'S', { x, y: baseline - 0.4 }, 15, ruler)
  return [...head.marks, artifact(mark)]
}

// Two lines at most: the names of the pins stand below them.
function tierHead(tier: PlacedTier, side: ChartSide, { setting: { ruler } }: Book): readonly Mark[] {
  if (tier.rails.length === 0) return []
  const ways = facingWords(tier.rails, side)
  const setIn = (told: string) =>
    paragraph([words(told, type.chartSubtitle)], tier.subtitleAt, ruler, { led: 4.2 })
  const fits = ways.map(setIn).find(block => block.lines <= 2)
  return (fits ?? setIn(fitted(ways[2], [type.chartSubtitle], live.width * 1.8, ruler).words)).marks
}

function withRules(tiers: readonly (readonly Mark[])[], { tiers: placed }: ChartSheet): readonly Mark[] {
  return placed.length < 2 ? tiers.flat() : [...tiers.flat(), level(0, live.width, tierRule, rule.furniture)]
}

const tiersAlt = ({ title, tiers, side }: ChartSheet): string =>
  `${title}. ${tiers.map(tier => facingWords(tier.rails, side)[0]).join(' ')}`

function keyAlt({ part }: PlacedRail, side: ChartSide, book: Book): string {
  const used = part.places.filter(place => place.lines.length > 0).length
  const page = book.pageOf(pageKey.index)
  const sided = pageSide(part.rail) === undefined ? '' : `, ${side}`
  const bow = part.view.bow ? `, bow to the ${part.view.bow}` : ''
  const count = part.places.length === 1 ? 'one place' : `${part.places.length} pins`
  const table = page === undefined ? '' : ` Listed by pin from page ${page}.`
  return `${part.rail.label}${sided}, as faced${bow}; ${count}, ${used} used.${table}`
}

const blankAlt = ({ part }: PlacedRail): string =>
  `${part.rail.label}, ${part.rail.code}, as faced: ${part.places.length} numbered pins without names, to fill in.`

function forcedFinding(place: Place, fit: PinName['fit'], book: Book): readonly Finding[] {
  const [line] = place.lines.flatMap(address => book.rig.lineAt.get(address) ?? [])
  if (!line || fit === 'as it is') return []
  const where = `pin ${place.pin} of ${place.rail} in the ${book.station.name}'s handbook`
  const at = line.belaySpan ?? line.span
  switch (fit) {
    case 'cut':
      return [
        {
          rule: 'sheet/name-cut',
          severity: 'warning',
          at,
          message: `The name of the ${line.words} is too long for ${where}, and is cut there.`,
          remedy: 'Give it a short form: short "...".',
          related: [],
        },
      ]
    case 'set smaller':
      return [
        {
          rule: 'sheet/name-set-smaller',
          severity: 'note',
          at,
          message: `The name of the ${line.words} is set in 8 pt at ${where}: it is too long for the size of the others.`,
          remedy: 'Give it a short form: short "...".',
          related: [],
        },
      ]
    case 'shortened':
      return [
        {
          rule: 'sheet/name-shortened',
          severity: 'note',
          at,
          message: `The ${line.words} stands under its short form at ${where}: its name is too long for the chart.`,
          related: [],
        },
      ]
  }
}
