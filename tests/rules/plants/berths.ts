import {
  type Berth,
  berthsIn,
  isAlone,
  lineOf,
  type Notebook,
  pinOf,
  withLine,
  withLines,
  wordsAt,
} from '../notebook.ts'
import { anywhere, at, edited, type Plant, type Plants, perBerth } from './plant.ts'

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

/** What stands on the pin of a pair made something else. */
const reseated = (rule: string, words: (berth: Berth) => string): Plant =>
  perBerth((book, berth) =>
    isAlone(book, berth)
      ? at(berth.at, rule, withLine(book, berth.at, pinOf(wordsAt(book, berth.at)) + words(berth)))
      : undefined,
  )

const twoOnAPin: Plant = book => {
  const alone = berthsIn(book).filter(berth => isAlone(book, berth))
  return alone.flatMap((berth, index) => {
    const other = alone[index + 1]
    if (!other || other.line.belay?.rail !== berth.line.belay?.rail) return []
    const lines = new Map([
      [berth.at, `${pinOf(wordsAt(book, berth.at))}${berth.words}, ${other.words}`],
      [other.at, `${pinOf(wordsAt(book, other.at))}free`],
    ])
    return [at(berth.at, 'belay/two-on-a-pin', withLines(book, lines))]
  })
}

const notMirrored: Plant = book =>
  berthsIn(book).flatMap(berth => {
    const free =
      book.lines.findIndex((words, index) => index >= berth.at && /^ {2}\d+ +free\s*$/.test(words)) + 1
    const between = book.lines.slice(berth.at, free)
    if (!isAlone(book, berth) || free === 0 || between.includes('')) return []
    const lines = new Map([
      [berth.at, `${pinOf(wordsAt(book, berth.at))}port ${berth.words}`],
      [free, `${pinOf(wordsAt(book, free))}starboard ${berth.words}`],
    ])
    return [at(free, 'pair/not-mirrored', withLines(book, lines))]
  })

const noSuchPin = perBerth((book, berth) =>
  at(
    berth.at,
    'belay/no-such-pin',
    withLine(book, berth.at, wordsAt(book, berth.at).replace(/^ {2}\d+[a-z]?/, '  99')),
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
    const text =
      entry === undefined ? undefined : edited(book, entry + 1, /^ {4}\d+ pins from/, '    90 pins from')
    return text && entry !== undefined ? [at(entry, 'belay/pins-too-close', text)] : []
  })

const railMisspelt: Plant = book =>
  book.lines.flatMap((words, index) =>
    /^belay on \S+ \S+ rail\s*$/.test(words) || /^belay on \S+ rail\s*$/.test(words)
      ? [at(index + 1, 'belay/no-such-rail', withLine(book, index + 1, words.replace('rail', 'raail')))]
      : [],
  )

/** Two lines of a page changing pins: whole lines of the text, so that both sides go along. */
function changed(book: Notebook, a: number, b: number): string {
  const berths = (line: number) => wordsAt(book, line).slice(pinOf(wordsAt(book, line)).length)
  return withLines(
    book,
    new Map([
      [a, pinOf(wordsAt(book, a)) + berths(b)],
      [b, pinOf(wordsAt(book, b)) + berths(a)],
    ]),
  )
}

const isAmidst = (book: Notebook, { line }: Berth): boolean => {
  const rail = book.rig.railAt.get(line.belay?.rail ?? '')
  const number = line.belay?.number ?? 0
  return rail !== undefined && number > 3 && number <= rail.places.length - 3
}

const isHalyard = ({ line }: Berth) => line.kind.includes('halyard') && line.host !== undefined
const onOneRail = (a: Berth, b: Berth) => a.line.belay?.rail === b.line.belay?.rail

const halyardAmidst: Plant = book => {
  const berths = berthsIn(book)
  return berths
    .filter(berth => isHalyard(berth) && !isAmidst(book, berth))
    .flatMap(berth =>
      berths
        .filter(other => other.line.pair && isAmidst(book, other) && onOneRail(berth, other))
        .map(other => at(other.at, 'belay/halyard-not-at-end', changed(book, berth.at, other.at))),
    )
}

/** Whether both pins beside a berth carry a line on its own side. */
function isBetween(book: Notebook, { line }: Berth): boolean {
  const rail = book.rig.railAt.get(line.belay?.rail ?? '')
  const number = line.belay?.number ?? 0
  return [number - 2, number].every(index => (rail?.places[index]?.lines.length ?? 0) > 0)
}

const guyHemmedIn: Plant = book => {
  const berths = berthsIn(book).filter(berth => isAlone(book, berth))
  return berths
    .filter(({ line }) => line.function === 'keeps')
    .flatMap(berth =>
      berths
        .filter(other => isAmidst(book, other) && isBetween(book, other) && onOneRail(berth, other))
        .filter(other => Math.abs((other.line.belay?.number ?? 0) - (berth.line.belay?.number ?? 0)) > 1)
        .map(other => at(other.at, 'belay/quick-release-hemmed-in', changed(book, berth.at, other.at))),
    )
}

const twoHalyards = /^( {2}\d+ +)port (.+ halyard), starboard (.+ halyard)( *#.*)?$/

/** A pin with a halyard on either side, said otherwise. */
const twoHalyardsAs =
  (
    rule: string,
    fits: (halyards: string, book: Notebook) => boolean,
    words: string,
    where: 'there' | 'anywhere',
  ): Plant =>
  book =>
    book.lines.flatMap((line, index) => {
      const [, , port, starboard] = twoHalyards.exec(line) ?? []
      if (port === undefined || !fits(`${port}, ${starboard}`, book)) return []
      const text = withLine(book, index + 1, line.replace(twoHalyards, words))
      return [where === 'there' ? at(index + 1, rule, text) : anywhere(rule, text)]
    })

const areOfYards = (halyards: string) =>
  /topsail halyard.*topgallant halyard|topgallant halyard.*topsail halyard/.test(halyards)

const hasTwoSquareMasts = ({ rig }: Notebook) =>
  new Set(rig.sails.flatMap(sail => (sail.kind === 'square' ? sail.mast : []))).size > 1

/** Two pairs of one sail, or of two, changing pins on a rail where another sail shows the order. */
const exchangedPins =
  (rules: readonly string[], fits: (book: Notebook, a: Berth, b: Berth) => boolean): Plant =>
  book => {
    const berths = berthsIn(book).filter(berth => isAlone(book, berth) && !isHalyard(berth))
    return berths.flatMap((a, index) =>
      berths
        .slice(index + 1)
        .filter(b => onOneRail(a, b) && fits(book, a, b))
        .map(b => anywhere(rules, changed(book, a.at, b.at))),
    )
  }

/** Whether another square sail of the mast has both lines on the same rail. */
function isShown(book: Notebook, a: Berth, b: Berth): boolean {
  if (a.line.host?.name !== b.line.host?.name) return false
  const words = [a, b].map(({ line }) => line.labelOnSail)
  const rail = book.rig.railAt.get(a.line.belay?.rail ?? '')
  const own = book.rig.sailAt.get(a.line.host?.name ?? '')
  const others = new Map<string, string[]>()
  for (const address of rail?.places.flatMap(place => place.lines) ?? []) {
    const line = book.rig.lineAt.get(address)
    const sail = book.rig.sailAt.get(line?.host?.name ?? '')
    if (!line || !sail || sail === own || sail.mast !== own?.mast || sail.kind !== own?.kind) continue
    others.set(sail.name, [...(others.get(sail.name) ?? []), line.labelOnSail])
  }
  return [...others.values()].some(gear => words.every(word => gear.includes(word)))
}

const tiers = [
  /course/,
  /lower topsail|^(?!.*upper)(?!.*lower).*topsail/,
  /upper topsail/,
  /topgallant/,
  /royal/,
  /skysail/,
]
const tierOf = (book: Notebook, { line }: Berth) => {
  const sail = book.rig.sailAt.get(line.host?.name ?? '')
  return sail?.kind === 'square' ? tiers.findIndex(tier => tier.test(sail.class)) : -1
}

const areOfTwoTiers = (book: Notebook, a: Berth, b: Berth) =>
  a.line.mast === b.line.mast &&
  tierOf(book, a) >= 0 &&
  tierOf(book, b) >= 0 &&
  tierOf(book, a) !== tierOf(book, b)

/** A sheet taken to a rail far from its clewline's, for a line that stood there. */
const sheetFarOff: Plant = book => {
  const berths = berthsIn(book).filter(berth => isAlone(book, berth))
  const isClewed = ({ line }: Berth) =>
    line.kind === 'sheet' && book.rig.pairAt.has(line.pairKey.replace(/sheet$/, 'clewline'))
  return berths.filter(isClewed).flatMap(sheet => {
    const clewline = book.rig.pairAt.get(sheet.line.pairKey.replace(/sheet$/, 'clewline'))?.[0]
    return berths
      .filter(({ line }) => Math.abs((line.belay?.at?.x ?? 0) - (clewline?.belay?.at?.x ?? 0)) > 7)
      .filter(({ line }) => line.kind !== 'sheet')
      .map(other => {
        const lines = new Map([
          [sheet.at, pinOf(wordsAt(book, sheet.at)) + other.line.words],
          [other.at, pinOf(wordsAt(book, other.at)) + sheet.line.words],
        ])
        return anywhere('reach/clew-apart', withLines(book, lines))
      })
  })
}

const courseSheetOutOfHail: Plant = book =>
  book.lines.flatMap((words, index) => {
    const [, course] = /^belay (\S+) course sheet to /.exec(words) ?? []
    const far = book.lines.findLast(
      line => /^belay \S+ course sheet to /.test(line) && !line.includes(` ${course} `),
    )
    const [, place] = /sheet to (.*)$/.exec(far ?? '') ?? []
    if (!course || !place || book.lines.indexOf(far ?? '') < index) return []
    return [
      anywhere('reach/out-of-hail', withLine(book, index + 1, `belay ${course} course sheet to ${place}`)),
    ]
  })

const printedAlike: Plant = book => {
  const lines = [...book.rig.pairAt.values()].flatMap(([line]) => line ?? [])
  return lines.flatMap((line, index) => {
    const other = lines[index + 1]
    if (!other) return []
    const labels = ['labels', `  ${line.words}  "Same"`, `  ${other.words}  "Same"`, '']
    return [anywhere('name/printed-alike', [...book.lines, ...labels].join('\n'))]
  })
}

const orders = ['mast/order-differs', 'sail/gear-out-of-order', 'mast/upper-before-lower']

/** Faults of where lines are made fast. */
export const berths: Plants = {
  'a berth left out': berthLeftOut,
  'both of a pair led to port': reseated(
    'pair/one-side',
    ({ words, line }) => `port ${words}, port ${line.pairKey}.starboard`,
  ),
  'a pair crossed': reseated(
    'pair/wrong-side',
    ({ line }) => `port ${line.pairKey}.starboard, starboard ${line.pairKey}.port`,
  ),
  'two lines on one pin': twoOnAPin,
  'two halyards sharing a pin': twoHalyardsAs(
    'belay/never-shared',
    () => true,
    '$1port shared by $2 and $3 because there is no room',
    'there',
  ),
  'a pair on pins that are not opposite': notMirrored,
  'a pin beyond the rail': noSuchPin,
  'a rail misspelt': railMisspelt,
  'a line misspelt where it belays': misspeltLine,
  'too many pins on a rail': pinsTooClose,
  'a halyard amidst its rail': halyardAmidst,
  'a guy or a backstay hemmed in': guyHemmedIn,
  'throat and peak to one side': twoHalyardsAs(
    'sail/throat-and-peak-one-side',
    halyards => /throat.*peak|peak.*throat/.test(halyards),
    '$1port $2, port $3',
    'there',
  ),
  'topsail and topgallant halyard to one side': twoHalyardsAs(
    'mast/topsail-and-topgallant-one-side',
    halyards => areOfYards(halyards),
    '$1port $2, port $3',
    'anywhere',
  ),
  'yard halyards that change sides': twoHalyardsAs(
    'mast/halyards-one-side',
    (halyards, book) => areOfYards(halyards) && hasTwoSquareMasts(book),
    '$1port $3, starboard $2',
    'anywhere',
  ),
  "one sail's gear in another order": exchangedPins(orders, isShown),
  "an upper sail's gear before a lower one's": exchangedPins(orders, areOfTwoTiers),
  'a sheet far from its clewline': sheetFarOff,
  "a course's sheet out of hail of its tack": courseSheetOutOfHail,
  'two lines printed alike': printedAlike,
}
