import type { Sail } from '../../rig/index.ts'
import type { LabelForm } from '../label-place.ts'
import type { Stretch } from '../plane.ts'
import { millimetresPerPoint, type Ruler, type Typeface } from '../typeface.ts'
import { narrowSplits } from './name-splits.ts'
import type { SailShape } from './sail-shape.ts'

/** A stretch of a label's line, with the gap before it. */
export interface NamePiece {
  readonly words: string
  readonly type: Typeface
  readonly width: number
  readonly gap: number
}

/** A line of a label: what stands on it, and how far its baseline lies under the label's upper edge. */
export interface NameLine {
  readonly pieces: readonly NamePiece[]
  readonly width: number
  readonly baseline: number
}

/** A way of setting a sail's name and area. */
export interface NameForm extends LabelForm {
  readonly lines: readonly NameLine[]
}

const sizes = [9, 8.5, 8] as const
export const padding = 0.9
const perPoint = 3
const perLine = 1.2

/** Small capitals stand half as high as the type; a raised 2 stands higher than the italic figures. */
const rise = { name: 0.5, area: 0.78 } as const
const descent = 0.55
const leading = 1.11

const nameType = (size: number): Typeface => ({ face: 'Spectral SC Medium', size, tracking: 0.055 })
const areaType = (size: number): Typeface => ({ face: 'Spectral Italic', size: Math.max(8, size - 0.5) })

/** The name as it is lettered, in small capitals throughout; a "?" where the sail is conjectural. */
export const nameWords = ({ label, conjectural }: Sail): string =>
  `${label.toLowerCase()}${conjectural ? ' ?' : ''}`

/** Every way of setting a sail's name: in one to three lines, level or along the luff, at three sizes. */
export function nameForms(drawn: SailShape, area: string, ruler: Ruler): readonly NameForm[] {
  const luff = luffOf(drawn)
  const splits = narrowSplits(nameWords(drawn.sail), 3)
  return sizes.flatMap(size =>
    splits.flatMap(lines =>
      [true, false].flatMap((isInline): readonly NameForm[] => {
        const set = setName(lines, area, size, isInline, ruler)
        const cost = perPoint * (9 - size) + perLine * (lines.length - 1)
        if (!luff) return [{ ...set, angle: 0, cost: cost + (isInline ? 0.6 : 0) }]
        const { angle, line } = luff
        const lined = cost + (isInline ? 0 : perLine)
        return [
          { ...set, angle, cost: lined, along: { line, gap: luffGap } },
          { ...set, angle, cost: cost + luffOff },
          { ...set, angle: 0, cost: cost + levelOff },
        ]
      }),
    ),
  )
}

/** Forms for a label that stands in the sky on a leader: level, name over area. */
export function skyForms(sail: Sail, area: string, ruler: Ruler): readonly NameForm[] {
  return narrowSplits(nameWords(sail), 2).map(lines => ({
    ...setName(lines, area, 8.5, false, ruler),
    angle: 0,
    cost: perLine * (lines.length - 1),
  }))
}

const luffGap = 1.1 - padding / 2
const luffOff = 4
const levelOff = 5

interface SetName {
  readonly width: number
  readonly height: number
  readonly lines: readonly NameLine[]
}

function setName(
  words: readonly string[],
  area: string,
  size: number,
  isInline: boolean,
  ruler: Ruler,
): SetName {
  const piece = (text: string, type: Typeface, gap = 0): NamePiece => ({
    words: text,
    type,
    width: ruler(text, type),
    gap,
  })
  const areaPiece = piece(area, areaType(size), isInline ? 1.5 : 0)
  const rows = words.map(line => [piece(line, nameType(size))])
  const all = isInline
    ? rows.map((row, i) => (i === rows.length - 1 ? [...row, areaPiece] : row))
    : [...rows, [areaPiece]]
  const step = leading * size * millimetresPerPoint
  const firstRise = (isInline && words.length === 1 ? rise.area : rise.name) * size * millimetresPerPoint
  const lines = all.map((pieces, i) => ({
    pieces,
    width: pieces.reduce((total, { width, gap }) => total + width + gap, 0),
    baseline: padding / 2 + firstRise + i * step,
  }))
  const last = lines[lines.length - 1]
  return {
    lines,
    width: lines.reduce((most, line) => Math.max(most, line.width), 0) + 2 * padding,
    height: (last?.baseline ?? 0) + descent + padding / 2,
  }
}

/** The luff of a triangle, read from left to right; undefined for other sails, whose names stand level. */
function luffOf({ sail, edges, corners }: SailShape): { angle: number; line: Stretch } | undefined {
  const luff = edges.find(({ name }) => name === 'luff')
  if (sail.kind !== 'fore-and-aft' || corners.length !== 3 || !luff) return undefined
  const [a, , , b] = luff.curve
  const [from, to] = a.x < b.x || (a.x === b.x && a.y < b.y) ? [a, b] : [b, a]
  return { angle: Math.atan2(to.y - from.y, to.x - from.x), line: [from, to] }
}
