import { type Figure, type Kilograms, kilograms, workedFrom } from '../../measure/index.ts'
import type { Sail } from '../../rig/index.ts'
import type { SailFigures } from './area.ts'
import { canvasWeight } from './canvas.ts'

/** What a sail weighs dry: its area in canvas of its number, as said or as taken. */
export const clothMass = (sail: Sail, { area }: SailFigures, canvas: string): Figure<Kilograms> =>
  workedFrom([area, canvasWeight(listOf(sail, canvas), canvasNumber(sail))], (area, weight) =>
    kilograms(area * weight),
  )

/** The list that its canvas is numbered by: its own, or the one assumed. */
export const listOf = ({ cloth }: Pick<Sail, 'cloth'>, assumed: string): string => cloth.list ?? assumed

/**
 * The number of canvas a sail is made of, as the text says; where it is silent: 1 to 3 for courses, topsails and storm sails, lighter for jibs,
 * staysails, topgallants and royals (New International Encyclopaedia, "Canvas"; W. H. Smyth, The Sailor's Word-Book,
 * 1867). Which of them is ours: common practice, no source.
 */
export function canvasNumber(sail: Sail): number {
  if (sail.cloth.number !== undefined) return sail.cloth.number
  if (/\bstorm\b/.test(sail.name) || sail.class === 'lower topsail') return 1
  if (workingSails.has(sail.class)) return 2
  return middling.has(sail.class) ? 4 : 6
}

/** Sails of the lower and middle canvas, set in a strong wind. */
export const workingSails: ReadonlySet<Sail['class']> = new Set<Sail['class']>([
  'course',
  'topsail',
  'upper topsail',
  'square sail',
  'gaff sail',
  'lugsail',
  'lateen sail',
  'fore-and-aft sail',
])
const middling = new Set<Sail['class']>([
  'topgallant',
  'lower topgallant',
  'upper topgallant',
  'headsail',
  'staysail',
])
