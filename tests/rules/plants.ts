import type { Sail } from '../../src/rig/index.ts'
import {
  type Berth,
  berthsIn,
  type Hung,
  isAlone,
  lineOf,
  type Notebook,
  type Planted,
  pinOf,
  sailsIn,
  sparsIn,
  withLine,
  withLineBelow,
  wordsAt,
} from './notebook.ts'

/** A kind of fault, and every way of planting it in a notebook. */
export type Plant = (book: Notebook) => readonly Planted[]

const at = (line: number, rule: string, text: string): Planted => ({ text, rule, line })

const perBerth =
  (plant: (book: Notebook, berth: Berth) => Planted | undefined): Plant =>
  book =>
    berthsIn(book).flatMap(berth => plant(book, berth) ?? [])

const perSail =
  (plant: (book: Notebook, sail: Hung<Sail>) => Planted | undefined): Plant =>
  book =>
    sailsIn(book).flatMap(sail => plant(book, sail) ?? [])

/** A line left out of the gear of every sail of some kinds: told at the sail or at its yard. */
const without = (rule: string, names: string, fits: (sail: Sail) => boolean, where: 'sail' | 'yard'): Plant =>
  perSail((book, { thing: sail, entry, gear }) => {
    if (!fits(sail)) return undefined
    const yard = sail.kind === 'square' ? book.rig.sparAt.get(sail.yard) : undefined
    const line = where === 'sail' ? entry : lineOf(book, yard?.span)
    return line === undefined
      ? undefined
      : at(line, rule, withLineBelow(book, gear, `      without ${names}`))
  })

/** Something said of a line of the gear at the foot of it, for every sail of some kinds: told there. */
const saying = (rule: string, words: string, fits: (sail: Sail) => boolean): Plant =>
  perSail((book, { thing, gear }) => {
    let last = gear
    while (/^ {6}/.test(wordsAt(book, last + 1))) last++
    return fits(thing) ? at(last + 1, rule, withLineBelow(book, last, `      ${words}`)) : undefined
  })

const square =
  (...classes: readonly string[]) =>
  (sail: Sail) =>
    sail.kind === 'square' && classes.includes(sail.class)
const stayed = (sail: Sail) => sail.class === 'headsail' || sail.class === 'staysail'

/** A measure on the line of every sail's yard, or of the sail's head or foot, made another. */
function edited(book: Notebook, line: number, pattern: RegExp, words: string): string | undefined {
  const old = wordsAt(book, line)
  return pattern.test(old) ? withLine(book, line, old.replace(pattern, words)) : undefined
}

const squareEdge = (rule: string, edge: 'head' | 'foot', pattern: RegExp, words: string): Plant =>
  perSail((book, { thing, entry }) => {
    for (
      let line = entry + 1;
      thing.kind === 'square' && thing.footYard && /^ {4}/.test(wordsAt(book, line));
      line++
    ) {
      const text = wordsAt(book, line).startsWith(`    ${edge} `)
        ? edited(book, line, pattern, words)
        : undefined
      if (text) return at(entry, rule, text)
    }
    return undefined
  })

const perYard =
  (rule: string, pattern: RegExp, words: string): Plant =>
  book =>
    sparsIn(book).flatMap(({ thing, entry }) => {
      const text = thing.kind === 'yard' && thing.hoists ? edited(book, entry, pattern, words) : undefined
      return text ? [at(entry, rule, text)] : []
    })

/** Where a line without a place is told: under its sail, where it is said again, or at the entry of its sail. */
function entryOf(book: Notebook, { line }: Berth): number | undefined {
  const { host } = line
  if (!host) return lineOf(book, line.span)
  const entry = lineOf(book, (host.kind === 'sail' ? book.rig.sailAt : book.rig.sparAt).get(host.name)?.span)
  if (entry === undefined) return undefined
  const again = new RegExp(`^ {6}(with )?${line.labelOnSail.toLowerCase()}\\b`)
  for (let below = entry + 1; /^ {4}/.test(wordsAt(book, below)); below++) {
    if (again.test(wordsAt(book, below)) && !/ at | out /.test(wordsAt(book, below))) return below
  }
  return entry
}

const berthLeftOut = perBerth((book, berth) => {
  const line = entryOf(book, berth)
  const old = wordsAt(book, berth.at)
  return line === undefined
    ? undefined
    : at(line, 'belay/no-place', withLine(book, berth.at, old.replace(berth.words, 'free')))
})

const bothToPort = perBerth((book, berth) =>
  isAlone(book, berth)
    ? at(
        berth.at,
        'pair/one-side',
        withLine(
          book,
          berth.at,
          `${pinOf(wordsAt(book, berth.at))}port ${berth.words}, port ${berth.line.pairKey}.starboard`,
        ),
      )
    : undefined,
)

const crossed = perBerth((book, berth) =>
  isAlone(book, berth)
    ? at(
        berth.at,
        'pair/wrong-side',
        withLine(
          book,
          berth.at,
          `${pinOf(wordsAt(book, berth.at))}port ${berth.line.pairKey}.starboard, starboard ${berth.line.pairKey}.port`,
        ),
      )
    : undefined,
)

const twoOnAPin: Plant = book => {
  const alone = berthsIn(book).filter(berth => isAlone(book, berth))
  return alone.flatMap((berth, index) => {
    const other = alone[index + 1]
    if (!other || other.line.belay?.rail !== berth.line.belay?.rail) return []
    const crowded = `${pinOf(wordsAt(book, berth.at))}${berth.words}, ${other.words}`
    const lines = book.lines
      .with(berth.at - 1, crowded)
      .with(other.at - 1, `${pinOf(wordsAt(book, other.at))}free`)
    return [at(berth.at, 'belay/two-on-a-pin', lines.join('\n'))]
  })
}

const notMirrored: Plant = book =>
  berthsIn(book).flatMap(berth => {
    const free =
      book.lines.findIndex((words, index) => index >= berth.at && /^ {2}\d+ +free\s*$/.test(words)) + 1
    const between = book.lines.slice(berth.at, free)
    if (!isAlone(book, berth) || free === 0 || between.includes('')) return []
    const lines = book.lines
      .with(berth.at - 1, `${pinOf(wordsAt(book, berth.at))}port ${berth.words}`)
      .with(free - 1, `${pinOf(wordsAt(book, free))}starboard ${berth.words}`)
    return [at(free, 'pair/not-mirrored', lines.join('\n'))]
  })

const noSuchPin = perBerth((book, berth) =>
  at(
    berth.at,
    'belay/no-such-pin',
    withLine(book, berth.at, wordsAt(book, berth.at).replace(/^ {2}\d+/, '  99')),
  ),
)

const misspeltLine = perBerth((book, berth) =>
  at(
    berth.at,
    'name/unknown',
    withLine(book, berth.at, wordsAt(book, berth.at).replace(berth.words, `${berth.words}x`)),
  ),
)

const pinsTooClose: Plant = book =>
  book.rig.rails.flatMap(rail => {
    const entry = lineOf(book, rail.span)
    const text = entry === undefined ? undefined : edited(book, entry + 1, /^ {4}\d+ pins /, '    90 pins ')
    return text && entry !== undefined ? [at(entry, 'belay/pins-too-close', text)] : []
  })

const railMisspelt: Plant = book =>
  book.lines.flatMap((words, index) =>
    /^belay on \S+ \S+ rail\s*$/.test(words) || /^belay on \S+ rail\s*$/.test(words)
      ? [at(index + 1, 'belay/no-such-rail', withLine(book, index + 1, words.replace('rail', 'raail')))]
      : [],
  )

/** Every kind of fault by name. */
export const plants: Readonly<Record<string, Plant>> = {
  'a berth left out': berthLeftOut,
  'both of a pair led to port': bothToPort,
  'a pair crossed': crossed,
  'two lines on one pin': twoOnAPin,
  'a pair on pins that are not opposite': notMirrored,
  'a pin beyond the rail': noSuchPin,
  'a rail misspelt': railMisspelt,
  'a line misspelt where it belays': misspeltLine,
  'too many pins on a rail': pinsTooClose,
  'a jib without halyard': without('sail/nothing-sets-it', 'halyard', stayed, 'sail'),
  'a jib without downhaul': without('sail/nothing-gets-it-in', 'downhaul', stayed, 'sail'),
  'a jib without sheets': without('sail/no-sheet', 'sheet', stayed, 'sail'),
  'a jib with one sheet': saying('sail/sheet-one-side', 'sheet single', stayed),
  'a yard without halyard': without(
    'yard/no-halyard',
    'halyard',
    square('topsail', 'upper topsail', 'topgallant', 'royal'),
    'yard',
  ),
  'a topgallant without clewlines': without(
    'yard/nothing-gets-it-down',
    'clewline',
    square('topsail', 'topgallant', 'royal'),
    'yard',
  ),
  'an upper topsail without downhauls': without(
    'yard/nothing-gets-it-down',
    'downhaul',
    square('upper topsail'),
    'yard',
  ),
  'a lower topsail without clewlines': without(
    'sail/nothing-gets-it-in',
    'clewline',
    square('lower topsail'),
    'sail',
  ),
  'a square sail without sheets': without(
    'sail/no-sheet',
    'sheet',
    square('course', 'lower topsail', 'topsail', 'topgallant', 'royal'),
    'sail',
  ),
  'a course without tacks': without('sail/no-tack', 'tack', square('course'), 'sail'),
  'a yard without braces': without('sail/no-brace', 'brace', sail => sail.kind === 'square', 'yard'),
  'a topgallant without buntlines': without(
    'sail/no-buntline',
    'buntline',
    square('topsail', 'topgallant'),
    'sail',
  ),
  'a brace for one yardarm': saying('pair/one-missing', 'brace single', sail => sail.kind === 'square'),
  'a gaff sail without throat halyard': without(
    'sail/nothing-sets-it',
    'throat halyard',
    sail => sail.gear === 'gaff sail',
    'sail',
  ),
  'a gaff topsail without clewline': without(
    'sail/nothing-gets-it-in',
    'clewline',
    sail => sail.class === 'gaff topsail',
    'sail',
  ),
  'a spanker without brails': without(
    'sail/nothing-gets-it-in',
    'peak brail and throat brail and foot brail',
    sail => sail.gear === 'brailed gaff sail',
    'sail',
  ),
  'a boom without topping lift': perSail((book, { thing, gear }) => {
    const boom =
      thing.kind === 'square'
        ? undefined
        : thing.on.map(name => book.rig.sparAt.get(name)).find(spar => spar?.kind === 'boom')
    const line = lineOf(book, boom?.span)
    return line === undefined
      ? undefined
      : at(line, 'boom/no-topping-lift', withLineBelow(book, gear, '      without topping lift'))
  }),
  'a halyard that hoists nothing there is': saying('line/acts-on-nothing', 'halyard hoists haed', stayed),
  'a halyard that nothing answers': saying('line/nothing-answers', 'halyard not against downhaul', stayed),
  'a sheet not said to ease its clewline': saying(
    'line/counterpart-one-way',
    'sheet not against clewline',
    square('topsail', 'topgallant', 'royal', 'lower topsail'),
  ),
  'a yard cut short': perSail((book, { thing, entry }) => {
    const line = thing.kind === 'square' ? lineOf(book, book.rig.sparAt.get(thing.yard)?.span) : undefined
    const text = line === undefined ? undefined : edited(book, line, /[\d.]+ m long/, '1.00 m long')
    return text ? at(entry, 'yard/shorter-than-head', text) : undefined
  }),
  'a foot too wide': squareEdge('sail/foot-wider-than-yard', 'foot', /[\d.]+ m wide/, '40.00 m wide'),
  'a head below its foot': squareEdge('sail/foot-above-head', 'head', /[\d.]+ m up/, '3.00 m up'),
  'a yard hoisted above the truck': perYard('yard/hoist-above-truck', /to [\d.]+ m up/, 'to 45.00 m up'),
  'a yard lowered on the one below': perYard('yard/lowered-too-low', /from [\d.]+ m/, 'from 4.00 m'),
  'a yard longer than the one below': perYard('yard/longer-than-below', /[\d.]+ m long/, '30.00 m long'),
}
