import type { Place } from '../../rig/index.ts'
import { lettered } from '../lettered.ts'
import { railView } from '../rail-view.ts'
import type { Mark } from '../sheet.ts'
import { figure } from '../tagged.ts'
import type { Book } from './book.ts'
import { stripLegend } from './chart-notes.ts'
import type { GlancePart, GlanceSection } from './glance-page.ts'
import { live } from './page.ts'
import { upright } from './page-parts.ts'
import { black, rule, type, white } from './type.ts'

interface Strip {
  readonly code: string
  readonly alt: string
  readonly places: readonly Place[]
  readonly bow: 'left' | 'right' | undefined
}

const rowHeight = 8.6
const half = 1.15
const point = 2.4
const longestRow = 42

/** The rails of a station as they are faced, pin by pin, without names. */
export function glanceRails(book: Book): GlanceSection | undefined {
  const strips = book.station.rails.flatMap(code => stripsOf(code, book))
  if (strips.length === 0) return undefined
  const { ruler } = book.setting
  const indent = Math.max(9, ...strips.map(strip => ruler(strip.code, type.noteStrong))) + 2.4
  const longest = Math.max(...strips.map(strip => strip.places.length))
  const pitch = Math.min(4.55, (live.width - indent - point) / longest)
  const rows: { strip: Strip; x: number }[][] = []
  let x: number = live.width
  for (const strip of strips) {
    const width = indent + strip.places.length * pitch + point + 5
    if (x + width - 5 > live.width) {
      rows.push([])
      x = 0
    }
    rows.at(-1)?.push({ strip, x })
    x += width
  }
  const parts = rows.map(
    (row): GlancePart => ({
      height: rowHeight,
      draw: top => row.map(({ strip, x: left }) => drawStrip(strip, left, indent, top + 4.6, pitch, book)),
    }),
  )
  const legend: GlancePart = { height: 4.8, draw: top => stripLegend(top + 4.2, ruler) }
  return { heading: 'Your rails, as you face them', parts: [...parts, legend] }
}

function stripsOf(code: string, { rig }: Book): readonly Strip[] {
  const rail = rig.railAt.get(code)
  if (!rail) return []
  const view = railView(rail, rig)
  const used = rail.places.filter(place => place.lines.length > 0).length
  const bow = view.bow ? `, bow to the ${view.bow}` : ''
  const whole = {
    code,
    alt: `${rail.label} ${code}, as faced${bow}: ${rail.places.length} places, ${used} used.`,
    bow: view.bow,
  }
  const count = Math.ceil(rail.places.length / longestRow)
  const each = Math.ceil(rail.places.length / count)
  return Array.from({ length: count }, (_, index) => ({
    ...whole,
    places: view.leftToRight.slice(index * each, (index + 1) * each),
  }))
}

function drawStrip(strip: Strip, left: number, indent: number, y: number, pitch: number, book: Book): Mark {
  const { ruler } = book.setting
  const from = left + indent + (strip.bow === 'left' ? point : 0)
  const width = strip.places.length * pitch
  const at = (index: number) => from + (index + 0.5) * pitch
  return figure(strip.alt, [
    lettered(ruler, { x: left, y: y + 1.1 }, strip.code, type.noteStrong, black),
    outline(from, from + width, y, strip.bow),
    ...strip.places.flatMap((place, index) => pin(place, at(index), y, Math.min(1.45, pitch * 0.36), book)),
    ...numbersOf(strip.places, at, y + 5, pitch, book),
  ])
}

function outline(left: number, right: number, y: number, bow: Strip['bow']): Mark {
  const tip = (x: number) => ({ x, y })
  const corners = [
    ...(bow === 'left' ? [tip(left - point)] : []),
    { x: left, y: y - half },
    { x: right, y: y - half },
    ...(bow === 'right' ? [tip(right + point)] : []),
    { x: right, y: y + half },
    { x: left, y: y + half },
  ]
  return {
    kind: 'line',
    points: corners,
    closed: true,
    fill: { ink: white },
    pen: { ink: black, width: rule.frame },
  }
}

function pin(place: Place, x: number, y: number, radius: number, { rig, station }: Book): readonly Mark[] {
  if (place.lines.length === 0) return [upright(x, y - half, y + half, rule.frame)]
  const isOwn = place.lines.some(address => rig.lineAt.get(address)?.station === station.name)
  const pen = { ink: black, width: rule.frame }
  return [{ kind: 'circle', at: { x, y }, radius, fill: { ink: isOwn ? black : white }, pen }]
}

// The ends, and every fifth between that has room.
function numbersOf(
  places: readonly Place[],
  at: (index: number) => number,
  y: number,
  pitch: number,
  { setting: { ruler } }: Book,
): readonly Mark[] {
  if (places.length < 2) return []
  const last = places.length - 1
  const room = (index: number) => Math.min(index, last - index) * pitch
  const shown = places.flatMap((place, index) => {
    const isEnd = index === 0 || index === last
    return isEnd || (place.number % 5 === 0 && room(index) > 6) ? [{ pin: place.pin, x: at(index) }] : []
  })
  return shown.map(({ pin, x }) => lettered(ruler, { x, y }, pin, type.legend, black, { anchor: 'middle' }))
}
