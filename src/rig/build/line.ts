import { metres } from '../../measure/index.ts'
import { nameKey, type Reference } from '../../syntax/index.ts'
import { functionOf } from '../deed.ts'
import type { Line, LineDeed, Rope } from '../line.ts'
import { aboveTackle, velocityRatio } from '../purchase.ts'
import type { BelayingPoint, Rail, Side } from '../rail.ts'
import type { Survey } from '../survey.ts'
import type { Belayed } from './belay.ts'
import type { Hung } from './hung.ts'
import { kitLinesOf } from './kit.ts'
import { groundOf, leadOf } from './lead.ts'
import type { LineNames } from './line-names.ts'
import { capitalised, type Say, unknownName } from './say.ts'
import type { Surroundings } from './thing.ts'

/** What is needed to finish the lines: who belays where, what the names mean, and the ship around. */
export interface Finishing {
  readonly belayed: Belayed
  readonly names: LineNames
  readonly pairs: ReadonlyMap<string, readonly Hung[]>
  readonly around: Surroundings
  readonly stations: ReadonlyMap<string, string>
  readonly lifted: ReadonlyMap<string, string>
  readonly surveys: ReadonlyMap<string, Survey>
  readonly say: Say
}

/** A hung line as the rig has it: belayed, led, and with the lines that answer it. */
export function finishLine(hung: Hung, finishing: Finishing): Line {
  const { line } = hung
  const { rails } = finishing.belayed
  const berth = finishing.belayed.of.get(hung.address)
  const rail = berth && rails.find(one => one.code === berth.rail)
  const belay = berth && belayingPoint(rails, berth)
  const deed = deedOf(hung, finishing)
  const { label, labelOnMast, labelOnSail } = labelsOf(hung)
  const purchase = line.rove.map(part => nameKey(part.words))
  const parts = velocityRatio(purchase) ?? 1
  const tackleBelow = aboveTackle(purchase) !== undefined || (line.below && parts > 1)
  const led = leadOf(hung, belay, tackleBelow ? 1 : parts, finishing.around)
  return {
    address: hung.address,
    pairKey: hung.pairKey,
    words: hung.words,
    label,
    labelOnMast,
    labelOnSail,
    short: line.short,
    nicknames: line.nicknames,
    aside: undefined,
    foreign: false,
    kind: kindOf(hung.own),
    pair: line.pair,
    side: hung.side,
    host: hostOf(hung),
    mast: hung.mast,
    deed,
    function: deed && functionOf(deed),
    rope: ropeOf(hung),
    middledWith: otherHalf(hung, finishing),
    whipped: line.whipped,
    coloured: line.coloured,
    conjectural: line.conjectural,
    credited: line.credited,
    lifted: finishing.lifted.get(hung.pairKey),
    survey: finishing.surveys.get(hung.pairKey),
    purchase,
    tackleBelow,
    hands: line.hands,
    counterparts: counterpartsOf(hung, finishing),
    answeredBy: line.answeredBy,
    lead: led.lead,
    leadUnknown: led.leadUnknown,
    swings: swingOf(deed, led),
    travel: line.travels === undefined ? undefined : metres(line.travels),
    cut: line.cut === undefined ? undefined : metres(line.cut),
    shifts: line.shifts,
    horse: horseOf(hung, finishing),
    belay,
    otherBelay: berth?.other && belayingPoint(rails, berth.other),
    station: finishing.stations.get(hung.pairKey) ?? rail?.station,
    span: line.span,
    belaySpan: berth?.span,
  }
}

function belayingPoint(
  rails: readonly Rail[],
  { rail: code, number }: { readonly rail: string; readonly number: number },
): BelayingPoint | undefined {
  const place = rails.find(rail => rail.code === code)?.places[number - 1]
  return place && { rail: code, number, pin: place.pin, side: place.side, at: place.at }
}

function horseOf({ line: { horse }, hanging }: Hung, { around, say }: Finishing): string | undefined {
  if (!horse) return undefined
  const key = nameKey(horse.words)
  if (around.deck.has(key)) return key
  const unknown = unknownName('thing on deck', horse, around.deck.keys(), hanging ? [hanging.host.name] : [])
  say(around.deck.size > 0 ? unknown : { ...unknown, ...withoutDeck })
  return undefined
}

/** Told once, however many horses are named. */
const withoutDeck = {
  message: 'The text has no page of the deck, and lines run on horses there.',
  remedy:
    'Declare each on a page "deck", as in "main horse, horse from 14.76 m to 14.84 m aft, 2.20 m each side, top 2.10 m up".',
}

function hostOf({ hanging }: Hung): Line['host'] {
  if (!hanging) return undefined
  const { kind, name } = hanging.host
  const isSail = kind === 'square' || kind === 'fore-and-aft' || kind === 'studdingsail'
  return { kind: isSail ? 'sail' : 'spar', name }
}

function labelsOf({ line, label, hanging, mast }: Hung): Pick<Line, 'label' | 'labelOnMast' | 'labelOnSail'> {
  const called = line.called
  const whole = called ?? label
  const word = mast?.replace(/ mast$/, '')
  const onMast = word && whole.toLowerCase().startsWith(`${word} `) ? whole.slice(word.length + 1) : whole
  return {
    label: capitalised(whole),
    labelOnMast: capitalised(onMast),
    labelOnSail: capitalised(called ?? (hanging ? line.name.words : whole)),
  }
}

function ropeOf({ line: { rope } }: Hung): Rope | undefined {
  if (!rope) return undefined
  const diameter = rope.round ? rope.size.value / Math.PI : rope.size.value
  return { diameter: metres(diameter), material: rope.material?.words }
}

/** What it does, and whether what it acts on is there. */
function deedOf(hung: Hung, { around }: Finishing): LineDeed | undefined {
  const { deed } = hung.line
  if (!deed) return undefined
  const object = nameKey(deed.object.words)
  const ground = groundOf(hung, 1, around)
  const on = deed.on && ground.thing(nameKey(deed.on.words)) !== undefined
  const found = deed.on ? on === true : ground.thing(object) !== undefined
  return { verb: deed.deed, object, direction: deed.direction, found }
}

/** The other line of its rope: of a pair the one on the same side. */
function otherHalf(hung: Hung, finishing: Finishing): string | undefined {
  const name = hung.line.middledWith
  if (!name) return undefined
  return answering(hung, { name, reach: undefined, span: name.span }, finishing).find(
    one => one !== hung.address,
  )
}

/** Hauling draws the yardarm toward the last block before it, whatever the brace is called. */
function swingOf(
  deed: LineDeed | undefined,
  { lead, leadUnknown }: Pick<Line, 'lead' | 'leadUnknown'>,
): Line['swings'] {
  const [block, arm] = lead.slice(-2)
  if (deed?.verb !== 'swings' || !deed.object.endsWith('yard') || leadUnknown !== undefined) return undefined
  if (!block || !arm || block.at.x === arm.at.x) return undefined
  return block.at.x > arm.at.x ? 'aft' : 'forward'
}

const kinds = [
  'throat halyard',
  'peak halyard',
  'gaff downhaul',
  'reef tackle',
  'reef pendant',
  'topping lift',
  'boom guy',
  'running backstay',
  'slab line',
  'spilling line',
  'tricing line',
  'bunt leechline',
  'halyard',
  'downhaul',
  'clewgarnet',
  'clewline',
  'leechline',
  'buntline',
  'bowline',
  'brail',
  'outhaul',
  'inhaul',
  'preventer',
  'brace',
  'vang',
  'sheet',
  'tack',
  'lift',
  'guy',
] as const

/** The kind of line: the longest known kind its own words end with, else their last word. */
function kindOf(own: string): string {
  const known = kinds.find(kind => own.endsWith(kind) && (own === kind || own.at(-kind.length - 1) === ' '))
  return known ?? own.split(' ').at(-1) ?? own
}

/** Addresses of the lines to be eased when this one is hauled. A line the gear has left out falls away. */
function counterpartsOf(hung: Hung, finishing: Finishing): readonly string[] {
  const { line } = hung
  if (line.against.length + line.notAgainst.length === 0) return []
  const refused = new Set(line.notAgainst.flatMap(one => answering(hung, one, finishing)))
  const all = line.against.flatMap(one => answering(hung, one, finishing))
  return [...new Set(all)].filter(address => !refused.has(address) && address !== hung.address)
}

function answering(hung: Hung, reference: Reference, finishing: Finishing): readonly string[] {
  const { name, reach } = reference
  const pairKeys = linesMeant(hung, name, finishing)
  return pairKeys.flatMap(pairKey => {
    const pair = finishing.pairs.get(pairKey) ?? []
    return sidesMeant(pair, hung.side, reach).map(line => line.address)
  })
}

/** A name in a gear means a line of the gear first, then one anywhere in the ship. */
function linesMeant(hung: Hung, name: Reference['name'], finishing: Finishing): readonly string[] {
  const key = nameKey(name.words)
  const { hanging } = hung
  const own = hanging ? kitLinesOf(hanging.kit, key).map(line => `${hanging.host.name} ${line}`) : []
  if (own.length > 0) return own.flatMap(words => finishing.names.whole(words) ?? [])
  const left = hanging?.kit.left
  if (left && [...left].some(gone => gone === key || `${gone}s` === key)) return []
  const any = finishing.names.findAll(name, hung.words)
  if (any.length === 0 && !left) finishing.say(unknownName('line', name, finishing.names.offers()))
  return any
}

function sidesMeant(
  pair: readonly Hung[],
  own: Side | undefined,
  reach: Reference['reach'],
): readonly Hung[] {
  if (pair.length < 2 || !own || reach === 'every') {
    return reach === 'port' || reach === 'starboard' ? pair.filter(line => line.side === reach) : pair
  }
  if (reach === 'other') return pair.filter(line => line.side !== own)
  const side = reach === 'port' || reach === 'starboard' ? reach : own
  return pair.filter(line => line.side === side)
}
