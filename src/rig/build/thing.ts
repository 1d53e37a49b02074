import { type Figure, known, type Point3, point3, unknown } from '../../measure/index.ts'
import type { DeckThing } from '../deck.ts'
import type { Mast } from '../mast.ts'
import type { ForeAndAftSail, Sail, SquareSail, Studdingsail } from '../sail.ts'
import type { Boom, Spar, StuddingsailBoom } from '../spar.ts'
import type { Stay } from '../stay.ts'
import { mastOf, sectionKey } from './mast.ts'
import type { Thing } from './place.ts'

/** What a sail or a spar stands among: all that a place in its gear may name. */
export interface Surroundings {
  readonly masts: readonly Mast[]
  readonly mastAt: ReadonlyMap<string, Mast>
  readonly spars: ReadonlyMap<string, Spar>
  readonly stays: ReadonlyMap<string, Stay>
  /** Hatches, horses and other things on deck by name; of a mirrored pair the one to starboard. */
  readonly deck: ReadonlyMap<string, DeckThing>
}

/** What a name in a gear's place may stand for, and where that is. `outward` is the side "out" lies on. */
export type FindThing = (key: string, outward: number) => Figure<Thing> | undefined

const at = (point: Point3 | undefined, what: string): Figure<Thing> =>
  point ? known({ at: point }) : unknown(`the place of the ${what} is not given`)

/** Points of a mast: its step, its cap (head of the lower mast) and its truck. */
export function mastThing(mast: Mast, key: string): Figure<Thing> | undefined {
  if (key === 'mast')
    return mast.foot ? known({ at: mast.foot, rake: Math.tan(mast.rake) }) : at(mast.foot, mast.name)
  if (key !== 'cap' && key !== 'truck') return undefined
  const section = key === 'cap' ? mast.sections[0] : mast.sections.at(-1)
  if (!section) return unknown(`the ${mast.name} is not given by its parts`)
  if (!section.head) return unknown(`the height of the ${mast.name}'s ${key} is not given`)
  return known({ at: section.head, rake: Math.tan(mast.rake) })
}

/** What a thing that names its mast first may be placed from: points of that mast, and of any other by its whole name. */
export function mastsThing(name: string, masts: readonly Mast[]): (key: string) => Figure<Thing> | undefined {
  const own = mastOf(name, undefined, masts)
  return key => {
    const other = masts.find(mast => key === mast.name || key.startsWith(`${mast.word} `))
    const part = other && (key === other.name ? 'mast' : key.slice(other.word.length + 1))
    return (own && mastThing(own, key)) ?? (other && mastThing(other, part ?? key))
  }
}

/** The things of a square sail's gear: yard, foot yard, head, foot, leech, clew, reef cringle. */
export function squareThings(sail: SquareSail, around: Surroundings): FindThing {
  return (key, outward) => {
    switch (key) {
      case 'yard':
        return yardThing(around.spars.get(sail.yard))
      case 'yardarm':
        return yardarmThing(around.spars.get(sail.yard), outward)
      case 'foot yard':
        return yardThing(around.spars.get(sail.footYard ?? ''))
      case 'head':
        return edge(sail, sail.head)
      case 'foot':
        return edge(sail, sail.foot)
      case 'clew':
        return corner(sail, sail.foot, outward)
      case 'leech':
        return leech(sail, outward)
      case 'reef cringle':
        return reefCringle(sail, outward)
      default:
        return undefined
    }
  }
}

function yardThing(spar: Spar | undefined): Figure<Thing> | undefined {
  if (spar?.kind !== 'yard') return undefined
  return spar.middle
    ? known({ at: spar.middle, ...(spar.length === undefined ? {} : { half: spar.length / 2 }) })
    : unknown(`the height of the ${spar.name} is not given`)
}

function yardarmThing(spar: Spar | undefined, outward: number): Figure<Thing> | undefined {
  const yard = yardThing(spar)
  if (!yard?.known) return yard
  const { at: middle, half } = yard.value
  if (half === undefined) return unknown(`the length of the ${spar?.name} is not given`)
  return known({ at: point3(middle.x, half * outward, middle.z), half })
}

type Edge = SquareSail['head']

const unsized = (sail: Sail) => unknown(`the size of the ${sail.name} is not given`)

function edge(sail: SquareSail, width: Edge): Figure<Thing> {
  if (sail.x === undefined || !width) return unsized(sail)
  return known({ at: point3(sail.x, 0, width.height), half: width.width / 2 })
}

function corner(sail: SquareSail, width: Edge, outward: number): Figure<Thing> {
  if (sail.x === undefined || !width) return unsized(sail)
  return known({ at: point3(sail.x, (width.width / 2) * outward, width.height), half: width.width / 2 })
}

function leech(sail: SquareSail, outward: number): Figure<Thing> {
  const { x, head, foot } = sail
  if (x === undefined || !head || !foot) return unsized(sail)
  const down = (share: number) =>
    point3(
      x,
      (outward * (head.width + (foot.width - head.width) * share)) / 2,
      head.height + (foot.height - head.height) * share,
    )
  return known({ at: down(0), down })
}

function reefCringle(sail: SquareSail, outward: number): Figure<Thing> | undefined {
  const reef = sail.reefs[0]
  if (!reef) return undefined
  const { x, head, foot } = sail
  if (x === undefined || !head || !foot) return unsized(sail)
  const share = reef.depth / (head.height - foot.height)
  const half = reef.cringleOut ?? (head.width + (foot.width - head.width) * share) / 2
  return known({ at: point3(x, half * outward, head.height - reef.depth) })
}

/** The things of a fore-and-aft sail's gear: its corners, and the stay, boom, gaff and mast it is set on. */
export function foreAndAftThings(sail: ForeAndAftSail, around: Surroundings): FindThing {
  const spars = sail.on.flatMap(name => around.spars.get(name) ?? [])
  const boom = spars.find((spar): spar is Boom => spar.kind === 'boom')
  const sheetedTo = around.spars.get(sail.sheetedTo ?? '')
  const gaff = [...spars, ...(sheetedTo ? [sheetedTo] : [])].find(
    (spar): spar is Boom => spar.kind === 'gaff',
  )
  const slung = spars.find((spar): spar is Boom => spar.kind === 'slung yard')
  const stay = sail.on.map(name => around.stays.get(name)).find(one => one !== undefined)
  const mast = around.mastAt.get(sail.mast ?? '')
  return key => {
    switch (key) {
      case 'tack':
      case 'clew':
      case 'head':
      case 'throat':
      case 'peak': {
        const here = sail.corners.find(one => one.name === key)
        if (here) return known({ at: here.at })
        return cornersOf(sail).includes(key)
          ? unknown(`the ${key} of the ${sail.name} is not given`)
          : undefined
      }
      case 'leech':
        return edgeBetween(sail, ['peak', 'head'], 'clew')
      case 'luff':
        return edgeBetween(sail, ['throat', 'head'], 'tack')
      case 'foot':
        return edgeBetween(sail, ['tack'], 'clew')
      default:
        return (
          stayThing(stay, key) ??
          boomThing(boom, gaff, key) ??
          slungThing(slung, key) ??
          (mast && mastThing(mast, key))
        )
    }
  }
}

/** The corners a sail has: those it gives, and those its class is never without. */
function cornersOf({ class: kind, corners }: ForeAndAftSail): readonly string[] {
  const given = corners.map(({ name }) => name)
  if (kind === 'gaff sail' || kind === 'lugsail' || given.includes('throat'))
    return ['tack', 'clew', 'peak', 'throat']
  return given.includes('peak') ? ['tack', 'clew', 'peak'] : ['tack', 'clew', 'head']
}

/** A lug's or a lateen's yard: where its slings cross the mast, set and lowered, and its two ends. */
function slungThing(yard: Boom | undefined, key: string): Figure<Thing> | undefined {
  if (!yard) return undefined
  switch (key) {
    case 'yard':
      return at(yard.slings, `slings of the ${yard.name}`)
    case 'lowered yard':
      if (!yard.slings || yard.loweredHeight === undefined)
        return unknown(`the ${yard.name} has no lowered height`)
      return known({ at: point3(yard.slings.x, 0, yard.loweredHeight) })
    case 'yard heel':
      return at(yard.inner, `heel of the ${yard.name}`)
    case 'yard end':
      return at(yard.outer, `end of the ${yard.name}`)
    default:
      return undefined
  }
}

function edgeBetween(sail: ForeAndAftSail, from: readonly string[], to: string): Figure<Thing> {
  const top = sail.corners.find(one => from.includes(one.name))?.at
  const bottom = sail.corners.find(one => one.name === to)?.at
  if (!top || !bottom) return unknown(`the corners of the ${sail.name} are not given`)
  const down = (share: number) =>
    point3(top.x + (bottom.x - top.x) * share, 0, top.z + (bottom.z - top.z) * share)
  return known({ at: down(0), down })
}

function stayThing(stay: Stay | undefined, key: string): Figure<Thing> | undefined {
  if (!stay) return undefined
  if (key === 'stay head') return at(stay.from, 'head of the stay')
  if (key === 'stay foot') return at(stay.to, 'foot of the stay')
  return undefined
}

function boomThing(boom: Boom | undefined, gaff: Boom | undefined, key: string): Figure<Thing> | undefined {
  switch (key) {
    case 'boom':
    case 'boom jaws':
      return boom && at(boom.inner, `inner end of the ${boom.name}`)
    case 'boom end':
      return boom && at(boom.outer, `end of the ${boom.name}`)
    case 'gaff':
    case 'jaws':
      return gaff && at(gaff.inner, `jaws of the ${gaff.name}`)
    case 'gaff end':
      return gaff && at(gaff.outer, `end of the ${gaff.name}`)
    case 'lowered jaws': {
      if (!gaff) return undefined
      if (!gaff.inner || gaff.loweredHeight === undefined)
        return unknown(`the ${gaff.name} has no lowered height`)
      return known({ at: point3(gaff.inner.x, 0, gaff.loweredHeight) })
    }
    default:
      return undefined
  }
}

/** The things of a studdingsail's gear: its corners, the yardarm it hoists to, and the end of its boom; all on the line's own side. */
export function studdingsailThings(sail: Studdingsail, around: Surroundings): FindThing {
  const yard = around.spars.get(sail.yard ?? '')
  const boom = sail.on.map(name => around.spars.get(name)).find(spar => spar?.kind === 'studdingsail boom')
  return (key, outward) => {
    const here = sail.corners.find(one => one.name === key)
    if (here) return known({ at: { ...here.at, y: here.at.y * outward } as Point3 })
    switch (key) {
      case 'clew':
      case 'tack':
      case 'outer head':
      case 'inner head':
        return unsized(sail)
      case 'yard':
        return yardThing(yard)
      case 'yardarm':
        return yardarmThing(yard, outward)
      default:
        return boom && studdingsailBoomThing(boom, key, outward)
    }
  }
}

function studdingsailBoomThing(
  boom: StuddingsailBoom,
  key: string,
  outward: number,
): Figure<Thing> | undefined {
  const [point, what] =
    key === 'boom' ? [boom.inner, 'heel'] : key === 'boom end' ? [boom.outer, 'end'] : [undefined, undefined]
  if (what === undefined) return undefined
  return at(point && point3(point.x, point.y * outward, point.z), `${what} of the ${boom.name}`)
}

/** The things of a spar that carries gear of its own: a yard without sail, a boom, a gaff. */
export function sparThings(spar: Spar, around: Surroundings): FindThing {
  const mast = around.mastAt.get(spar.mast ?? '')
  return (key, outward) => {
    if (spar.kind === 'yard') {
      if (key === 'yard') return yardThing(spar)
      if (key === 'yardarm') return yardarmThing(spar, outward)
    } else if (spar.kind === 'studdingsail boom') {
      const end = studdingsailBoomThing(spar, key, outward)
      if (end) return end
    } else {
      const ends =
        boomThing(spar.kind === 'boom' ? spar : undefined, spar.kind === 'gaff' ? spar : undefined, key) ??
        (spar.kind === 'slung yard' ? slungThing(spar, key) : undefined) ??
        ownEnd(spar, key)
      if (ends) return ends
    }
    return mast && mastThing(mast, key)
  }
}

/** The heel and the end of any spar that carries gear of its own: "bowsprit heel", "spar end". */
function ownEnd({ kind, name, inner, outer }: Boom, key: string): Figure<Thing> | undefined {
  if (key === kind || key === `${kind} heel`) return at(inner, `heel of the ${name}`)
  if (key === `${kind} end`) return at(outer, `end of the ${name}`)
  return undefined
}

/** Things anywhere in the ship, by their whole names: "mainsail gaff end", "fore cap", "main topmast". */
export function shipThings(around: Surroundings): FindThing {
  return (key, outward) => {
    const whole = around.spars.get(key)
    if (whole)
      return whole.kind === 'yard' ? yardThing(whole) : at(whole.inner, `inner end of the ${whole.name}`)
    const stay = around.stays.get(key)
    if (stay) return at(stay.from, `head of the ${stay.name}`)
    const onDeck = around.deck.get(key)
    if (onDeck) return deckThing(onDeck)
    const [, owner = '', part = ''] = /^(.*) (end|heel|jaws|yardarm|head|foot|cap|truck)$/.exec(key) ?? []
    const spar = around.spars.get(owner)
    if (spar?.kind === 'yard' && part === 'yardarm') return yardarmThing(spar, outward)
    if (spar?.kind === 'studdingsail boom')
      return studdingsailBoomThing(spar, part === 'end' ? 'boom end' : 'boom', outward)
    if (spar && spar.kind !== 'yard') {
      if (part === 'heel') return at(spar.inner, `heel of the ${spar.name}`)
      return boomThing(spar, spar, part === 'end' ? 'gaff end' : part)
    }
    const led = around.stays.get(owner)
    if (led)
      return part === 'foot' ? at(led.to, `foot of the ${led.name}`) : at(led.from, `head of the ${led.name}`)
    const mast = around.masts.find(one => one.word === owner || one.name === owner)
    return (mast && mastThing(mast, part)) ?? mastSection(around.masts, key)
  }
}

/** The middle of a thing's top; a share "out" is of its half breadth. */
function deckThing({ x0, x1, y0, y1, top }: DeckThing): Figure<Thing> {
  return known({ at: point3((x0 + x1) / 2, (y0 + y1) / 2, top), half: Math.abs(y1 - y0) / 2 })
}

function mastSection(masts: readonly Mast[], key: string): Figure<Thing> | undefined {
  for (const mast of masts) {
    if (key === mast.name) return at(mast.foot, mast.name)
    const section = mast.sections.find(one => key === sectionKey(mast, one))
    if (section) return at(section.head, key)
  }
  return undefined
}

/** The things of whatever a gear is hung on. */
export function thingsOf(host: Sail | Spar, around: Surroundings): FindThing {
  switch (host.kind) {
    case 'square':
      return squareThings(host, around)
    case 'fore-and-aft':
      return foreAndAftThings(host, around)
    case 'studdingsail':
      return studdingsailThings(host, around)
    default:
      return sparThings(host, around)
  }
}
