import type { Mark } from '../sheet.ts'
import type { Ruler } from '../typeface.ts'
import { centreMarks } from './centre-marks.ts'
import { deckWorks } from './deck-works.ts'
import { hiddenEdgeMarks } from './hidden-edges.ts'
import { hiddenMasts } from './hidden-masts.ts'
import { hullMarks } from './hull.ts'
import { mastMarks } from './masts.ts'
import { nameMarks } from './name-marks.ts'
import type { PlacedName } from './placed-name.ts'
import { sailMarks } from './sails.ts'
import type { Ship } from './ship.ts'
import { sparMarks } from './spars.ts'
import { chainPlates, shroudMarks, stayMarks } from './standing.ts'
import { standingByRule } from './standing-by-rule.ts'
import { strikerMarks } from './striker.ts'
import { thing } from './strokes.ts'

/**
 * The ship, from behind forward: stays, masts, shrouds, bowsprit and deck works, hull, squares, yards,
 * fore-and-aft sails, booms and gaffs; over them hidden edges, names and centres.
 */
export function shipMarks(ship: Ship, names: readonly PlacedName[], ruler: Ruler): readonly Mark[] {
  const { rig, view, lines, hull, sails, edges } = ship
  const spars = (kinds: readonly string[]) =>
    rig.spars.filter(spar => kinds.includes(spar.kind)).flatMap(spar => sparMarks(spar, view))
  const squares = sails.filter(({ sail }) => sail.kind !== 'fore-and-aft')
  const others = sails.filter(({ sail }) => sail.kind === 'fore-and-aft')
  const layer = (id: string, title: string, marks: readonly Mark[]): readonly Mark[] =>
    marks.length > 0 ? [thing(id, title, marks)] : []
  return [
    ...layer(
      'stays',
      'Stays',
      rig.standing.flatMap(item => (item.kind === 'stay' ? stayMarks(item, rig, view) : [])),
    ),
    ...layer(
      'masts',
      'Masts',
      rig.masts.flatMap(mast => mastMarks(mast, view)),
    ),
    ...layer('shrouds', 'Shrouds and backstays', shrouds(ship)),
    ...layer('bowsprit', 'Bowsprit', [
      ...(lines ? strikerMarks(rig, lines, view) : []),
      ...spars(['bowsprit']),
    ]),
    ...layer('deck-works', 'Deck works', lines ? deckWorks(rig.deck, lines, view) : []),
    ...(lines && hull ? [hullMarks(lines, hull, view)] : []),
    ...layer('chain-plates', 'Channels and chain plates', chains(ship)),
    ...layer(
      'square-sails',
      'Square sails',
      squares.map(sail => sailMarks(sail, view)),
    ),
    ...hiddenMasts(ship),
    ...layer('yards', 'Yards', spars(['studdingsail boom', 'yard'])),
    ...layer(
      'fore-and-aft-sails',
      'Fore-and-aft sails',
      others.map(sail => sailMarks(sail, view)),
    ),
    ...layer('booms-and-gaffs', 'Booms and gaffs', spars(['boom', 'gaff', 'slung yard', 'spar'])),
    ...hiddenEdgeMarks(edges),
    ...layer(
      'names',
      'Names of sails',
      names.map(name => nameMarks(name, ruler)),
    ),
    ...layer('centres', 'Centres', centreMarks(ship, ruler)),
  ]
}

function shrouds({ rig, lines, view }: Ship): readonly Mark[] {
  return [
    ...rig.standing.flatMap(item => (item.kind === 'stay' ? [] : shroudMarks(item, rig, view))),
    ...(lines ? standingByRule(rig, lines, view) : []),
  ]
}

function chains({ rig, lines, view }: Ship): readonly Mark[] {
  return rig.standing.flatMap(item =>
    item.kind === 'stay' || !lines ? [] : chainPlates(item, rig, lines, view),
  )
}
