import { aligned, listed } from './aligned.ts'
import type { Gearing } from './draft.ts'
import { aft, metres, millimetres, spoken, up } from './spoken.ts'
import type { TableSpar, Tables } from './tables.ts'

/** The pages of masts, spars and stays. */
export function sparPages({ spars }: Tables, gearings: ReadonlyMap<string, Gearing>): readonly string[] {
  const stays = spars.filter(({ kind }) => kind === 'stay').map(stay)
  return [
    page('masts', masts(spars)),
    page('spars', sparLines(spars, gearings)),
    page(
      'stays',
      aligned(stays).map(line => `  ${line}`),
    ),
  ]
}

const page = (word: string, entries: readonly string[]) =>
  entries.length === 0 ? '' : [word, ...entries].join('\n')

/** Masts, each with its sections from below; the rake is that from the foot of the lowest to the head of the highest. */
function masts(all: readonly TableSpar[]): readonly string[] {
  const sections = all.filter(({ kind }) => kind === 'mast')
  return [...new Set(sections.map(({ mast }) => mast))].flatMap(mast => {
    const own = sections.filter(one => one.mast === mast).toSorted((a, b) => a.to[1] - b.to[1])
    const [lowest, highest] = [own[0], own.at(-1)]
    if (!lowest || !highest) return []
    const [[x0, z0], [x1, z1]] = [lowest.from, highest.to]
    const slope = z1 > z0 ? (x1 - x0) / (z1 - z0) : 0
    const rake = Math.round((Math.atan(slope) * 1800) / Math.PI) / 10
    const yard = all.find(one => isCrossed(one) && one.mast === mast)
    const ahead = yard ? Math.round((x0 + (yard.from[1] - z0) * slope - yard.from[0]) * 20) / 20 : 0
    return [
      `  ${listed(
        spoken(mastName(mast)),
        `stepped ${aft(x0)} ${up(z0)}`,
        `raked ${Math.abs(rake)} deg ${rake < 0 ? 'forward' : 'aft'}`,
        ahead === 0 ? undefined : `yards ${metres(ahead)} ${ahead < 0 ? 'aft' : 'forward'}`,
      )
        .filter(Boolean)
        .join(' ')}`,
      ...aligned(
        own.map((section, i) => {
          const doubled = (own[i - 1]?.to[1] ?? section.from[1]) - section.from[1]
          return [
            spoken(sectionName(section)),
            'to',
            ...listed(
              up(section.to[1]),
              thick(section),
              doubled > 0 ? `doubled ${metres(doubled)}` : undefined,
            ),
          ]
        }),
      ).map(line => `    ${line}`),
    ]
  })
}

/** A vessel's only mast may have no other name. */
const mastName = (mast: string) => (mast === 'mast' ? 'mast' : `${mast} mast`)

/** 'fore topmast' is the topmast of the fore mast. */
const sectionName = ({ name, mast }: TableSpar) =>
  name.startsWith(`${mast} `) && name !== `${mast} mast` ? name.slice(mast.length + 1) : name

/** A yard that crosses its mast; one that hangs fore and aft, as a lug's, runs from its lower end to its upper. */
const isCrossed = ({ kind, from, to }: TableSpar) => kind === 'yard' && from[0] === to[0] && from[1] === to[1]

const thick = ({ millimetres: size }: TableSpar) =>
  size === undefined ? undefined : `${millimetres(size)} thick`
const heavy = ({ mass }: TableSpar) => (mass === undefined ? undefined : `${Number(mass.toFixed(1))} kg`)

/** Spars, those that follow each other and are told alike in columns, a blank line between them and the others. */
function sparLines(all: readonly TableSpar[], gearings: ReadonlyMap<string, Gearing>): readonly string[] {
  const spars = all.filter(({ kind }) => kind !== 'mast' && kind !== 'stay')
  const inRanks = spars.toSorted((a, b) => rank(a) - rank(b))
  const runs: TableSpar[][] = []
  for (const spar of inRanks) {
    const run = runs.at(-1)
    if (
      run?.[0] &&
      isCrossed(run[0]) === isCrossed(spar) &&
      spar.kind !== 'bowsprit' &&
      run[0].kind !== 'bowsprit'
    )
      run.push(spar)
    else runs.push([spar])
  }
  return runs.flatMap((run, i) => [
    ...(i === 0 ? [] : ['']),
    ...aligned(run.map(spar => (isCrossed(spar) ? yard(spar) : reaching(spar)))).flatMap((line, at) =>
      withGear(line, run[at], gearings),
    ),
  ])
}

/** The bowsprit first, then the yards, then what reaches fore and aft. */
const rank = (spar: TableSpar) => (spar.kind === 'bowsprit' ? 0 : isCrossed(spar) ? 1 : 2)

function withGear(
  line: string,
  spar: TableSpar | undefined,
  gearings: ReadonlyMap<string, Gearing>,
): readonly string[] {
  return [
    `  ${line}${spar?.note ? `    # ${spar.note}` : ''}`,
    ...(spar?.called === undefined ? [] : [`    called "${spar.called}"`]),
    ...gearOf(gearings.get(spar?.name ?? '')),
  ]
}

/** Its name, and its kind where the name doesn't end in it. */
const headOf = ({ name, kind }: TableSpar) => [`${spoken(name)},`, name.endsWith(kind) ? '' : kind]

/** A yard that crosses its mast. */
function yard(spar: TableSpar): readonly string[] {
  const [name = '', kind = ''] = headOf(spar)
  const clauses = [
    spar.length === undefined ? undefined : `${metres(spar.length)} long`,
    thick(spar),
    heavy(spar),
    spar.hoists && spar.lowered !== undefined
      ? `hoists from ${metres(spar.lowered)} to ${up(spar.from[1])}`
      : `fixed ${up(spar.from[1])}`,
    spar.mast === '' || spar.name.startsWith(spar.mast) ? undefined : `on ${spoken(mastName(spar.mast))}`,
  ]
  return [name, kind && `${kind},`, ...listed(...clauses)]
}

/** Bowsprit, boom, gaff or slung yard, from its inner to its outer end. */
const reaching = (spar: TableSpar) => [
  ...headOf(spar),
  ...reach(
    spar,
    thick(spar),
    heavy(spar),
    spar.hoists && spar.lowered !== undefined ? `hoists from ${up(spar.lowered)}` : undefined,
  ),
]

const stay = (spar: TableSpar) => [spoken(spar.name), ...reach(spar, thick(spar))]

/** From where to where a spar or a stay goes, a cell for each measure, and what else is said of it. */
function reach({ from, to }: TableSpar, ...clauses: readonly (string | undefined)[]): readonly string[] {
  const way = (x: number) => aft(x).split(' ').at(-1) ?? ''
  return [
    ...['from', metres(from[0]), way(from[0]), up(from[1])],
    ...['to', metres(to[0]), way(to[0])],
    ...listed(up(to[1]), ...clauses),
  ]
}

/** Longer names than this don't hold up the column of what is said. */
const longestInColumn = 16

/** The gear of a sail or a spar, and what is said under it. */
export function gearOf(gearing: Gearing | undefined): readonly string[] {
  if (gearing === undefined) return []
  const width = Math.max(
    0,
    ...gearing.said.map(({ name }) => (name.length > longestInColumn ? 0 : name.length)),
  )
  return [
    `    gear ${spoken(gearing.gear)}`,
    ...gearing.said.map(({ name, said }) => `      ${name === '' ? said : `${name.padEnd(width)} ${said}`}`),
  ]
}
