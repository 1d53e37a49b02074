import { aligned } from './aligned.ts'
import type { Gearing } from './draft.ts'
import { gearOf } from './draft-spars.ts'
import type { Rope } from './ropes.ts'
import { aft, metres, spoken, up } from './spoken.ts'
import type { TableSail, Tables } from './tables.ts'

/** The page of sails, each with its gear. */
export function sailPage(
  { sails }: Tables,
  ropes: readonly Rope[],
  gearings: ReadonlyMap<string, Gearing>,
): string {
  const entries = sails.map(sail => sailOf(sail, ropes, gearings.get(sail.name)).join('\n'))
  return entries.length === 0 ? '' : `sails\n${entries.join('\n\n')}`
}

function sailOf(sail: TableSail, ropes: readonly Rope[], gearing: Gearing | undefined): readonly string[] {
  const kind = sail.square && sail.class !== 'square sail' ? `square ${sail.class}` : sail.class
  return [
    `  ${spoken(sail.name)}, ${kind} ${spread(sail)}`,
    ...shapeOf(sail).map(line => `    ${line}`),
    ...reefsOf(sail, ropes),
    ...gearOf(gearing),
  ]
}

function shapeOf({ head, foot, roach, corners }: TableSail): readonly string[] {
  if (head && foot) {
    const [top, bottom] = aligned([
      ['head', metres(head.width), 'wide', up(head.height)],
      ['foot', metres(foot.width), 'wide', up(foot.height)],
    ])
    return [top ?? '', `${bottom}${roach > 0 ? `, roach ${metres(roach)}` : ''}`]
  }
  const said = corners.map(({ name, at }) => `${name} ${aft(at[0])} ${up(at[1])}`)
  const rows = said.length > 3 ? [said.slice(0, 2), said.slice(2)] : [said]
  return rows.filter(row => row.length > 0).map(row => row.join(', '))
}

/** A reef band lies where a lead ends at its cringle. */
function reefsOf({ name, head }: TableSail, ropes: readonly Rope[]): readonly string[] {
  const ends = ropes.filter(({ host }) => host?.name === name).map(({ line }) => line.lead.at(-1))
  return ends.flatMap(end => {
    if (end?.what !== 'reef cringle' || !head) return []
    const [, out, height] = end.at
    return [`    reef ${metres(head.height - height)} below head, cringle ${metres(out)} out`]
  })
}

/** Classes whose clews go to what is named beside, as those of square sails do; others are bent to gaff and boom, yard and boom. */
const sheeted = new Set(['headsail', 'staysail', 'gaff topsail'])

function spread({ on, footOn, square, class: kind }: TableSail): string {
  if (footOn === '') return `on ${spoken(on)}`
  return square || sheeted.has(kind)
    ? `on ${spoken(on)}, sheeted to ${spoken(footOn)}`
    : `on ${spoken(on)} and ${spoken(footOn)}`
}
