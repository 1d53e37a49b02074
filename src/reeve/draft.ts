import { pagesOfRails } from './rails.ts'
import type { Rope } from './ropes.ts'
import { aft, hands, metres, millimetres, spoken, up } from './spoken.ts'
import type { TableSail, TableSpar, Tables, TableThing } from './tables.ts'

/** What is said under the gear of a sail or a yard, and of the lines that hang on neither. */
export interface Gearing {
  readonly gear: string | undefined
  /** Set in once under the gear. */
  readonly said: readonly string[]
}

/** The text of a rig, from her tables and what is to be said of her gear, in the order of a bosun's notebook. */
export function draft(
  tables: Tables,
  ropes: readonly Rope[],
  gearings: ReadonlyMap<string, Gearing>,
  loose: readonly string[],
): string {
  const pages = [
    opening(tables),
    vessel(tables),
    page('masts', masts(tables.spars)),
    page('spars', spars(tables, gearings)),
    page('stays', tables.spars.filter(({ kind }) => kind === 'stay').map(stay)),
    page(
      'sails',
      tables.sails.flatMap(sail => sailOf(sail, ropes, gearings.get(sail.name))),
    ),
    page('lines', loose),
    ...pagesOfRails(tables.rails, ropes),
    order(tables.sails),
    page('deck', tables.deck.length > 0 ? things(tables.deck) : []),
  ]
  return `${pages.filter(text => text !== '').join('\n\n')}\n`
}

const page = (word: string, entries: readonly string[]) =>
  entries.length === 0 ? '' : [word, ...entries].join('\n')

const opening = ({ hull }: Tables) =>
  [
    `# ${hull.get('name')?.value || 'A vessel'}, from her tables.`,
    '# Aft is counted from the forward perpendicular, up from the waterline; "out" is out from the centreline.',
    '# The tables tell nothing of her stations, her shrouds and the shape of her hull: these are to be added.',
    '',
    'edition 1',
    'bring in standard gear',
  ].join('\n')

function vessel({ hull }: Tables): string {
  const measure = (key: string, tell: (value: number) => string) => {
    const number = hull.get(key)?.number
    return number === undefined || !Number.isFinite(number) ? [] : [tell(number)]
  }
  const said = (...parts: readonly (readonly string[])[]) => {
    const told = parts.flat()
    return told.length > 0 ? [`  ${told.join(', ')}`] : []
  }
  const lateral = hull.get('clr_x') && hull.get('clr_z')
  return [
    `vessel ${spoken(hull.get('name')?.value || 'Unnamed')}`,
    ...said(hull.get('rig') ? [spoken(hull.get('rig')?.value.split(',')[0] ?? '')] : []),
    ...said(
      measure('lwl', value => `waterline ${metres(value)}`),
      measure('lbp', value => `between perpendiculars ${metres(value)}`),
      measure('length_sparred', value => `over spars ${metres(value)}`),
    ),
    ...said(
      measure('beam', value => `beam ${metres(value)}`),
      measure('draught', value => `draught ${metres(value)}`),
      measure('displacement', value => `displaces ${value} t`),
    ),
    ...(lateral
      ? said([`lateral centre ${aft(hull.get('clr_x')?.number ?? 0)} ${up(hull.get('clr_z')?.number ?? 0)}`])
      : []),
    ...said(measure('gm', value => `metacentric height ${metres(value)}`)),
    ...said(
      measure('main_deck_z', value => `main deck ${up(value)}`),
      measure('forecastle_deck_z', value => `forecastle deck ${up(value)}`),
    ),
    ...said(
      measure('hands_all', value => `${hands(value)} in all`.replace(/^(\d+) hands?/, 'hands $1')),
      measure('hands_watch', value => `${value} in a watch`),
    ),
    '  measure in m and mm',
  ].join('\n')
}

/** Masts, each with its sections from below; the rake is that from the foot of the lowest to the head of the highest. */
function masts(all: readonly TableSpar[]): readonly string[] {
  const sections = all.filter(({ kind }) => kind === 'mast')
  return [...new Set(sections.map(({ mast }) => mast))].flatMap(mast => {
    const own = sections.filter(one => one.mast === mast)
    const [lowest, highest] = [own[0], own.at(-1)]
    if (!lowest || !highest) return []
    const [[x0, z0], [x1, z1]] = [lowest.from, highest.to]
    const slope = (x1 - x0) / (z1 - z0)
    const rake = Math.round((Math.atan(slope) * 1800) / Math.PI) / 10
    const yard = all.find(one => one.kind === 'yard' && one.mast === mast)
    const ahead = yard && x0 + (yard.from[1] - z0) * slope - yard.from[0]
    return [
      `  ${spoken(`${mast} mast`)}, stepped ${aft(x0)} ${up(z0)}, raked ${Math.abs(rake)} deg ${rake < 0 ? 'forward' : 'aft'}${
        ahead ? `, yards ${metres(Math.round(ahead * 20) / 20)} forward` : ''
      }`,
      ...own.map((section, i) => {
        const doubled = (own[i - 1]?.to[1] ?? section.from[1]) - section.from[1]
        return `    ${spoken(section.name.replace(`${mast} `, ''))} to ${up(section.to[1])}${thick(section)}${
          doubled > 0 ? `, doubled ${metres(doubled)}` : ''
        }`
      }),
    ]
  })
}

const thick = ({ millimetres: size }: TableSpar) => (size === undefined ? '' : `, ${millimetres(size)} thick`)
const heavy = ({ mass }: TableSpar) => (mass === undefined ? '' : `, ${mass} kg`)

function spars({ spars: all }: Tables, gearings: ReadonlyMap<string, Gearing>): readonly string[] {
  return all
    .filter(({ kind }) => kind !== 'mast' && kind !== 'stay')
    .flatMap(spar => [
      `  ${spar.kind === 'yard' ? yard(spar) : reaching(spar)}${spar.note ? `    # ${spar.note}` : ''}`,
      ...gearOf(gearings.get(spar.name)),
    ])
}

const yard = (spar: TableSpar) =>
  `${spoken(spar.name)}, ${metres(spar.length ?? 0)} long${thick(spar)}${heavy(spar)}, ${
    spar.hoists && spar.lowered !== undefined
      ? `hoists from ${metres(spar.lowered)} to ${up(spar.from[1])}`
      : `fixed ${up(spar.from[1])}`
  }`

/** Bowsprit, boom or gaff, from its inner to its outer end. */
function reaching(spar: TableSpar): string {
  const name = spar.kind === 'bowsprit' ? 'bowsprit' : spar.name
  const ends = `from ${aft(spar.from[0])} ${up(spar.from[1])} to ${aft(spar.to[0])} ${up(spar.to[1])}`
  const hoists = spar.hoists && spar.lowered !== undefined ? `, hoists from ${up(spar.lowered)}` : ''
  const called = name === spar.name ? '' : `, called "${spar.name[0]?.toUpperCase()}${spar.name.slice(1)}"`
  return `${spoken(name)}, ${ends}${thick(spar)}${heavy(spar)}${hoists}${called}`
}

const stay = (spar: TableSpar) =>
  `  ${spoken(spar.name)} from ${aft(spar.from[0])} ${up(spar.from[1])} to ${aft(spar.to[0])} ${up(spar.to[1])}${thick(spar)}`

function sailOf(sail: TableSail, ropes: readonly Rope[], gearing: Gearing | undefined): readonly string[] {
  const { head, foot } = sail
  const shape =
    head && foot
      ? [
          `    head ${metres(head.width)} wide ${up(head.height)}`,
          `    foot ${metres(foot.width)} wide ${up(foot.height)}${sail.roach > 0 ? `, roach ${metres(sail.roach)}` : ''}`,
        ]
      : sail.corners.length > 0
        ? [`    ${sail.corners.map(({ name, at }) => `${name} ${aft(at[0])} ${up(at[1])}`).join(', ')}`]
        : []
  const kind = sail.square ? (sail.class === 'square sail' ? sail.class : `square ${sail.class}`) : sail.class
  return [
    `  ${spoken(sail.name)}, ${kind} ${spread(sail)}`,
    ...shape,
    ...reefsOf(sail, ropes),
    ...gearOf(gearing),
  ]
}

/** A reef band lies where a lead ends at its cringle. */
function reefsOf({ name, head }: TableSail, ropes: readonly Rope[]): readonly string[] {
  const ends = ropes.filter(({ host }) => host?.name === name).map(({ line }) => line.lead.at(-1))
  return ends
    .filter(end => end?.what === 'reef cringle')
    .map(
      end =>
        `    reef ${metres((head?.height ?? 0) - (end?.at[2] ?? 0))} below head, cringle ${metres(end?.at[1] ?? 0)} out`,
    )
}

/** A gaff sail is bent to gaff and boom; the clews of others go to what is named beside. */
function spread({ on, footOn, class: kind }: TableSail): string {
  if (footOn === '') return `on ${spoken(on)}`
  return kind === 'gaff sail'
    ? `on ${spoken(on)} and ${spoken(footOn)}`
    : `on ${spoken(on)}, sheeted to ${spoken(footOn)}`
}

const gearOf = (gearing: Gearing | undefined) =>
  gearing?.gear === undefined
    ? []
    : [`    gear ${spoken(gearing.gear)}`, ...gearing.said.map(line => `      ${line}`)]

function order(sails: readonly TableSail[]): string {
  const set = sails.filter(sail => Number.isFinite(sail.order)).sort((a, b) => a.order - b.order)
  return set.length < 2 ? '' : `set ${set.map(({ name }) => spoken(name)).join('\n  then ')}`
}

function things(all: readonly TableThing[]): readonly string[] {
  const along = ({ x: [from, to] }: TableThing) => `from ${aft(from)} to ${aft(to)}`
  return all.flatMap(thing => {
    const [port, starboard] = [/ port$/, / starboard$/].map(side => side.test(thing.name))
    const base = thing.name.replace(/ (port|starboard)$/, '')
    const [y0, y1] = thing.y
    const twin = all.find(other => other !== thing && other.name.replace(/ (port|starboard)$/, '') === base)
    if (twin && starboard) return []
    const across =
      twin && port
        ? `${metres(Math.min(Math.abs(y0), Math.abs(y1)))} to ${metres(Math.max(Math.abs(y0), Math.abs(y1)))} out`
        : Math.abs(y0 + y1) < 0.005
          ? `${metres(y1)} each side`
          : `${metres(y0)} to ${metres(y1)} ${y0 + y1 < 0 ? 'port' : 'starboard'}`
    const both = twin && port ? ' port and starboard' : ''
    return [
      `  ${spoken(base)}, ${spoken(thing.kind)}${both} ${along(thing)}, ${across}, top ${up(thing.top)}`,
    ]
  })
}
