import type { Line, Place } from '../../rig/index.ts'
import { fitted } from '../flow.ts'
import { lettered } from '../lettered.ts'
import { atPin } from '../name-on-rail.ts'
import { narrowest } from '../narrow.ts'
import type { Mark, Point } from '../sheet.ts'
import { capHeight, millimetresPerPoint, type Ruler, type Typeface } from '../typeface.ts'
import type { Book } from './book.ts'
import { nameInBook } from './station-lines.ts'
import { black, type } from './type.ts'

/** A stretch of a pin's name in one type. */
interface Part {
  readonly words: string
  readonly type: Typeface
}

type Name = readonly Part[]

/** The name over a pin, in one line or two, as it fits. */
export interface PinName {
  readonly lines: readonly Name[]
  readonly fit: 'as it is' | 'shortened' | 'set smaller' | 'cut'
}

/** The room for a name that is turned upright: how long a line may be, and how far apart the pins are. */
export interface NameRoom {
  readonly length: number
  readonly pitch: number
}

/** Halyards and other lines that want so many hands say so on the chart. */
const manyHands = 10

/** The name of what is belayed at a place, in the first form that fits; cut only where none does. */
export function pinName(place: Place, room: NameRoom, book: Book): PinName {
  const lines = place.lines.flatMap(address => book.rig.lineAt.get(address) ?? [])
  if (lines.length === 0) return { lines: [[{ words: 'free', type: type.chartOthers }]], fit: 'as it is' }
  const size = room.pitch >= 4.2 ? 10 : 9
  const { ruler } = book.setting
  const forms = lines.map(line => ({ full: fullName(line, book), short: shortName(line, book) }))
  const full = forms.map(form => form.full)
  const short = forms.map(form => form.short)
  const bare = lines.map(line => fullName({ ...line, aside: undefined }, book))
  const tries: readonly [PinName['fit'], readonly Name[] | undefined][] = [
    ['as it is', stacked(withHands(full, lines), size, room)],
    ['as it is', stacked(full, size, room)],
    ['as it is', stacked(bare, size, room)],
    ['shortened', stacked(short, size, room)],
    ['as it is', inTwo(bare, size, room, ruler)],
    ['set smaller', stacked(bare, 8, room)],
    ['set smaller', stacked(short, 8, room)],
    ['set smaller', inTwo(bare, 8, room, ruler)],
  ]
  const fits = ([, set]: (typeof tries)[number]) =>
    set?.every(line => lineLength(line, ruler) <= room.length) === true
  const found = tries.find(fits)
  if (found?.[1]) return { lines: found[1], fit: found[0] }
  const only = oneType(joined(short), 8)
  const cut = fitted(only.words, [only.type], room.length, ruler)
  return { lines: [[{ words: cut.words, type: cut.type }]], fit: 'cut' }
}

/** A name over its pin, turned to read upward, its foot at this point in the middle of the pin. */
export function turnedName(name: PinName, foot: Point, ruler: Ruler): readonly Mark[] {
  const size = name.lines[0]?.[0]?.type.size ?? 10
  const apart = size * millimetresPerPoint * 1.08
  const cap = capHeight({ face: 'Fira Sans Condensed', size })
  const first = foot.x + cap / 2 - ((name.lines.length - 1) * apart) / 2
  return name.lines.flatMap((line, index) => {
    let y = foot.y
    return line.map(part => {
      const mark = lettered(ruler, { x: first + index * apart, y }, part.words, part.type, black, {
        turn: 90,
      })
      y -= mark.width
      return mark
    })
  })
}

// Another station's line is in italics throughout; an own one has its last words, the line, in bold.
function fullName(line: Line, book: Book): Name {
  const name = atPin(nameInBook(line, book), line)
  if (line.station !== book.station.name) return [{ words: name, type: type.chartOthers }]
  const tail = atPin(line.labelOnSail, line)
  const before = name.slice(0, name.length - tail.length)
  const endsInTail = before.endsWith(' ') && name.slice(before.length).toLowerCase() === tail.toLowerCase()
  if (!endsInTail) return [{ words: name, type: type.chartLine }]
  return [
    { words: before, type: type.chartSail },
    { words: name.slice(before.length), type: type.chartLine },
  ]
}

function shortName(line: Line, book: Book): Name {
  if (line.short === undefined) return fullName(line, book)
  const face = line.station === book.station.name ? type.chartLine : type.chartOthers
  return [{ words: line.short, type: face }]
}

function withHands(names: readonly Name[], lines: readonly Line[]): readonly Name[] {
  const most = Math.max(0, ...lines.map(line => line.hands ?? 0))
  const said: Name = [{ words: `  ${most} hands`, type: type.chartSail }]
  return most < manyHands
    ? names
    : names.map((name, at) => (at === names.length - 1 ? [...name, ...said] : name))
}

// Lines that share a pin stand under each other where the pins are far enough apart, else in one line.
function stacked(names: readonly Name[], size: number, room: NameRoom): readonly Name[] {
  if (names.length === 1 || takes(names.length, size) <= room.pitch)
    return names.map(name => atSize(name, size))
  return [atSize(joined(names), size)]
}

function joined(names: readonly Name[]): Name {
  return names.flatMap((name, index) =>
    index === 0 ? name : [{ words: ' and ', type: type.chartSail }, ...name],
  )
}

function inTwo(
  names: readonly Name[],
  size: number,
  room: NameRoom,
  ruler: Ruler,
): readonly Name[] | undefined {
  if (takes(2, size) > room.pitch) return undefined
  const only = oneType(joined(names), size)
  return narrowest(only.words, 2, only.type, ruler).map(words => [{ words, type: only.type }])
}

const takes = (lines: number, size: number): number => lines * size * millimetresPerPoint * 1.08

const atSize = (name: Name, size: number): Name =>
  name.map(part => ({ ...part, type: { ...part.type, size } }))

// Two lines are broken anywhere, so they are set in one type: that of the name's last word.
function oneType(name: Name, size: number): Part {
  const last = name.at(-1)?.type ?? type.chartSail
  return { words: name.map(part => part.words).join(''), type: { ...last, size } }
}

const lineLength = (line: Name, ruler: Ruler): number =>
  line.reduce((total, part) => total + ruler(part.words, part.type), 0)
