import type { Name, Place } from '../../syntax/index.ts'
import { strangersInOrders } from './evolution.ts'
import type { Hanging, Hung } from './hung.ts'
import { isOfTheGear, type Kit, notOfTheGear } from './kit.ts'
import { groundOf, isPlaceKnown } from './lead.ts'
import { finding, type Say, unknownName } from './say.ts'
import type { Surroundings } from './thing.ts'

/**
 * Names in gears that mean nothing: told once for the gear as hung on the first sail that shows it, and once more
 * only where another text says it.
 */
export function judgeKits(
  gears: ReadonlyMap<string, Kit>,
  hangings: readonly Hanging[],
  around: Surroundings,
  say: Say,
): void {
  const told = new Set<string>()
  const tellOnce = (name: Name, tell: () => void) => {
    const place = `${name.span.source} ${name.span.start}`
    if (told.has(place)) return
    told.add(place)
    tell()
  }
  // A gear that nothing is said of is the same kit on every sail.
  const judged = new Set<Kit>()
  for (const hanging of hangings) {
    const { kit } = hanging
    if (kit.lines.size === 0) continue
    if (!judged.has(kit)) {
      const strangers = [...strangersInOrders(hanging), ...strangersInAnswers(kit)]
      for (const name of strangers) tellOnce(name, () => say(notOfTheGear(kit, name)))
    }
    judged.add(kit)
    const ground = groundOf(asIfHung(hanging), 1, around)
    for (const place of placesOf(hanging.kit)) {
      const name = place.from ?? place.abreast
      if (!name || isPlaceKnown(place, ground)) continue
      tellOnce(name, () => say(unknownPlace(hanging, place, name)))
    }
  }
  for (const kit of gears.values()) {
    for (const name of strangersInAnswers(kit)) tellOnce(name, () => say(notOfTheGear(kit, name)))
  }
}

/** Lines named as answering or as the other half of a rope, that neither are nor ever were in the gear. Names of other sails' lines hold more words and are left. */
function strangersInAnswers(kit: Kit): readonly Name[] {
  const strangers: Name[] = []
  const judge = (name: Name) => {
    if (!isOfTheGear(kit, name)) strangers.push(name)
  }
  for (const { against, notAgainst, middledWith } of kit.lines.values()) {
    for (const { name } of against) judge(name)
    for (const { name } of notAgainst) judge(name)
    if (middledWith) judge(middledWith)
  }
  return strangers
}

const placesOf = (kit: Kit): readonly Place[] => [
  ...[...kit.lines.values()].flatMap(line => [...line.through, ...(line.to ? [line.to] : [])]),
  ...[...kit.blocks.values()].flatMap(block => block.place ?? []),
]

/** A line of the hanging, only to ask what its places mean. */
function asIfHung(hanging: Hanging): Hung {
  const [line] = hanging.kit.lines.values()
  if (!line) throw new Error('a gear without lines has no places to judge')
  return {
    address: '',
    pairKey: '',
    words: '',
    own: '',
    label: '',
    side: undefined,
    line,
    hanging,
    mast: hanging.host.mast,
  }
}

function unknownPlace(hanging: Hanging, place: Place, name: Name) {
  const blocks = [...hanging.kit.blocks.values()].map(block => block.name.words)
  const near = unknownName('place', name, [
    ...blocks,
    'yard',
    'foot yard',
    'clew',
    'tack',
    'head',
    'foot',
    'cap',
    'truck',
  ])
  return finding(
    'name/unknown',
    place.span,
    `There is no "${name.words}" on the ${hanging.host.name} or in its gear.`,
    {
      remedy: near.remedy ?? 'Name a block of the gear, or give its place.',
    },
  )
}
