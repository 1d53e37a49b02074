import type { Line, Rig } from '../../rig/index.ts'
import type { DrawnPiece } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import type { Ruler, Typeface } from '../typeface.ts'
import { type SideMark, sideMark, sideMarkWidth } from './side-mark.ts'
import { black } from './type.ts'

/** Where a line, or both of a pair, are made fast, as the book writes it: rail, sides within, pin. */
export interface PinAddress {
  /** 'FR', or the whole code of a rail that does not mirror: 'FF-A'. */
  readonly rail: string
  /** Empty for a rail that does not mirror. Two where a pair mirrors. */
  readonly sides: readonly SideMark[]
  /** Undefined where the rail has one place only. May name several: '11·12'. */
  readonly pins: string | undefined
  /** 'fore rail', for those who hear it. */
  readonly railName: string
}

/** The addresses of lines that are written together: one for a pair whose pins mirror, else one each. */
export function addressesOf(lines: readonly Line[], rig: Rig): readonly PinAddress[] {
  const each = lines.flatMap(line => addressOf(line, rig) ?? [])
  const [first, second, third] = each
  const mirrors =
    first !== undefined &&
    second !== undefined &&
    third === undefined &&
    first.rail === second.rail &&
    first.pins === second.pins &&
    first.sides.length + second.sides.length === 2 &&
    first.sides[0] !== second.sides[0]
  return mirrors ? [{ ...first, sides: ['P', 'S'] }] : each
}

/** Where one line is made fast, of a line that shifts by its weather or lee side; undefined for an orphan. */
export function addressOf(line: Line, rig: Rig): PinAddress | undefined {
  const { belay, otherBelay, shifts } = line
  const address = belay && placeAddress(belay.rail, belay.number, rig)
  const other = otherBelay && placeAddress(otherBelay.rail, otherBelay.number, rig)
  const mirrors = other && address && other.rail === address.rail && other.pins === address.pins
  return shifts && mirrors ? { ...address, sides: [shifts === 'weather' ? 'W' : 'L'] } : address
}

/** A place of a rail as the book writes it; undefined where there is no such rail. */
export function placeAddress(railCode: string, number: number, rig: Rig): PinAddress | undefined {
  const rail = rig.railAt.get(railCode)
  if (!rail) return undefined
  const side = rail.places[0]?.side
  const sides: readonly SideMark[] =
    !rail.mirrored || side === undefined || side === 'centre' ? [] : side === 'port' ? ['P'] : ['S']
  return {
    rail: sides.length > 0 ? rail.mark : rail.code,
    sides,
    pins: rail.places.length > 1 ? rail.places[number - 1]?.pin : undefined,
    railName: rail.name,
  }
}

/** 'FR-P 21', 'FR-P and FR-S 11', 'FB-lee 5': an address in letters alone. */
export function addressWords({ rail, sides, pins }: PinAddress): string {
  const rails = sides.length === 0 ? rail : sides.map(side => `${rail}-${sideLetters[side]}`).join(' and ')
  return pins === undefined ? rails : `${rails} ${pins}`
}

const sideLetters: Readonly<Record<SideMark, string>> = { P: 'P', S: 'S', W: 'weather', L: 'lee' }

/** 'fore rail, port, pin 21': an address as it is said. */
export function addressInFull({ railName, sides, pins }: PinAddress): string {
  const said = [railName, sides.map(side => sideNames[side]).join(' and ')]
    .filter(part => part !== '')
    .join(', ')
  return pins === undefined ? said : `${said}, pin ${pins}`
}

const sideNames: Readonly<Record<SideMark, string>> = {
  P: 'port',
  S: 'starboard',
  W: 'weather side',
  L: 'lee side',
}

/** An address among words, its sides as marks within it: one Span that reads as letters. */
export function addressPiece(address: PinAddress, type: Typeface, ruler: Ruler): DrawnPiece {
  return {
    kind: 'drawn',
    width: addressWidth(address, type, ruler),
    marks: at => [
      tagged('Span', addressMarks(address, at, type, ruler), {
        actual: addressWords(address),
        expansion: addressInFull(address),
      }),
    ],
  }
}

/** The marks of an address, from the left end of its baseline. */
export function addressMarks(
  { rail, sides, pins }: PinAddress,
  at: Point,
  type: Typeface,
  ruler: Ruler,
): readonly Mark[] {
  const marks: Mark[] = [lettered(ruler, at, rail, type, black)]
  let x = at.x + ruler(rail, type) + (sides.length > 0 ? close(type) : 0)
  for (const side of sides) {
    marks.push(...sideMark(side, { x, y: at.y }, type.size, ruler))
    x += sideMarkWidth(side, type.size) + close(type)
  }
  if (pins === undefined) return marks
  const space = sides.length > 0 ? 0 : apart(type)
  return [...marks, lettered(ruler, { x: x + space, y: at.y }, pins, type, black)]
}

/** How much room an address takes, in millimetres. */
export function addressWidth({ rail, sides, pins }: PinAddress, type: Typeface, ruler: Ruler): number {
  const squares = sides.reduce((total, side) => total + sideMarkWidth(side, type.size) + close(type), 0)
  const before = sides.length > 0 ? close(type) : 0
  const after = pins === undefined ? 0 : ruler(pins, type) + (sides.length > 0 ? 0 : apart(type))
  return ruler(rail, type) + before + squares + after
}

const close = (type: Typeface): number => type.size * 0.024
const apart = (type: Typeface): number => type.size * 0.07
