import { type Figure, unknown } from '../../measure/index.ts'
import { type Name, nameKey, type Place } from '../../syntax/index.ts'
import type { LeadPoint } from '../line.ts'
import type { BelayingPoint } from '../rail.ts'
import type { Hung } from './hung.ts'
import type { Kit } from './kit.ts'
import { type Ground, locate, type Thing } from './place.ts'
import { type FindThing, type Surroundings, shipThings } from './thing.ts'

/** Blocks placed from other blocks deeper than this are taken for a loop. */
const deepest = 16

/** What the names in a line's places stand for: blocks of its gear, things of its host, things of the ship. */
export function groundOf(hung: Hung, outward: -1 | 0 | 1, around: Surroundings, depth = 0): Ground {
  const { line, hanging } = hung
  const anyThing = shipThings(around)
  const thing = (key: string): Figure<Thing> | undefined => {
    if (key === 'horse') {
      const horse = line.horse ?? horseOf(hanging?.kit)
      return horse ? horseThing(anyThing, horse.words, outward) : unknown('its horse is to be given')
    }
    const block = (hanging ? hanging.kit : line).blocks.get(key)
    if (block) {
      if (!block.place) return unknown(`the place of the ${block.name.words} is to be given`)
      if (depth > deepest) return unknown(`the ${block.name.words} is placed from itself`)
      const at = locate(block.place, groundOf(hung, outward, around, depth + 1))
      return at.known ? { known: true, value: { at: at.value } } : at
    }
    return (
      hanging?.things(key, outward) ??
      (line.deed?.on ? sparPart(nameKey(line.deed.on.words), key, around, outward) : undefined) ??
      anyThing(key, outward)
    )
  }
  return { outward, thing }
}

/** That there is no such horse is told where the line is said to run on it. */
const horseThing = (anyThing: FindThing, words: string, outward: number): Figure<Thing> =>
  anyThing(nameKey(words), outward) ?? unknown(`there is no ${words} on deck`)

/** The horse that a gear's sheet slides on: its other lines may name it too. */
const horseOf = (kit: Kit | undefined) => [...(kit?.lines.values() ?? [])].find(line => line.horse)?.horse

/** "gaff end" of an ensign halyard that hoists on the mainsail gaff. */
function sparPart(
  spar: string,
  key: string,
  around: Surroundings,
  outward: number,
): Figure<Thing> | undefined {
  const [, part] = /^(?:gaff|boom|yard|bowsprit) (\w+)$/.exec(key) ?? []
  return part ? shipThings(around)(`${spar} ${part}`, outward) : undefined
}

/** The way of a line from its pin outward, with so many `parts` on the last stretch; it stops where a place can't be told, and says why. */
export function leadOf(
  hung: Hung,
  belay: BelayingPoint | undefined,
  parts: number,
  around: Surroundings,
): { readonly lead: readonly LeadPoint[]; readonly leadUnknown: string | undefined } {
  const { line } = hung
  const stretch: readonly Place[] = [...line.through, ...(line.to ? [line.to] : [])]
  if (stretch.length === 0) return { lead: [], leadUnknown: 'its lead is not given' }
  const ground = groundOf(hung, outwardOf(hung, belay), around)
  const lead: LeadPoint[] = belay?.at ? [{ at: belay.at, what: 'belay', parts: 1 }] : []
  for (const [index, place] of stretch.entries()) {
    const at = locate(place, ground)
    if (!at.known) return { lead, leadUnknown: at.because }
    const last = index === stretch.length - 1
    lead.push({ at: at.value, what: place.from?.words ?? 'lead', parts: last ? parts : 1 })
  }
  return { lead, leadUnknown: belay?.at ? undefined : 'its belaying point has no place' }
}

/** A pair's lines lie on their own sides; a single line takes the side of its pin. */
function outwardOf({ side }: Hung, belay: BelayingPoint | undefined): -1 | 0 | 1 {
  if (side) return side === 'port' ? -1 : 1
  const y = belay?.at?.y ?? 0
  return y < -0.01 ? -1 : y > 0.01 ? 1 : 0
}

/** Whether a place is found at all, known or not: to tell a misspelt block from one that is to be given. */
export function isPlaceKnown(place: Place, ground: Ground): boolean {
  const isKnown = (name: Name | undefined) => !name || ground.thing(nameKey(name.words)) !== undefined
  return isKnown(place.from) && isKnown(place.abreast)
}
