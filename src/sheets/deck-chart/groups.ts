import type { Line, Place, Rail, Rig, Side } from '../../rig/index.ts'
import { nameOnRail } from '../name-on-rail.ts'
import { isInboard, mastWithin, middleOf } from '../rail-view.ts'

/** One row of a list: a line at its pin, or a run of free places. */
export interface ListRow {
  /** '7', or '18–20' for a run of free places; empty for the second line of a shared pin. */
  readonly numbers: string
  /** Where its leader begins: the place, or the middle one of a run. */
  readonly place: Place | undefined
  readonly line: Line | undefined
  readonly name: string
}

/** The list of one rail on one side of the ship. */
export interface ListGroup {
  readonly rail: Rail | undefined
  readonly code: string
  readonly heading: string
  /** Mirrored rails share it, so that their lists can stand at one height. */
  readonly mark: string
  readonly side: Side
  /** Beside the ship with a leader to each pin, or in the outer column, found by its code. */
  readonly column: 'inner' | 'outer'
  /** x of its middle; undefined where its places are not known. */
  readonly x: number | undefined
  readonly rows: readonly ListRow[]
}

/** Every rail's list, and last the lines that are lifted, and those belayed nowhere. */
export function listGroups(rig: Rig): readonly ListGroup[] {
  const beside = outboardRails(rig)
  const groups: ListGroup[] = []
  const rowsOn = (side: Side) =>
    groups
      .filter(group => group.side === side && group.column === 'outer')
      .reduce((sum, { rows }) => sum + rows.length + 2, 0)
  for (const rail of rig.rails) {
    const column = beside.has(rail.code) ? 'inner' : 'outer'
    const emptier: Side = rowsOn('port') < rowsOn('starboard') ? 'port' : 'starboard'
    for (const [side, places] of sidesOf(rail, emptier))
      groups.push(groupOf({ rail, side, places, column, rig }))
  }
  const nowhere = rig.lines.filter(line => line.belay === undefined)
  return [
    ...groups,
    ...groupWithoutRail(
      'lifted',
      nowhere.filter(line => line.lifted !== undefined),
    ),
    ...groupWithoutRail(
      'belayed nowhere',
      nowhere.filter(line => line.lifted === undefined),
    ),
  ]
}

function groupWithoutRail(heading: string, lines: readonly Line[]): readonly ListGroup[] {
  if (lines.length === 0) return []
  const rows = lines.map(orphanRow)
  return [
    { rail: undefined, code: '', heading, mark: '', side: 'starboard', column: 'outer', x: undefined, rows },
  ]
}

const orphanRow = (line: Line): ListRow => ({ numbers: '', place: undefined, line, name: line.label })

/**
 * The rails that stand at the side with nothing outboard of them. Of two that overlap fore and aft the one
 * further out is taken: the other's leaders would run over it.
 */
function outboardRails(rig: Rig): ReadonlySet<string> {
  const atSide = rig.rails.filter(
    rail => (rail.lie === 'port' || rail.lie === 'starboard') && middleOf(rail) && !isInboard(rail, rig),
  )
  const covers = (rail: Rail, other: Rail) => {
    const [a, b] = [reach(rail), reach(other)]
    return (
      other !== rail &&
      other.lie === rail.lie &&
      a.from <= b.to &&
      b.from <= a.to &&
      isFurtherOut(other, rail)
    )
  }
  return new Set(atSide.filter(rail => !atSide.some(other => covers(rail, other))).map(rail => rail.code))
}

function isFurtherOut(a: Rail, b: Rail): boolean {
  const [ya, yb] = [Math.abs(middleOf(a)?.y ?? 0), Math.abs(middleOf(b)?.y ?? 0)]
  return ya > yb || (ya === yb && a.code < b.code)
}

function reach(rail: Rail): { from: number; to: number } {
  const xs = rail.places.flatMap(place => place.at?.x ?? [])
  return {
    from: xs.reduce<number>((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
    to: xs.reduce<number>((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
  }
}

/** A rail's places by side: a beam has its port half to port, what stands on the centreline goes where there is room. */
function sidesOf(rail: Rail, emptier: Side): readonly (readonly [Side, readonly Place[]])[] {
  if (rail.lie === 'port' || rail.lie === 'starboard') return [[rail.lie, rail.places]]
  if (rail.lie !== 'athwart' || !rail.places.some(place => place.side === 'port'))
    return [[emptier, rail.places]]
  const port = rail.places.filter(place => place.side === 'port')
  const other = rail.places.filter(place => place.side !== 'port')
  return other.length === 0
    ? [['port', port]]
    : [
        ['port', port],
        ['starboard', other],
      ]
}

interface GroupOf {
  readonly rail: Rail
  readonly side: Side
  readonly places: readonly Place[]
  readonly column: 'inner' | 'outer'
  readonly rig: Rig
}

function groupOf({ rail, side, places, column, rig }: GroupOf): ListGroup {
  const rows: ListRow[] = []
  const inOrder = shipOrder(rail, places)
  for (let at = 0; at < inOrder.length; ) {
    const place = inOrder[at] as Place
    if (place.lines.length > 0) {
      rows.push(...usedRows(place, rail, rig))
      at += 1
      continue
    }
    let end = at
    while (
      inOrder[end + 1]?.lines.length === 0 &&
      Math.abs((inOrder[end + 1]?.number ?? 0) - (inOrder[end]?.number ?? 0)) === 1
    )
      end += 1
    rows.push(freeRow(inOrder.slice(at, end + 1)))
    at = end + 1
  }
  return {
    rail,
    code: rail.code,
    heading: rail.label.toLowerCase(),
    mark: rail.mark,
    side,
    column,
    x: middleOf(rail)?.x ?? (rail.lie === 'round' ? mastWithin(rail, rig)?.foot?.x : undefined),
    rows,
  }
}

/** From forward aft, and across the ship from port: by where they stand, else by number. */
function shipOrder(rail: Rail, places: readonly Place[]): readonly Place[] {
  const along = (place: Place) =>
    (rail.lie === 'athwart' ? place.at?.y : rail.lie === 'round' ? 0 : place.at?.x) ?? 0
  return [...places].sort((a, b) => along(a) - along(b) || a.number - b.number)
}

function usedRows(place: Place, rail: Rail, rig: Rig): readonly ListRow[] {
  const lines = place.lines.flatMap(address => rig.lineAt.get(address) ?? [])
  return lines.map((line, index) => ({
    numbers: index === 0 ? place.pin : '',
    place: index === 0 ? place : undefined,
    line,
    name: nameOnRail(line, rail, rig),
  }))
}

function freeRow(places: readonly Place[]): ListRow {
  const [least, most] = [...places]
    .sort((a, b) => a.number - b.number)
    .filter((_, i, all) => i === 0 || i === all.length - 1)
  return {
    numbers: [least, most].flatMap(place => place?.pin ?? []).join('–'),
    place: places[Math.floor((places.length - 1) / 2)],
    line: undefined,
    name: 'free',
  }
}
