import type { Compiled } from '../../src/index.ts'
import type { Point3 } from '../../src/measure/index.ts'
import type { Line, Rig, Spar } from '../../src/rig/index.ts'

/** Tables are kept to the centimetre. */
const within = 0.02

/** In what a rig differs from another, figure for figure, so far as tables can tell of it: one row for each figure. */
export function differences(told: Compiled, found: Compiled): readonly string[] {
  const rigs = [told.rig, found.rig] as const
  return [
    ...unlike('vessel', ...rigs, vesselOf),
    ...each('line', ...rigs, ({ lines }) => lines.map(line => [line.address, lineOf(line)])),
    ...leadsOff(...rigs),
    ...each('rail', ...rigs, ({ rails }) =>
      rails.map(({ code, kind, lie, places }) => [code, { kind, lie, pins: places.length }]),
    ),
    ...each('sail', ...rigs, sailsOf),
    ...each('area of', told, found, ({ figures }) =>
      [...figures.sails].map(([name, { area }]) => [name, { area: area.known && area.value.toFixed(1) }]),
    ),
    ...each('mast', ...rigs, ({ masts }) =>
      masts.map(({ name, foot, sections, yardsForward }) => [
        name,
        {
          ...at('foot', foot),
          yardsForward,
          heads: sections.map(({ name, head, diameter }) => [name, head?.z, diameter]),
        },
      ]),
    ),
    ...each('spar', ...rigs, ({ spars }) => spars.map(spar => [spar.name, sparOf(spar)])),
    ...each('stay', ...rigs, ({ standing }) =>
      standing.flatMap(one =>
        one.kind === 'stay' ? [[one.name, { ...at('head', one.from), ...at('foot', one.to) }] as const] : [],
      ),
    ),
    ...each('on deck', ...rigs, ({ deck }) =>
      deck.map(({ name, kind, x0, x1, y0, y1, top }) => [`${name} ${y0}`, { kind, x0, x1, y1, top }]),
    ),
  ]
}

type Facts = Readonly<Record<string, unknown>>

/** Things by their names: those that are missing or new, and the facts in which they differ. */
function each<T>(
  what: string,
  told: T,
  found: T,
  list: (of: T) => readonly (readonly [string, Facts])[],
): string[] {
  const others = new Map(list(found))
  const names = new Set(list(told).map(([name]) => name))
  return [
    ...list(told).flatMap(([name, facts]) => {
      const other = others.get(name)
      return other ? unlike(`${what} ${name}`, facts, other, one => one) : [`${what} ${name} is missing`]
    }),
    ...[...others.keys()].flatMap(name => (names.has(name) ? [] : [`${what} ${name} is new`])),
  ]
}

function unlike<T>(name: string, told: T, found: T, tell: (of: T) => Facts): string[] {
  const other = tell(found)
  return Object.entries(tell(told)).flatMap(([key, value]) =>
    rounded(value) === rounded(other[key])
      ? []
      : [`${name}, ${key}: ${rounded(value)}, not ${rounded(other[key])}`],
  )
}

/** Numbers to the centimetre, and the gram. */
const rounded = (value: unknown) =>
  JSON.stringify(value, (_, one) => (typeof one === 'number' ? Math.round(one * 1000) / 1000 + 0 : one))

const vesselOf = ({ vessel, order }: Rig) => {
  const { span: _, rights: _rights, revision: _revision, credits: _credits, units: _units, ...facts } = vessel
  return { ...facts, order }
}

/** What answers a line for which none is eased stands in no table, and neither does the name of what it works. */
const lineOf = (line: Line) => ({
  kind: line.kind,
  does: line.function,
  pair: line.pair,
  host: line.host?.name,
  diameter: line.rope?.diameter,
  material: line.rope?.material,
  purchase: line.purchase,
  below: line.tackleBelow,
  hands: line.hands,
  counterparts: [...line.counterparts].sort(),
  isAnswered: line.counterparts.length > 0 || line.answeredBy !== undefined,
  belay: line.belay && [line.belay.rail, line.belay.pin, line.belay.side],
  parts: line.lead.map(({ parts }) => parts),
})

function leadsOff({ lines }: Rig, { lineAt }: Rig): string[] {
  return lines.flatMap(({ address, lead }) => {
    const other = lineAt.get(address)?.lead ?? []
    if (other.length !== lead.length) return []
    return lead.flatMap(({ at, what }, i) => {
      const off = distance(at, other[i]?.at ?? at)
      return off <= within ? [] : [`line ${address}, ${what}: ${off.toFixed(2)} m off`]
    })
  })
}

const distance = (a: Point3, b: Point3) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)

const sailsOf = ({ sails }: Rig) =>
  sails.map(
    sail => [sail.name, { kind: sail.kind, class: sail.class, mast: sail.mast, ...shapeOf(sail) }] as const,
  )

function shapeOf(sail: Rig['sails'][number]): Facts {
  if (sail.kind === 'square') {
    const { yard, footYard, head, foot, roach, reefs } = sail
    return {
      yard,
      footYard,
      head,
      foot,
      roach,
      reefs: reefs.map(({ depth, cringleOut }) => [depth.toFixed(2), cringleOut?.toFixed(2)]),
    }
  }
  return {
    on: sail.on,
    corners: sail.corners.map(({ name, at }) => [name, at.x.toFixed(2), at.z.toFixed(2)]).sort(),
  }
}

function sparOf(spar: Spar): Facts {
  const ends =
    spar.kind === 'yard'
      ? at('middle', spar.middle)
      : { ...at('inner', spar.inner), ...at('outer', spar.outer) }
  const { kind, label, mast, length, diameter, mass } = spar
  const hoists = spar.kind === 'studdingsail boom' ? {} : { hoists: spar.hoists, lowered: spar.loweredHeight }
  return { kind, label, mast, length: length?.toFixed(2), diameter, mass, ...hoists, ...ends }
}

const at = (what: string, point: Point3 | undefined): Facts => ({
  [what]: point && [point.x.toFixed(2), point.z.toFixed(2)],
})
