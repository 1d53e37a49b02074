import { type Figure, known, type Metres, metres, type Point3, point3, unknown } from '../../measure/index.ts'
import type { Boom, Line, Rig } from '../../rig/index.ts'
import { boomLimit, usualLimit } from '../brace/index.ts'
import { type Ends, unsaid, yardOf } from './load.ts'
import { distance } from './vector.ts'

/** Both ends of a brace: its yard braced as sharp as it goes, one way and the other. */
export function swingEnds(line: Line, rig: Rig): Figure<Ends> {
  const yard = yardOf(line, rig)
  const middle = yard?.middle
  const [from, arm] = [line.lead.at(-2)?.at, line.lead.at(-1)?.at]
  if (!middle || !from || !arm) return unknown(unsaid(line))
  const swing = Math.PI / 2 - (yard?.bracesTo ?? usualLimit)
  const [one, other] = [swing, -swing].map(angle => turned(arm, middle, angle)) as [Point3, Point3]
  const [near, far] = [distance(from, one), distance(from, other)].toSorted((a, b) => a - b) as [
    number,
    number,
  ]
  return known({ home: metres(near), slack: metres(far), travel: metres(distance(one, other)) })
}

/** Both ends of a boom's sheet: hauled amidships, and with the boom out as far as the shrouds let it. */
export function boomEnds(line: Line, last: Metres, rig: Rig): Figure<Ends> {
  const boom = boomOf(line, rig)
  const [from, end] = [line.lead.at(-2)?.at, line.lead.at(-1)?.at]
  if (!boom?.inner || !from || !end) return unknown(unsaid(line))
  const { inner } = boom
  const out = boomLimit(boom, rig)
  const [one, other] = [out, -out].map(angle => turned(end, inner, angle)) as [Point3, Point3]
  return known({
    home: last,
    slack: metres(Math.max(last, distance(from, one), distance(from, other))),
    travel: metres(distance(end, one)),
  })
}

function boomOf({ host }: Line, rig: Rig): Boom | undefined {
  const sail = host?.kind === 'sail' ? rig.sailAt.get(host.name) : undefined
  const names = sail?.kind === 'fore-and-aft' ? sail.on : host ? [host.name] : []
  return names.map(name => rig.sparAt.get(name)).find((spar): spar is Boom => spar?.kind === 'boom')
}

/** A point turned about an upright axis. */
export function turned(point: Point3, axis: Point3, angle: number): Point3 {
  const [x, y] = [point.x - axis.x, point.y - axis.y]
  return point3(
    axis.x + x * Math.cos(angle) - y * Math.sin(angle),
    axis.y + x * Math.sin(angle) + y * Math.cos(angle),
    point.z,
  )
}
