import { partsOf, shapeOf } from '../clip.ts'
import { cornersOf, grown, type Rect, rect } from '../plane.ts'
import type { Plate } from '../plate.ts'
import type { Point } from '../sheet.ts'
import { centreBoxes, plumbLines } from './centres.ts'
import { underKeel } from './layout.ts'
import { sectionShapes } from './mast-shape.ts'
import { platformRooms } from './masts.ts'
import { seenRuns } from './name-leader.ts'
import type { Surroundings } from './names.ts'
import { reefLine, reefReach } from './reef-band.ts'
import type { Ship } from './ship.ts'
import { sparOutlines, standingRuns } from './silhouette.ts'

/** All that the names of sails keep clear of; `furniture` is what else stands on the plate. */
export function surroundingsOf(ship: Ship, { room }: Plate, furniture: readonly Rect[]): Surroundings {
  const { rig, view, sails, edges, centres, hull } = ship
  const opaque = sails.filter(({ sail }) => sail.kind === 'fore-and-aft').map(({ shape }) => shape)
  const squares = sails.filter(({ sail }) => sail.kind !== 'fore-and-aft').map(({ shape }) => shape)
  const all = [...squares, ...opaque]
  const spars = sparOutlines(rig, view)
  const closed = spars.map(({ isYard, outline }) => ({ isYard, points: closedRun(outline) }))
  const stays = standingRuns(rig, view)
  return {
    edges,
    spars: closed.flatMap(({ isYard, points }) => (isYard ? seenRuns([points], opaque) : [points])),
    stays: seenRuns(stays, all),
    ghosts: seenRuns(stays, opaque).flatMap(points => partsOf(points, squares).inside),
    reefs: sails.flatMap(drawn =>
      drawn.sail.reefs.flatMap(reef => {
        const line = reefLine(reef, drawn, view)
        return line.length > 1 ? [belt(line)] : []
      }),
    ),
    platforms: rig.masts.flatMap(mast => platformRooms(mast, view)).map(room => closedRun(cornersOf(room))),
    plumbLines: plumbLines(centres),
    centres: centreBoxes(centres),
    sky: {
      room: grown(room, -4),
      solids: [
        ...sails.map(({ shape }) => shape),
        ...(hull ? [shapeOf(hull.outline)] : []),
        ...spars.map(({ outline }) => shapeOf(outline)),
      ],
      lines: [
        ...stays,
        ...rig.masts.flatMap(mast =>
          sectionShapes(mast).map(({ foot, head }) => [view.at(foot.x, foot.z), view.at(head.x, head.z)]),
        ),
      ],
      taken: [
        ...furniture,
        rect(room.left, ship.keelY, room.right, ship.keelY + underKeel),
        ...centreBoxes(centres),
      ],
    },
  }
}

const closedRun = (points: readonly Point[]): readonly Point[] => [...points, ...points.slice(0, 1)]

/** A reef band with the reach of its points above and below. */
const belt = (line: readonly Point[]): readonly Point[] =>
  closedRun([
    ...line.map(({ x, y }) => ({ x, y: y - reefReach.above })),
    ...line.map(({ x, y }) => ({ x, y: y + reefReach.below })).reverse(),
  ])
