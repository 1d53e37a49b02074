/**
 * The units that a rig file may use and their size in SI. Factors are exact by definition: the international inch
 * (25.4 mm), the foot of 12 inches, the avoirdupois pound (0.45359237 kg) and the long ton of 2,240 pounds, as listed in
 * NIST Special Publication 811 (2008 ed.), Appendix B.8. Forces are shown, never read: the language has no word for them.
 */
export type UnitDimension = 'length' | 'mass' | 'angle' | 'share' | 'force'

export interface Unit {
  /** As it is printed: 'm', 'ft', 'deg'. */
  readonly symbol: string
  readonly dimension: UnitDimension
  /** How many metres, kilograms, radians, newtons (or, of a share, wholes) one of it is. */
  readonly si: number
}

const inch = 0.0254
const pound = 0.45359237

/** Every unit by its symbol. */
export const units = {
  m: { symbol: 'm', dimension: 'length', si: 1 },
  mm: { symbol: 'mm', dimension: 'length', si: 0.001 },
  cm: { symbol: 'cm', dimension: 'length', si: 0.01 },
  ft: { symbol: 'ft', dimension: 'length', si: 12 * inch },
  in: { symbol: 'in', dimension: 'length', si: inch },
  kg: { symbol: 'kg', dimension: 'mass', si: 1 },
  t: { symbol: 't', dimension: 'mass', si: 1000 },
  lb: { symbol: 'lb', dimension: 'mass', si: pound },
  'long tons': { symbol: 'long tons', dimension: 'mass', si: 2240 * pound },
  deg: { symbol: 'deg', dimension: 'angle', si: Math.PI / 180 },
  '%': { symbol: '%', dimension: 'share', si: 0.01 },
  N: { symbol: 'N', dimension: 'force', si: 1 },
  kN: { symbol: 'kN', dimension: 'force', si: 1000 },
  lbf: { symbol: 'lbf', dimension: 'force', si: pound * 9.80665 },
} as const satisfies Record<string, Unit>

export type UnitSymbol = keyof typeof units

/** Other ways in which a unit is written or said, each with its symbol. */
const spellings: ReadonlyMap<string, UnitSymbol> = new Map<string, UnitSymbol>([
  ...(['m', 'mm', 'cm', 'ft', 'in', 'kg', 't', 'lb', 'deg', '%', 'long tons'] as const).map(
    symbol => [symbol, symbol] as const,
  ),
  ['metre', 'm'],
  ['metres', 'm'],
  ['foot', 'ft'],
  ['feet', 'ft'],
  ["'", 'ft'],
  ['′', 'ft'],
  ['’', 'ft'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['"', 'in'],
  ['″', 'in'],
  ['”', 'in'],
  ['tonnes', 't'],
  ['lbs', 'lb'],
  ['long ton', 'long tons'],
  ['degrees', 'deg'],
  ['°', 'deg'],
])

/** The unit that a spelling stands for, if the language knows it. */
export function unitOf(spelling: string): Unit | undefined {
  const said = spelling.trim()
  const symbol = spellings.get(said) ?? spellings.get(said.replace(/\s+/g, ' '))
  return symbol === undefined ? undefined : units[symbol]
}

/** Every spelling that is read as a unit; the longest first, as a reader must try them. */
export const unitSpellings: readonly string[] = [...spellings.keys()].sort(
  (a, b) => b.length - a.length || (a < b ? -1 : 1),
)

/** What to offer where a measure of this dimension is due: 'm, mm, cm, ft or in'. */
export const unitsOffered: Record<UnitDimension, string> = {
  length: 'm, mm, cm, ft or in',
  mass: 'kg, t, lb or long tons',
  angle: 'deg',
  share: '%',
  force: 'kN or lbf',
}
