import { type Unit, type UnitDimension, unitOf, unitSpellings } from './units.ts'

/** What is odd about a number as written, although it could be read. */
export type FigureFault = 'too-large' | 'exponent' | 'doubtful-comma' | 'negative'

/** A number as read from a text: a measure if a unit follows it, a bare number otherwise. */
export interface FigureRead {
  /** As written, blanks between its parts included. */
  readonly written: string
  /** In SI when there is a unit; never infinite, never minus zero. */
  readonly value: number
  /** Undefined for a bare number. */
  readonly dimension: UnitDimension | undefined
  /** The unit's symbol, the last one of 'feet and inches'; undefined for a bare number. */
  readonly unit: string | undefined
  readonly fault: FigureFault | undefined
}

/**
 * Reads one number at an offset, with its unit or units: '12.40 m', '320mm', '2 1/2 in', '½ in', '41 ft 6 in',
 * '41′ 6″', '9,40 m', '35 %'. Undefined where no number begins.
 */
export function figureAt(text: string, offset: number): FigureRead | undefined {
  plainFigure.lastIndex = offset
  const [written, digits = '', symbol] = plainFigure.exec(text) ?? []
  return written === undefined ? anyFigureAt(text, offset) : oneFigure(written, digits, symbol)
}

function anyFigureAt(text: string, offset: number): FigureRead | undefined {
  made.figure ??= anyFigure()
  made.figure.lastIndex = offset
  const match = made.figure.exec(text)
  if (match === null) return undefined
  const [written, feet, feetUnit, inches, inchesUnit, digits = '', spelling] = match
  if (feet !== undefined && inches !== undefined) {
    const whole = numberIn(feet)
    const rest = numberIn(inches)
    const fault = whole.fault ?? rest.fault
    const value = inSi(whole.value, unitOf(feetUnit ?? '')) + inSi(rest.value, unitOf(inchesUnit ?? ''))
    return figureOf(written, unitOf('in'), { value, fault })
  }
  return oneFigure(written, digits, spelling)
}

function oneFigure(written: string, digits: string, spelling: string | undefined): FigureRead {
  const { value, fault } = numberIn(digits)
  const unit = spelling === undefined ? undefined : unitOf(spelling)
  return figureOf(written, unit, { value: inSi(value, unit), fault })
}

function figureOf(written: string, unit: Unit | undefined, plain: PlainNumber): FigureRead {
  const { value, fault } = sound(plain, unit === undefined ? largestCount : largest[unit.dimension])
  return { written, value, dimension: unit?.dimension, unit: unit?.symbol, fault }
}

/** Larger than anything afloat, so that no sum or square of it can become infinite. */
const largest: Record<UnitDimension, number> = {
  length: 100_000,
  mass: 1_000_000_000,
  angle: 2 * Math.PI,
  share: 10,
  force: 1_000_000_000,
}
const largestCount = 1_000_000

interface PlainNumber {
  readonly value: number
  readonly fault: FigureFault | undefined
}

/** A unit that is a whole fraction of the SI unit is divided by, so that 320 mm is 0.32 and not 0.32000000000000006. */
function inSi(amount: number, unit: Unit | undefined): number {
  if (unit === undefined) return amount
  const parts = Math.round(1 / unit.si)
  return parts > 1 && 1 / parts === unit.si ? amount / parts : amount * unit.si
}

/** The number itself, or zero with the reason why it can't be used. Minus zero becomes zero. */
function sound(plain: PlainNumber, most: number): PlainNumber {
  if (!(Math.abs(plain.value) <= most)) return { value: 0, fault: 'too-large' }
  return { value: plain.value === 0 ? 0 : plain.value, fault: plain.fault }
}

const vulgar: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

/** The value of digits such as '41', '9,40', '2 1/2', '6½', '−0.5', '1e3'. */
function numberIn(written: string): PlainNumber {
  if (/^[0-9.]+$/.test(written)) return { value: Number(written), fault: undefined }
  const negative = /^[-−–]/.test(written)
  const unsigned = negative ? written.slice(1) : written
  const parts = /^([0-9.,]*(?:[eE][-+]?[0-9]+)?)\s*(?:([0-9]+)[/⁄]([0-9]+)|([½¼¾⅓⅔⅛⅜⅝⅞]))?$/.exec(unsigned)
  const [, whole = '', over, under, sign] = parts ?? []
  const fraction = sign === undefined ? Number(over ?? 0) / Number(under ?? 1) : (vulgar[sign] ?? 0)
  const value = Number(whole.replace(',', '.') || 0) + fraction
  return { value: negative ? -value : value, fault: faultOf(whole, negative) }
}

function faultOf(whole: string, negative: boolean): FigureFault | undefined {
  if (negative) return 'negative'
  if (/[eE]/.test(whole)) return 'exponent'
  // '1,250' may be a decimal comma or a comma between thousands; '9,40' can only be the former.
  if (/^[1-9][0-9]{0,2},[0-9]{3}$/.test(whole)) return 'doubtful-comma'
  return undefined
}

const blank = '[ \\t\\u00a0\\u2000-\\u200a\\u202f]'
const number = `[-−–]?(?:[0-9]+[/⁄][0-9]+|[½¼¾⅓⅔⅛⅜⅝⅞]|[0-9]+(?:[.,][0-9]+)?(?:[eE][-+]?[0-9]+)?(?:${blank}+[0-9]+[/⁄][0-9]+|${blank}?[½¼¾⅓⅔⅛⅜⅝⅞])?)`
const wordEnds = "(?![\\p{L}\\p{M}\\p{N}'’])"
/** '14 in all' and '5 in a watch' count; they are no inches. */
const notCounted = `(?!${blank}+(?:all|an?|the|each|every)(?![\\p{L}\\p{N}-]))`

/** Any of these units as a pattern: words must end where they end, and quotation marks must touch their number to mean feet or inches. */
function anyOf(spellings: readonly string[]): string {
  const words = spellings.filter(isWord).map(spelling => {
    const word = spelling.replace(' ', `${blank}+`)
    return spelling === 'in' ? `${word}${notCounted}` : word
  })
  const marks = spellings
    .filter(spelling => !isWord(spelling))
    .map(mark => (/^['"’”]$/.test(mark) ? mark : `${blank}?${mark}`))
  // How a word ends is said once for all: it is long, and compiling it for each took a third of reading a rig.
  return [`${blank}*(?:${words.join('|')})${wordEnds}`, ...marks].join('|')
}
const isWord = (spelling: string) => /^\p{L}/u.test(spelling)

/** Every way of writing one unit, as a pattern. */
const spelledAs = (symbol: string) =>
  anyOf(unitSpellings.filter(spelling => unitOf(spelling)?.symbol === symbol))
const anyFigure = () =>
  new RegExp(
    `(${number})(${spelledAs('ft')})${blank}*(${number})(${spelledAs('in')})` +
      `|(${number})(${anyOf(unitSpellings)})?`,
    'uy',
  )

// The pattern of every figure takes V8 long to compile. Nearly all figures are plain, and it is made for the first other.
const made: { figure?: RegExp } = {}
const firstWords = unitSpellings.flatMap(spelling => /^[A-Za-z]+/.exec(spelling) ?? [])
const unitWord = `(?:${[...new Set(firstWords)].join('|')})(?![A-Za-z])`
/** Digits with a common unit behind blanks, or with something behind them that is neither a unit nor a fraction. */
const plainFigure = new RegExp(
  '([0-9]+(?:\\.[0-9]+)?)(?: *(mm|m|kg|t|deg|%)(?=[ ,\\r\\n])|' +
    `(?=,[^0-9]|[\\r\\n]| +in (?:all|a)[ ,\\r\\n]| +(?!${unitWord})[A-Za-z]))`,
  'y',
)
