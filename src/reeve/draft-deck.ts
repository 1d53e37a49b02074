import { aligned } from './aligned.ts'
import { metres, spoken, up } from './spoken.ts'
import type { TableThing } from './tables.ts'

/** The page of what stands on deck; two that mirror each other are one entry. */
export function deckPage(all: readonly TableThing[]): string {
  const entries = all.flatMap(thing => {
    const twin = all.find(other => mirrors(thing, other))
    if (twin && sideOf(thing) === 'starboard') return []
    const name = twin ? sideless(thing) : thing.name
    const kind = name.split(' ').at(-1) === thing.kind ? '' : spoken(thing.kind)
    return [
      [
        `${spoken(name)}${kind ? ',' : ''}`,
        kind,
        twin ? 'port and starboard' : '',
        along(thing),
        `${across(thing, twin !== undefined)},`,
        `top ${up(thing.top)}`,
      ],
    ]
  })
  return entries.length === 0 ? '' : ['deck', ...aligned(entries).map(line => `  ${line}`)].join('\n')
}

const sideOf = ({ name }: TableThing) => / (port|starboard)$/.exec(name)?.[1]
const sideless = ({ name }: TableThing) => name.replace(/ (port|starboard)$/, '')

function mirrors(a: TableThing, b: TableThing): boolean {
  if (a === b || sideless(a) !== sideless(b) || a.kind !== b.kind) return false
  if (!sideOf(a) || !sideOf(b) || sideOf(a) === sideOf(b)) return false
  const near = (one: number, other: number) => Math.abs(one - other) < 0.005
  const [[a0, a1], [b0, b1]] = [a.y, b.y]
  return (
    near(a.x[0], b.x[0]) &&
    near(a.x[1], b.x[1]) &&
    near(a.top, b.top) &&
    near(Math.min(a0, a1), -Math.max(b0, b1)) &&
    near(Math.max(a0, a1), -Math.min(b0, b1))
  )
}

/** "from 9.40 m to 10.60 m aft": the direction is said once where both ends lie that way. */
const along = ({ x: [from, to] }: TableThing) =>
  `from ${metres(from)} ${from < 0 ? 'forward ' : ''}to ${metres(to)} aft,`

function across({ y }: TableThing, isTwin: boolean): string {
  const [y0, y1] = y[0] <= y[1] ? y : [y[1], y[0]]
  if (Math.abs(y0 + y1) < 0.005) return `${metres(y1)} each side`
  const [near, far] = [Math.min(Math.abs(y0), Math.abs(y1)), Math.max(Math.abs(y0), Math.abs(y1))]
  if (isTwin) return `${metres(near)} to ${metres(far)} out`
  return `${metres(near)} to ${metres(far)} ${y1 > 0 ? 'starboard' : 'port'}`
}
