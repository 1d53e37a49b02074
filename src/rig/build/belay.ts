import type { Finding } from '../../findings/index.ts'
import { type Berth, type Count, type Name, nameKey, type Page, type Statement } from '../../syntax/index.ts'
import { clearlyNearest, nearest, type Span } from '../../text/index.ts'
import type { Place, Rail, Side } from '../rail.ts'
import { clause, clausesOf } from './clauses.ts'
import { byPair, type Hung } from './hung.ts'
import { type Leave, leavesOf } from './leave.ts'
import { renamed, swap } from './like.ts'
import { type LineNames, withoutSide } from './line-names.ts'
import { capitalised, finding, listed, type Say, unknownName } from './say.ts'

/** Who sits where: rails with their places filled, and the place of each belayed line. */
export interface Belayed {
  readonly rails: readonly Rail[]
  readonly of: ReadonlyMap<string, Seat>
  /** What is let stand at a pin: of the place, and of the lines on it. */
  readonly leaves: readonly (Leave & { readonly things: readonly string[] })[]
}

interface Seat {
  readonly rail: string
  readonly number: number
  readonly pin: string
  readonly side: Place['side']
  readonly span: Span
  /** Of a line that is shifted at every tack: where it goes then. The seat itself is that with the wind from starboard. */
  readonly other?: Seat
}

interface Sitting {
  readonly lines: string[]
  shared: boolean
  keptFree: boolean
  span: Span | undefined
}

interface Deck {
  readonly rails: readonly Rail[]
  readonly hung: ReadonlyMap<string, readonly Hung[]>
  readonly names: LineNames
  /** Lines that are sent down: their pins stand free for them. */
  readonly lifted: ReadonlyMap<string, string>
  readonly sittings: Map<string, Sitting>
  readonly of: Map<string, Seat>
  readonly leaves: Belayed['leaves'][number][]
  /** Names on these pages that are no line's. */
  readonly strangers: Stranger[]
  readonly say: Say
}

/** Reads every "belay" page of the text. */
export function belayAll(
  pages: readonly Page[],
  rails: readonly Rail[],
  hung: readonly Hung[],
  { names, lifted }: Pick<Deck, 'names' | 'lifted'>,
  say: Say,
): Belayed {
  const pairs = byPair(hung)
  const deck: Deck = {
    ...{ rails, hung: pairs, names, lifted, say },
    ...{ sittings: new Map(), of: new Map(), leaves: [], strangers: [] },
  }
  const said = new Map<string, Page>()
  const asMeant = railsAsMeant(pages, rails, say)
  for (const page of pages) {
    if (page.kind === 'belayOn') {
      const whole = withLike(asMeant(page), said, say)
      for (const { name } of [page, whole]) if (name) said.set(nameKey(name.words), whole)
      belayOn(deck, whole)
    }
    if (page.kind === 'belay') belayOne(deck, page)
  }
  for (const line of hung) judgeShift(deck, line)
  for (const one of strangersTold(deck.strangers)) say(one)
  return { rails: rails.map(rail => filled(rail, deck.sittings)), of: deck.of, leaves: deck.leaves }
}

/** A line that is shifted at every tack wants a place on both sides. */
function judgeShift({ of, say }: Deck, { line, words, address }: Hung): void {
  const seat = of.get(address)
  if (!line.shifts || !seat || seat.other) return
  say(
    finding(
      'belay/shifted-one-side',
      seat.span,
      `${capitalised(words)} shifts to ${line.shifts}, and has its place on one side only.`,
      {
        aboard: 'On the other tack there is nothing to make it fast to.',
        remedy:
          'Belay it on a rail that stands port and starboard, without saying a side; or leave off "shifts".',
      },
    ),
  )
}

/** A page that names no rail is read as that of the rail it is clearly meant for, of those that no other page names. */
function railsAsMeant(pages: readonly Page[], rails: readonly Rail[], say: Say): (page: Page) => Page {
  const named = new Set(
    pages.flatMap(page => (page.kind === 'belayOn' && page.name ? nameKey(page.name.words) : [])),
  )
  const isKnown = (key: string) => railsOfName(rails, key).rails.length > 0
  const unnamed = rails.map(rail => rail.name).filter(name => !named.has(name))
  return page => {
    const { name } = page
    if (!name || isKnown(nameKey(name.words))) return page
    const meant = clearlyNearest(name.words, unnamed)
    if (meant === undefined) return page
    say({
      ...unknownName('rail', name, [meant]),
      rule: 'belay/no-such-rail',
      message: `There is no rail "${name.words}"; it is read as "${meant}".`,
    })
    return { ...page, name: { ...name, words: meant } }
  }
}

function filled(rail: Rail, sittings: ReadonlyMap<string, Sitting>): Rail {
  const places = rail.places.map((place): Place => {
    const sitting = sittings.get(place.address)
    return sitting ? { ...place, ...sitting } : place
  })
  return { ...rail, places }
}

/** "belay on main rail like fore rail": pin by pin, with "main" read for "fore", and then what is said anew. */
function withLike(page: Page, said: ReadonlyMap<string, Page>, say: Say): Page {
  const like = clause(page, 'like')
  const known = like && said.get(nameKey(like.name.words))
  if (like && !known) say(unknownName('rail with lines on it above', like.name, said.keys()))
  const model = known ?? (like && said.get(clearlyNearest(like.name.words, said.keys()) ?? ''))
  const own = page.block.flatMap(singlePins)
  const block =
    model?.name && page.name ? overlaidPins(renamed(model.block, swap(model.name, page.name)), own) : own
  return { ...page, block }
}

function overlaidPins(base: readonly Statement[], own: readonly Statement[]): readonly Statement[] {
  const key = ({ pins }: Statement) => pins && pinOf(pins.from)
  const anew = new Set(own.map(key))
  return [...base.filter(pin => !anew.has(key(pin))), ...own]
}

/** More pins than this in one stretch is a slip, found as a pin that isn't there. */
const longestStretch = 500

function singlePins(statement: Statement): readonly Statement[] {
  const { pins } = statement
  if (!pins) return []
  const { from, to } = pins
  const count = Math.min(to.value - from.value, longestStretch)
  if (!(count > 0)) return [statement]
  return Array.from({ length: count + 1 }, (_, index) => {
    const value = from.value + index
    const pin = { value, written: String(value), span: index === 0 ? from.span : to.span }
    return { ...statement, pins: { from: pin, to: pin } }
  })
}

/** What is painted beside a pin: '4', '4a'; '04' is pin 4. */
const pinOf = ({ value, written }: Count): string =>
  `${value}${/[a-z]$/i.exec(written)?.[0].toLowerCase() ?? ''}`

function belayOn(deck: Deck, page: Page): void {
  if (!page.name) return
  const { rails } = railsNamed(deck, page.name, place => {
    const berths = page.block.flatMap(statement => clausesOf(statement, 'berth').map(one => one.berth))
    return addressesMeant(deck, berths, place)
  })
  if (rails.length === 0) return
  for (const statement of page.block) {
    const number = statement.pins?.from
    if (!number) continue
    for (const { berth } of clausesOf(statement, 'berth')) sit(deck, rails, number, berth)
    const things = () =>
      placesAt(rails, number).flatMap(({ place: { address } }) => [
        address,
        ...(deck.sittings.get(address)?.lines ?? []),
      ])
    deck.leaves.push(...leavesOf(statement).map(leave => ({ ...leave, things: things() })))
  }
}

function belayOne(deck: Deck, page: Page): void {
  // "belay foresail sheet on fore sheet cleat" is told as a clause out of place.
  const to = clause(page, 'leadTo')?.place.from ?? clause(page, 'on')?.names[0]
  if (!page.name) return
  if (!to) {
    if (!page.doubtful && page.clauses.length === 0)
      deck.say(withoutPlace(page.name, linesAtHead(deck, page.name)))
    return
  }
  const meant = linesOfName(deck, page.name, nameKey(to.words))
  const { rails, side } = railsNamed(deck, to, () => meant)
  const pin = clause(page, 'count')?.count
  const [rail] = rails
  if (!rail) return
  if (!pin && rail.places.length > 1) {
    deck.say(
      finding(
        'belay/no-such-pin',
        to.span,
        `The ${rail.name} has ${rail.places.length} pins; it isn't said on which one.`,
        {
          remedy: `Say the pin, as in "belay ${page.name.words} to ${to.words} pin 3".`,
          explains: meant,
        },
      ),
    )
    return
  }
  const number = pin ?? { value: 1, written: '1', span: to.span }
  sit(deck, rails, number, { kind: 'line', side, line: page.name, span: page.name.span })
  deck.leaves.push(...leavesOf(page).map(leave => ({ ...leave, things: meant })))
}

/** The lines with whose name a run of words begins: "foresail sheet too fore sheet cleat". */
function linesAtHead(deck: Deck, name: Name): readonly string[] {
  const words = name.words.split(' ').slice(0, 12)
  const heads = words.map((_, index) => words.slice(0, words.length - index).join(' '))
  return (
    heads.map(head => linesOfName(deck, { ...name, words: head }, '')).find(lines => lines.length > 0) ?? []
  )
}

const withoutPlace = ({ words, span }: Name, explains: readonly string[]): Finding =>
  finding('belay/neither-on-nor-to', span, `It isn't said where the ${words} is belayed.`, {
    remedy: `Say "to" and the place, as in "belay ${words} to ...", or give it a pin on a page "belay on ...".`,
    explains,
  })

/** The rails of a name: two for one that stands port and starboard, narrowed by a side said with it. */
function railsNamed(
  deck: Deck,
  name: Name,
  explains: (place: string) => readonly string[],
): { readonly rails: readonly Rail[]; readonly side: Side | undefined } {
  const key = nameKey(name.words)
  const found = railsOfName(deck.rails, key)
  if (found.rails.length === 0) {
    const offers = deck.rails.map(rail => rail.name)
    deck.say({
      ...unknownName('rail', name, offers, explains(key)),
      rule: 'belay/no-such-rail',
      aboard: nowhere,
    })
  }
  return found
}

function railsOfName(
  all: readonly Rail[],
  key: string,
): { readonly rails: readonly Rail[]; readonly side: Side | undefined } {
  const code = key.replaceAll(' ', '-')
  const whole = all.filter(rail => rail.name === key || rail.code.toLowerCase() === code)
  if (whole.length > 0) return { rails: whole, side: undefined }
  const { key: bare, side } = withoutSide(key)
  const sided = all.filter(rail => rail.name === bare)
  return { rails: sided.length > 1 ? sided.filter(rail => rail.lie === side) : sided, side }
}

function sit(deck: Deck, rails: readonly Rail[], number: Count, berth: Berth): void {
  const meant = berth.side && rails.length > 1 ? rails.filter(rail => rail.lie === berth.side) : rails
  const places = placesAt(meant, number)
  const [rail] = meant
  if (places.length === 0) {
    if (rail) deck.say({ ...noSuchPin(rail, number), explains: addressesMeant(deck, [berth], rail.name) })
    return
  }
  switch (berth.kind) {
    case 'free':
      for (const { place } of places) sittingAt(deck, place, berth.span).keptFree = true
      return
    case 'shared':
      for (const { place } of places) sittingAt(deck, place, berth.span).shared = true
      for (const line of berth.lines) seat(deck, rails, places, berth.side, line)
      return
    case 'line':
      seat(deck, rails, places, berth.side, berth.line)
  }
}

/** The places of a number, one on each of the rails that has such a pin. */
function placesAt(rails: readonly Rail[], number: Count) {
  const painted = pinOf(number)
  return rails.flatMap(rail => {
    const place = rail.places.find(({ pin }) => pin === painted)
    return place ? [{ rail, place }] : []
  })
}

function noSuchPin(rail: Rail, pin: Count) {
  const count = rail.places.length
  const from = rail.lie === 'athwart' ? 'numbered from port' : 'numbered from forward'
  const has = count === 1 ? 'has one place' : `has ${count} pins, ${from}`
  return finding('belay/no-such-pin', pin.span, `The ${rail.name} ${has}; there is no pin ${pinOf(pin)}.`, {
    aboard: 'A hand sent there finds no such pin; the line is made fast wherever there is room.',
    remedy:
      rail.places.length === 1
        ? 'Say how many pins it has, as in "6 pins", or belay the line elsewhere.'
        : `Belay on one of ${rail.places[0]?.pin} to ${rail.places.at(-1)?.pin}, or mend the number of its pins.`,
    related: [{ at: rail.span, message: `the ${rail.name} is declared here` }],
  })
}

function sittingAt(deck: Deck, place: Place, span: Span): Sitting {
  const sitting = deck.sittings.get(place.address) ?? { lines: [], shared: false, keptFree: false, span }
  deck.sittings.set(place.address, sitting)
  return sitting
}

/** Addresses of the lines that berths name: what is told of the berth explains why they have no place. */
function addressesMeant(deck: Deck, berths: readonly Berth[], place: string): readonly string[] {
  const names = berths.flatMap(berth =>
    berth.kind === 'line' ? [berth.line] : berth.kind === 'shared' ? berth.lines : [],
  )
  return names.flatMap(name => linesOfName(deck, name, place))
}

function linesOfName(deck: Deck, name: Name, place: string): readonly string[] {
  const pairKey = deck.names.find(name, place)?.pairKey
  return (pairKey === undefined ? [] : (deck.hung.get(pairKey) ?? [])).map(line => line.address)
}

/** The lines a misspelt name was likely meant for: that they are belayed nowhere follows from the slip. */
function nearestLines(deck: Deck, name: Name, place = ''): readonly string[] {
  const [likely] = nearest(name.words, deck.names.offers(place))
  return likely === undefined ? [] : linesOfName(deck, { ...name, words: likely }, place)
}

/** A place kept for a line that its sail or spar is said to be without. */
function leftOut({ hung }: Deck, name: Name, place = ''): Finding | undefined {
  const key = nameKey(name.words)
  const isMeant = (words: string) =>
    words === key || (words.endsWith(` ${key}`) && place.startsWith(`${words.slice(0, -key.length)}`))
  for (const { hanging } of [...hung.values()].flat()) {
    const line = hanging && [...hanging.kit.left].find(left => isMeant(`${hanging.host.name} ${left}`))
    if (!line) continue
    const { host } = hanging
    return finding(
      'name/unknown',
      name.span,
      `The ${host.name} is said to be without ${line}, and here a pin is given to it.`,
      {
        aboard: 'The chart would show a line that is not rigged.',
        remedy: `Leave the pin free; or take "without ${line}" from the gear of the ${host.name}.`,
        related: [{ at: host.span, message: `the ${host.name} is said here` }],
      },
    )
  }
  return undefined
}

/** Seats a line on the places meant: each of a pair on its own side's, unless a side is said. */
function seat(
  deck: Deck,
  rails: readonly Rail[],
  places: readonly { readonly rail: Rail; readonly place: Place }[],
  sideSaid: Side | undefined,
  name: Name,
): void {
  const [rail] = rails
  const found = deck.names.find(name, rail?.name)
  if (!found) {
    if (deck.names.isExcused(name, rail?.name)) return
    const left = leftOut(deck, name, rail?.name)
    if (left) deck.say(left)
    else
      deck.strangers.push({
        name,
        told: {
          ...unknownName('line', name, deck.names.offers(rail?.name), nearestLines(deck, name, rail?.name)),
          aboard: 'The pin is charted for no line of hers, and the one that is meant has no place.',
        },
      })
    return
  }
  if (found.shadows) {
    deck.say(
      finding(
        'name/shadowed',
        name.span,
        `"${name.words}" could be two lines here: ${found.pairKey} and ${found.shadows}.`,
        {
          severity: 'warning',
          aboard: 'Whoever reads the chart must not have to guess which line is meant.',
          remedy: `It is taken for ${found.pairKey}, the whole name; say the other in full if that is meant.`,
        },
      ),
    )
  }
  const lines = deck.hung.get(found.pairKey) ?? []
  const isPair = lines.length > 1
  const isShifted = lines.some(({ line }) => line.shifts)
  // A single line may be named with the side it goes to.
  const isSided = !isPair && found.side !== undefined && places.length > 1
  const meant = isSided ? places.filter(({ rail: on }) => onlySide(on) === found.side) : places
  if (!isPair && !isShifted && meant.length > 1) {
    deck.say(
      finding(
        'belay/side-missing',
        name.span,
        `${capitalised(name.words)} is a single line and the ${rail?.name} stands on both sides.`,
        {
          remedy: `Say "port ${name.words}" or "starboard ${name.words}".`,
          explains: lines.map(line => line.address),
        },
      ),
    )
    return
  }
  for (const { rail: on, place } of meant) {
    const side = found.side ?? (rails.length > 1 ? onlySide(on) : sideSaid)
    const seated = isPair && side ? lines.filter(line => line.side === side) : lines
    for (const line of seated) belayLine(deck, line, on, place, name)
  }
}

interface Stranger {
  readonly name: Name
  readonly told: Finding
}

const nowhere = 'Nobody can be sent there, and what is said to sit on it has no place.'

/** So many names are slips of the pen; of more, the sails whose lines they are were not written or not understood. */
const slips = 3

/** Names that are no line's, each by itself or, where they are many that no slip explains, as one. */
function strangersTold(strangers: readonly Stranger[]): readonly Finding[] {
  const unsure = new Map(strangers.filter(({ told }) => !told.fix).map(one => [nameKey(one.name.words), one]))
  const [first, ...others] = unsure.values()
  if (!first || unsure.size <= slips) return strangers.map(({ told }) => told)
  const names = others.map(({ name }) => `"${name.words}"`)
  return [
    ...strangers.flatMap(({ told }) => (told.fix ? [told] : [])),
    {
      ...first.told,
      message: `${first.told.message} Nor are there ${names.length} others that are belayed: ${listed(names)}.`,
      remedy: 'Write the sails whose lines they are, and hang their gear on them; or mend the names.',
      related: others.map(({ name }) => ({ at: name.span, message: 'and here' })),
      explains: [...unsure.values()].flatMap(({ told }) => told.explains ?? []),
    },
  ]
}

const onlySide = ({ lie }: Rail): Side | undefined =>
  lie === 'port' || lie === 'starboard' ? lie : undefined

function belayLine(deck: Deck, line: Hung, rail: Rail, place: Place, name: Name): void {
  if (deck.lifted.has(line.pairKey)) {
    sittingAt(deck, place, name.span).keptFree = true
    return
  }
  const before = deck.of.get(line.address)
  const seat: Seat = {
    rail: rail.code,
    number: place.number,
    pin: place.pin,
    side: place.side,
    span: name.span,
  }
  if (before && line.line.shifts && !before.other && before.side !== place.side) {
    deck.of.set(line.address, shifted(before, seat, line.line.shifts))
    sittingAt(deck, place, name.span).lines.push(line.address)
    return
  }
  if (before) {
    deck.say(
      finding(
        'belay/twice',
        name.span,
        `The ${line.words}${line.side ? `, ${line.side},` : ''} is belayed twice.`,
        {
          aboard: 'A hand sent to the wrong pin finds another line there.',
          remedy: 'Keep the place where it is made fast.',
          related: [{ at: before.span, message: `it is belayed here, on ${before.rail} ${before.pin}` }],
        },
      ),
    )
    return
  }
  deck.of.set(line.address, seat)
  sittingAt(deck, place, name.span).lines.push(line.address)
}

/** The two seats of a line that is shifted, the one with the wind from starboard first. */
function shifted(one: Seat, two: Seat, to: 'weather' | 'lee'): Seat {
  const first = to === 'weather' ? 'starboard' : 'port'
  return two.side === first ? { ...two, other: one } : { ...one, other: two }
}
