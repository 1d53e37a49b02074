import type { Finding, Found } from '../../findings/index.ts'
import { type Name, nameKey, type Page, type PageKind, type Statement } from '../../syntax/index.ts'
import type { Source, Span } from '../../text/index.ts'
import type { Rail } from '../rail.ts'
import type { Rig } from '../rig.ts'
import type { Sail } from '../sail.ts'
import type { Spar } from '../spar.ts'
import { buildAllowances } from './allowance.ts'
import { belayAll } from './belay.ts'
import { pagesAsMeant } from './belay-meant.ts'
import { buildBlocks } from './block.ts'
import { buildCanvas } from './canvas.ts'
import { buildDeckThings } from './deck.ts'
import { judgeEditions } from './edition.ts'
import { buildEvolution, sailAbove } from './evolution.ts'
import { buildGears } from './gears.ts'
import { buildHull } from './hull.ts'
import { byPair, type Hanging, type Hung, hang, hungLines, looseLines } from './hung.ts'
import { judgeKits } from './judge-kit.ts'
import { labelled, labelsOf } from './label.ts'
import { buildLifted } from './lifted.ts'
import { withLikes } from './like.ts'
import { finishLine } from './line.ts'
import { lineNames } from './line-names.ts'
import { buildMast } from './mast.ts'
import { buildRails } from './rail.ts'
import { buildSail } from './sail.ts'
import { finding, type Say, unknownName } from './say.ts'
import { buildSpars } from './spar.ts'
import { buildStation } from './station.ts'
import { buildStay } from './stay.ts'
import { judgeClauses } from './suits.ts'
import { buildSurveys } from './survey.ts'
import type { Surroundings } from './thing.ts'
import { buildTongues } from './tongue.ts'
import { buildVessel } from './vessel.ts'

/**
 * Makes the rig that pages of text declare. Whatever can't be made sense of is left out, with a finding; what
 * remains is whole: every name in it resolves.
 */
export function buildRig(pages: readonly Page[], sources: readonly Source[]): Found<Rig> {
  const findings: Finding[] = []
  const told = new Map<string, number>()
  const say: Say = one => {
    // What is copied by "like" would be told again, of the copy, at the same place.
    const place = `${one.rule} ${one.at.source} ${one.at.start} ${one.at.end}`
    // A name that stands for nothing is missed once, wherever it is spoken.
    const missed = one.rule === 'name/unknown' ? one.message : place
    const index = told.get(place) ?? told.get(missed)
    const before = index === undefined ? undefined : findings[index]
    if (!before || index === undefined) {
      const at = findings.push(one) - 1
      for (const key of [place, missed]) told.set(key, at)
      return
    }
    findings[index] = told.has(place) ? withWhatFollows(before, one) : missedAgain(before, one)
    told.set(place, index)
  }
  const meant = pagesAsMeant(pages, say)
  judgeClauses(meant, say)
  judgeEditions(meant, say)
  return { value: assemble(meant, sources, say), findings }
}

const withWhatFollows = (before: Finding, { explains = [] }: Finding): Finding => ({
  ...before,
  explains: [...(before.explains ?? []), ...explains],
})

/** The same name once more: its place beside the first and, where it is sure how to read it, mended with it. */
function missedAgain(before: Finding, one: Finding): Finding {
  const { fix } = before
  return {
    ...withWhatFollows(before, one),
    related: [...before.related, { at: one.at, message: 'and here' }, ...one.related],
    ...(fix && one.fix ? { fix: { ...fix, edits: [...fix.edits, ...one.fix.edits] } } : {}),
  }
}

function assemble(pages: readonly Page[], sources: readonly Source[], say: Say): Rig {
  const entry: Span = { source: sources[0]?.name ?? '', start: 0, end: 0 }
  const gears = buildGears(pages, say)
  const mastEntries = once(entriesOf(pages, 'masts', 'mast', say), 'mast', say)
  const masts = mastEntries.map(buildMast)
  const sparEntries = once(entriesOf(pages, 'spars', 'spar', say), 'spar', say)
  const spars = buildSpars(sparEntries, masts, say)
  const stayEntries = once(entriesOf(pages, 'stays', 'stay', say), 'stay', say)
  const standing = stayEntries.map(one => buildStay(one, masts))
  const deckEntries = blocksOf(pages, 'deck')
  const deck = deckEntries.flatMap(one => buildDeckThings(one, say))
  const around: Surroundings = {
    masts,
    mastAt: new Map(masts.map(mast => [mast.name, mast])),
    spars: new Map(spars.map(spar => [spar.name, spar])),
    stays: new Map(standing.flatMap(one => (one.kind === 'stay' ? [[one.name, one] as const] : []))),
    deck: new Map(deck.map(one => [one.name, one])),
  }
  const sailEntries = once(entriesOf(pages, 'sails', 'sail', say), 'sail', say)
  const bareSails = sailEntries.flatMap(one => buildSail(one, around, say) ?? [])
  const hangings = hangAll([...bareSails, ...spars], [...sailEntries, ...sparEntries], gears, around, say)
  const hung = uniqueLines(
    [
      ...hangings.flatMap(hungLines),
      ...entriesOf(pages, 'lines', 'line', say).flatMap(one => looseLines(one, masts, say)),
    ],
    say,
  )
  const names = lineNames(hung, bareHosts([...sailEntries, ...sparEntries], hangings))
  const railEntries = once(entriesOf(pages, 'rails', 'rail', say), 'rail', say)
  const rails = uniqueRails(
    railEntries.flatMap(one => buildRails(one, masts, say)),
    say,
  )
  const lifted = buildLifted(pages, hung, names, say)
  const belayed = belayAll(pages, rails, hung, { names, lifted }, say)
  judgeKits(gears, hangings, around, say)

  const stationEntries = once(blocksOf(pages, 'stations'), 'station', say)
  const stationNames = stationEntries.map(one => nameKey(one.name?.words ?? ''))
  const stations = stationEntries.map(one => buildStation(one, rails, names, stationNames, say))
  const stationOfRail = new Map(stations.flatMap(one => one.rails.map(code => [code, one.name] as const)))
  const manned = belayed.rails.map(rail => ({ ...rail, station: stationOfRail.get(rail.code) }))
  const pairs = byPair(hung)
  const finishing = {
    belayed: { ...belayed, rails: manned },
    names,
    pairs,
    around,
    stations: new Map(stations.flatMap(one => one.lines.map(pairKey => [pairKey, one.name] as const))),
    lifted,
    surveys: buildSurveys(pages, names, say),
    say,
  }
  const known = {
    names,
    things: [...bareSails, ...spars, ...standing, ...masts, ...rails].map(one => one.name),
  }
  const labels = labelsOf(pages, known, say)
  const lines = hung.map(one => finishLine(one, finishing)).map(line => labelled(line, labels))
  const crews = hungGears(hangings, hung)
  const beside = {
    entries: [
      ...[...mastEntries, ...sparEntries, ...stayEntries, ...sailEntries],
      ...[...railEntries, ...deckEntries, ...stationEntries],
    ],
    lines: hung,
    pins: belayed.leaves,
  }
  const sails = bareSails.map(sail => labelledSail(withGear(sail, bareSails, crews), labels))
  const declared = new Set(sailEntries.map(one => nameKey(one.name?.words ?? '')))
  return {
    vessel: buildVessel(pages, entry, say),
    hull: buildHull(pages, say),
    masts,
    spars: spars.map(spar => labelled(spar, labels)),
    standing,
    sails,
    rails: manned.map(rail => labelled(rail, labels)),
    lines,
    deck,
    stations,
    blocks: buildBlocks(hangings, hung),
    tongues: buildTongues(pages, known, say),
    order: buildOrder(pages, sails, declared, say),
    canvas: buildCanvas(pages, sails, declared, say),
    allowances: buildAllowances(pages, { names, sails, rails, spars }, beside, say),
    sources,
    isVessel: pages.some(page => page.kind === 'vessel'),
    ...indexed({ lines, rails: manned, masts, spars, sails, stations }),
  }
}

/** Things whose gear could not be made: that their lines are unknown follows from it. */
function bareHosts(entries: readonly Statement[], hangings: readonly Hanging[]): readonly string[] {
  const hung = new Set(hangings.map(({ host }) => host.name))
  const wants = entries.filter(entry => entry.block.some(one => one.kind === 'hang') || entry.doubtful)
  return wants.map(entry => nameKey(entry.name?.words ?? '')).filter(name => !hung.has(name))
}

const labelledSail = (sail: Sail, labels: ReturnType<typeof labelsOf>): Sail => labelled(sail, labels)

const blocksOf = (pages: readonly Page[], kind: PageKind): readonly Statement[] =>
  pages.filter(page => page.kind === kind).flatMap(page => page.block)

const entriesOf = (pages: readonly Page[], kind: PageKind, what: string, say: Say): readonly Statement[] =>
  withLikes(blocksOf(pages, kind), what, say)

/** Entries with each name taken once; a second of a name is a finding. */
function once(entries: readonly Statement[], what: string, say: Say): readonly Statement[] {
  const first = new Map<string, Name>()
  return entries.filter(({ name }) => {
    if (!name) return false
    const key = nameKey(name.words)
    const before = first.get(key)
    if (before) say(twice(what, name.words, name.span, before.span))
    else first.set(key, name)
    return !before
  })
}

const twice = (what: string, name: string, at: Span, before: Span) =>
  finding('name/twice', at, `The ${what} "${name}" is given twice.`, {
    aboard: 'Two things of one name are mixed up when they are called.',
    remedy: 'Rename one of them, or strike it out.',
    related: [{ at: before, message: 'it is first given here' }],
    explains: [nameKey(name)],
  })

function uniqueLines(lines: readonly Hung[], say: Say): readonly Hung[] {
  const first = new Map<string, Hung>()
  const repeated = new Set<string>()
  return lines.filter(line => {
    const before = first.get(line.address)
    if (!before) first.set(line.address, line)
    else if (!repeated.has(line.pairKey)) {
      repeated.add(line.pairKey)
      say(twice('line', line.words, line.line.span, before.line.span))
    }
    return !before
  })
}

function uniqueRails(rails: readonly Rail[], say: Say): readonly Rail[] {
  const first = new Map<string, Rail>()
  return rails.filter(rail => {
    const before = first.get(rail.code)
    if (before) {
      say(
        finding(
          'name/twice',
          rail.span,
          `The ${rail.name} and the ${before.name} are both marked ${rail.mark}.`,
          {
            aboard: 'A pin is called by its rail’s mark; two rails of one mark send hands to the wrong one.',
            remedy: 'Give one of them another mark.',
            related: [{ at: before.span, message: 'the other stands here' }],
          },
        ),
      )
    } else first.set(rail.code, rail)
    return !before
  })
}

function hangAll(
  hosts: readonly (Sail | Spar)[],
  entries: readonly Statement[],
  gears: Parameters<typeof hang>[2],
  around: Surroundings,
  say: Say,
): readonly Hanging[] {
  const entryOf = new Map(entries.map(one => [one.name?.span, one] as const))
  return hosts.flatMap(host => {
    const entry = entryOf.get(host.span)
    return (entry && hang(host, entry, gears, around, say)) ?? []
  })
}

/** Each gear hung, with the lines made of it. */
interface HungGear {
  readonly hanging: Hanging
  readonly lines: readonly Hung[]
}

function hungGears(hangings: readonly Hanging[], hung: readonly Hung[]): ReadonlyMap<Sail | Spar, HungGear> {
  const lines = new Map<Hanging, Hung[]>(hangings.map(hanging => [hanging, []]))
  for (const line of hung) if (line.hanging) lines.get(line.hanging)?.push(line)
  return new Map([...lines].map(([hanging, made]) => [hanging.host, { hanging, lines: made }]))
}

function withGear(sail: Sail, sails: readonly Sail[], gears: ReadonlyMap<Sail | Spar, HungGear>): Sail {
  const own = gears.get(sail)
  if (!own) return sail
  const { kit } = own.hanging
  const above = sailAbove(sail, sails)
  const crew = { above: (above && gears.get(above)?.lines) ?? [], ...own }
  return {
    ...sail,
    gear: kit.name.words,
    shackled: kit.shackled,
    toSet: buildEvolution(kit.toSet, 'set', crew),
    toDouse: buildEvolution(kit.toDouse, 'douse', crew),
  }
}

/** "set mainsail then foresail then ...". */
function buildOrder(
  pages: readonly Page[],
  sails: readonly Sail[],
  declared: ReadonlySet<string>,
  say: Say,
): readonly string[] {
  const known = new Set(sails.map(sail => sail.name))
  return pages
    .filter(page => page.kind === 'set')
    .flatMap(page => page.names)
    .flatMap(name => {
      if (known.has(nameKey(name.words))) return [nameKey(name.words)]
      if (!declared.has(nameKey(name.words))) say(unknownName('sail', name, known, [], 'then'))
      return []
    })
}

function indexed({
  lines,
  rails,
  masts,
  spars,
  sails,
  stations,
}: Pick<Rig, 'lines' | 'rails' | 'masts' | 'spars' | 'sails' | 'stations'>) {
  return {
    lineAt: new Map(lines.map(line => [line.address, line])),
    pairAt: byPair(lines),
    placeAt: new Map(rails.flatMap(rail => rail.places.map(place => [place.address, place] as const))),
    railAt: new Map(rails.map(rail => [rail.code, rail])),
    mastAt: new Map(masts.map(mast => [mast.name, mast])),
    sparAt: new Map(spars.map(spar => [spar.name, spar])),
    sailAt: new Map(sails.map(sail => [sail.name, sail])),
    stationAt: new Map(stations.map(station => [station.name, station])),
  }
}
