import type { Place } from '../../rig/index.ts'
import { functionMark } from '../function-mark.ts'
import { lettered } from '../lettered.ts'
import type { Mark, PathStep } from '../sheet.ts'
import { artifact } from '../tagged.ts'
import type { Book } from './book.ts'
import { level, upright } from './page-parts.ts'
import { type PinName, pinName, turnedName } from './pin-name.ts'
import { type RailPart, railPoint } from './rail-tiers.ts'
import { sideMark, sideMarkWidth } from './side-mark.ts'
import { black, rule, type, white } from './type.ts'

/** Where a rail is drawn: its left end, the middle of its pins, how far they are apart, how long names may be. */
export interface RailSpot {
  readonly x: number
  readonly y: number
  readonly pitch: number
  readonly nameRoom: number
}

/** Heights about the middle of the pins, in millimetres: what stands above is less, what stands below is more. */
export const railHeights = { half: 2.95, mark: -5.8, name: -8, number: 6.7, bar: 8.9, code: 13 } as const

export interface DrawnRail {
  readonly marks: readonly Mark[]
  /** The names that did not fit as they are, with their places. */
  readonly forced: readonly { readonly place: Place; readonly fit: PinName['fit'] }[]
}

/** A rail with the mark, name and number of every pin: the key. */
export function keyRail(part: RailPart, spot: RailSpot, book: Book): DrawnRail {
  const room = { length: spot.nameRoom, pitch: spot.pitch }
  const names = part.places.map(place => ({ place, ...pinName(place, room, book) }))
  const xs = pinPlaces(part, spot)
  const marks = names.flatMap((name, index) => {
    const x = xs[index] ?? spot.x
    const foot = { x, y: spot.y + (name.place.lines.length > 0 ? railHeights.name : railHeights.name + 2.4) }
    return [
      ...deedMark(name.place, x, spot, book),
      ...turnedName(name, foot, book.setting.ruler),
      ...keyPin(name.place, x, spot, book),
    ]
  })
  return {
    marks: [
      ...outline(part, spot),
      ...marks,
      ...numbers(part, spot, book),
      ...bars(part, spot, book),
      ...labels(part, spot, book),
    ],
    forced: names.filter(({ fit }) => fit !== 'as it is'),
  }
}

/** The same rail, the same places, and lines to write on: nothing tells a used pin from a free one. */
export function blankRail(part: RailPart, spot: RailSpot, book: Book): readonly Mark[] {
  const pins = pinPlaces(part, spot).flatMap((x): readonly Mark[] => [
    upright(
      x + spot.pitch * 0.24,
      spot.y - railHeights.half - 1.3 - spot.nameRoom,
      spot.y - railHeights.half - 1.3,
      rule.tableRow,
    ),
    {
      kind: 'circle',
      at: { x, y: spot.y },
      radius: pinRadius(spot.pitch),
      pen: { ink: black, width: rule.box },
      fill: { ink: white },
    },
  ])
  return [...outline(part, spot), ...pins, ...numbers(part, spot, book), ...labels(part, spot, book)]
}

/** The middle of every pin, left to right: one for key and blank, so that they agree to the hundredth. */
export function pinPlaces(part: RailPart, { x, pitch }: RailSpot): readonly number[] {
  const from = x + (part.view.bow === 'left' ? railPoint : 0)
  return part.places.map((_, index) => from + (index + 0.5) * pitch)
}

const pinRadius = (pitch: number): number => Math.min(2.05, pitch * 0.41)

function deedMark(place: Place, x: number, spot: RailSpot, { rig }: Book): readonly Mark[] {
  const deeds = place.lines.flatMap(address => rig.lineAt.get(address)?.function ?? [])
  const [deed] = deeds
  if (deed === undefined) return []
  return [
    artifact(
      functionMark(deed, { x, y: spot.y + railHeights.mark }, Math.min(1.32, spot.pitch * 0.3), black),
    ),
  ]
}

// Solid is yours, open another station's, a dot free.
function keyPin(place: Place, x: number, { y, pitch }: RailSpot, { rig, station }: Book): readonly Mark[] {
  const at = { x, y }
  if (place.lines.length === 0) return [{ kind: 'circle', at, radius: 0.45, fill: { ink: black } }]
  const isOwn = place.lines.some(address => rig.lineAt.get(address)?.station === station.name)
  const radius = pinRadius(pitch)
  if (isOwn) return [{ kind: 'circle', at, radius: radius + rule.box / 2, fill: { ink: black } }]
  return [{ kind: 'circle', at, radius, pen: { ink: black, width: rule.box }, fill: { ink: white } }]
}

function numbers(part: RailPart, spot: RailSpot, { setting }: Book): readonly Mark[] {
  if (part.rail.places.length === 1) return []
  const face = spot.pitch >= 4.2 ? type.chartNumber : { ...type.chartNumber, size: 8 }
  return pinPlaces(part, spot).map((x, index) =>
    lettered(
      setting.ruler,
      { x, y: spot.y + railHeights.number },
      part.places[index]?.pin ?? '',
      face,
      black,
      { anchor: 'middle' },
    ),
  )
}

// A bar under the numbers groups the pins of one sail, where two or more stand together.
function bars(part: RailPart, spot: RailSpot, { rig, station }: Book): readonly Mark[] {
  const hosts = part.places.map(place => {
    const lines = place.lines.flatMap(address => rig.lineAt.get(address) ?? [])
    const own = lines.find(line => line.station === station.name && line.host?.kind === 'sail')
    return own?.host?.name
  })
  const xs = pinPlaces(part, spot)
  return hosts.flatMap((host, index) => {
    if (host === undefined || hosts[index - 1] === host || hosts[index + 1] !== host) return []
    const after = hosts.findIndex((other, later) => later > index && other !== host)
    const last = after < 0 ? hosts.length - 1 : after - 1
    const reach = spot.pitch * 0.39
    return [level((xs[index] ?? 0) - reach, (xs[last] ?? 0) + reach, spot.y + railHeights.bar, rule.table)]
  })
}

function outline(part: RailPart, { x, y, pitch }: RailSpot): readonly Mark[] {
  const { half } = railHeights
  const right = x + part.places.length * pitch + (part.view.bow === undefined ? 0 : railPoint)
  const steps: PathStep[] = [
    ...leftEnd(part, x, y).map(([px, py], index): PathStep => [index === 0 ? 'M' : 'L', px, py]),
    ...rightEnd(part, right, y).map(([px, py]): PathStep => ['L', px, py]),
  ]
  const closes: PathStep[] =
    part.goesOnLeft || part.goesOnRight ? [['L', ...(leftEnd(part, x, y)[0] ?? [x, y - half])]] : [['Z']]
  return [
    {
      kind: 'path',
      steps: [...steps, ...closes],
      fill: { ink: white },
      pen: { ink: black, width: rule.box, join: 'miter' },
    },
  ]
}

type Corner = readonly [number, number]

// From below to above. Toward the bow an end is pointed; where the rail goes on it is broken; else it is square.
function leftEnd(part: RailPart, x: number, y: number): readonly Corner[] {
  const { half } = railHeights
  if (part.goesOnLeft)
    return [
      [x, y + half],
      [x + 0.9, y + half / 3],
      [x - 0.5, y - half / 3],
      [x, y - half],
    ]
  if (part.view.bow === 'left')
    return [
      [x + railPoint, y + half],
      [x, y],
      [x + railPoint, y - half],
    ]
  return [
    [x, y + half],
    [x, y - half],
  ]
}

// From above to below.
function rightEnd(part: RailPart, x: number, y: number): readonly Corner[] {
  const { half } = railHeights
  if (part.goesOnRight)
    return [
      [x, y - half],
      [x - 0.5, y - half / 3],
      [x + 0.9, y + half / 3],
      [x, y + half],
    ]
  if (part.view.bow === 'right')
    return [
      [x - railPoint, y - half],
      [x, y],
      [x - railPoint, y + half],
    ]
  return [
    [x, y - half],
    [x, y + half],
  ]
}

function labels(part: RailPart, spot: RailSpot, { setting: { ruler } }: Book): readonly Mark[] {
  const width = part.places.length * spot.pitch + (part.view.bow === undefined ? 0 : railPoint)
  const y = spot.y + railHeights.code
  const code = ruler(part.rail.code, type.chartLine)
  const ends = endLabels(part, spot.x, spot.x + width, y, ruler)
  const middle = { x: spot.x + width / 2, y }
  const label = lettered(ruler, middle, part.rail.code, type.chartLine, black, { anchor: 'middle' })
  return width >= code + 22 ? [label, ...ends] : [label]
}

function endLabels(
  part: RailPart,
  left: number,
  right: number,
  y: number,
  ruler: Parameters<typeof lettered>[0],
): readonly Mark[] {
  const { view } = part
  const mark = (words: string, x: number, anchor: 'start' | 'end') =>
    lettered(ruler, { x, y }, words, type.chartOthers, black, { anchor })
  if (view.bow !== undefined)
    return [view.bow === 'left' ? mark('bow', left, 'start') : mark('bow', right, 'end')]
  if (view.leftEnd === '') return []
  return [
    ...sideMark('P', { x: left, y }, 9, ruler),
    ...sideMark('S', { x: right - sideMarkWidth('S', 9), y }, 9, ruler),
  ]
}
