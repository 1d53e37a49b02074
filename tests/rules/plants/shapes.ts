import { lineOf, type Notebook, sailsIn, sparsIn, withLines, wordsAt } from '../notebook.ts'
import { anywhere, at, edited, type Plant, type Plants, perSail, stayed } from './plant.ts'

/** A pattern on any line of a sail's own entry, above its gear, made other words. */
const corner = (rule: string, fits: Parameters<typeof perSail>[0], pattern: RegExp, words: string): Plant =>
  perSail((book, sail) => {
    if (!fits(book, sail)) return undefined
    for (let line = sail.entry + 1; line < sail.gear; line++) {
      const text = edited(book, line, pattern, words)
      if (text) return at(sail.entry, rule, text)
    }
    return undefined
  })

const there = { text: '', rules: [], lines: [] }
const onStay: Parameters<typeof perSail>[0] = ({ rig }, { thing }) =>
  stayed(thing) && thing.kind === 'fore-and-aft' && rig.standing.some(one => thing.on.includes(one.name))
    ? there
    : undefined
const gaffSail: Parameters<typeof perSail>[0] = (_, { thing }) =>
  thing.class === 'gaff sail' ? there : undefined
const sheetedToYard: Parameters<typeof perSail>[0] = (_, { thing }) =>
  thing.kind === 'square' && thing.footYard ? there : undefined
const squareSail: Parameters<typeof perSail>[0] = (_, { thing }) =>
  thing.kind === 'square' ? there : undefined

const perYard =
  (
    rule: string,
    pattern: RegExp,
    words: string,
    fits: (book: Notebook, name: string) => boolean = () => true,
  ): Plant =>
  book =>
    sparsIn(book).flatMap(({ thing, entry }) => {
      const isHoisting = thing.kind === 'yard' && thing.hoists && fits(book, thing.name)
      const text = isHoisting ? edited(book, entry, pattern, words) : undefined
      return text ? [at(entry, rule, text)] : []
    })

/** Whether another yard hangs below on the same mast. */
function isAbove(book: Notebook, name: string): boolean {
  const yard = book.rig.sparAt.get(name)
  return book.rig.spars.some(
    other =>
      other.kind === 'yard' &&
      yard?.kind === 'yard' &&
      other.mast === yard.mast &&
      (other.middle?.z ?? Number.POSITIVE_INFINITY) < (yard.middle?.z ?? 0),
  )
}

const yardCutShort = perSail((book, { thing, entry }) => {
  const line = thing.kind === 'square' ? lineOf(book, book.rig.sparAt.get(thing.yard)?.span) : undefined
  const text = line === undefined ? undefined : edited(book, line, /[\d.]+ m long/, '1.00 m long')
  return text ? at(entry, 'yard/shorter-than-head', text) : undefined
})

/** Peak and throat said for each other. */
const cornersChanged: Plant = book =>
  sailsIn(book).flatMap(({ thing, entry, gear }) => {
    if (thing.class !== 'gaff sail') return []
    const lines = new Map<number, string>()
    for (let line = entry + 1; line < gear; line++) {
      const words = wordsAt(book, line)
      lines.set(
        line,
        words.replace(/\b(peak|throat)\b/g, name => (name === 'peak' ? 'throat' : 'peak')),
      )
    }
    return [at(entry, 'sail/edges-crossed', withLines(book, lines))]
  })

/** A sail said a second time under another name. */
const saidTwice: Plant = book =>
  sailsIn(book).flatMap(({ thing, entry, gear }) => {
    const isMeasured = onStay(book, { thing, entry, gear }) || thing.class === 'gaff sail'
    const own = book.lines.slice(entry - 1, gear - 1)
    if (!isMeasured || !own[0]?.startsWith(`  ${thing.name}, `)) return []
    const again = own.with(0, own[0].replace(thing.name, `spare ${thing.name}`))
    return [anywhere('sail/two-in-one-place', book.lines.toSpliced(entry - 1, 0, ...again).join('\n'))]
  })

/** The last corner on a line of a sail's own entry left out; of a square sail its foot. */
const cornerLeftOut: Plant = book =>
  sailsIn(book).flatMap(({ entry, gear }) => {
    // What is said like another keeps the other's corner.
    if (/ like /.test(wordsAt(book, entry))) return []
    const text = Array.from({ length: gear - entry - 1 }, (_, index) => entry + 1 + index)
      .map(
        line =>
          edited(book, line, /,\s+(clew|head|peak)\s[^,#]*$/, '') ??
          edited(book, line, /^( +)foot +[\d.]+ m wide.*$/, '$1# its foot is not known'),
      )
      .find(Boolean)
    return text ? [at(entry, 'sail/corner-missing', text)] : []
  })

/** Faults of measures. */
export const shapes: Plants = {
  'a yard cut short': yardCutShort,
  'a foot too wide': corner(
    'sail/foot-wider-than-yard',
    sheetedToYard,
    /(foot +)[\d.]+ m wide/,
    '$140.00 m wide',
  ),
  'a head below its foot': corner(
    'sail/foot-above-head',
    squareSail,
    /(head .*wide +)[\d.]+ m up/,
    '$13.00 m up',
  ),
  'a yard hoisted above the truck': perYard('yard/hoist-above-truck', /to [\d.]+ m up/, 'to 75.00 m up'),
  'a yard lowered on the one below': perYard('yard/lowered-too-low', /from [\d.]+ m/, 'from 4.00 m', isAbove),
  'a yard longer than the one below': perYard(
    'yard/longer-than-below',
    /[\d.]+ m long/,
    '50.00 m long',
    isAbove,
  ),
  'a tack beyond its stay': corner(
    'sail/beyond-its-stay',
    onStay,
    /tack +[\d.]+ m (forward|aft)/,
    'tack 60.00 m forward',
  ),
  'a peak far off its gaff': corner(
    'sail/corner-off-its-spar',
    gaffSail,
    /(peak +[\d.]+ m aft +)[\d.]+ m up/,
    '$190.00 m up',
  ),
  'peak and throat changed about': cornersChanged,
  'a sail where another is': saidTwice,
  'a corner left out': cornerLeftOut,
}
