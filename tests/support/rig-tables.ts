import type { Compiled } from '../../src/index.ts'
import type { TableName } from '../../src/reeve/index.ts'
import type { Line, Mast, Rail, Rig, Sail, Spar } from '../../src/rig/index.ts'

/** A rig in tables, and what of her no table has a column for: what, and why. */
export interface RigTables {
  readonly tables: ReadonlyMap<TableName, string>
  readonly rows: ReadonlyMap<TableName, RigTable>
  readonly leftOut: readonly (readonly [what: string, why: string])[]
}

/** Cells as they are to be written. */
export interface RigTable {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

type Cell = string | number | undefined
type Row = Readonly<Record<string, Cell>>

/** Writes a rig as a ship keeps her in a spreadsheet: metres and millimetres to the hundredth, sides P, S and C. */
export function tablesOfRig({ rig, figures }: Compiled): RigTables {
  const rails = rig.rails.filter(isStraight)
  const belays = new Set(rails.map(({ code }) => code))
  const sails = rig.sails.filter(({ kind }) => kind !== 'studdingsail')
  const lines = rig.lines.filter(line => !isOfStuddingsail(line, rig))
  const ids = new Map(lines.map(line => [line.address, idOf(line)]))
  const tables: [TableName, readonly string[], readonly Row[]][] = [
    ['hull', ['key', 'value', 'unit'], hullRows(rig)],
    [
      'spars',
      [
        ...['spar', 'kind', 'mast', 'x0', 'z0', 'x1', 'z1', 'length_m', 'dia_mm', 'hoists', 'z_lowered'],
        ...['mass_kg', 'note'],
      ],
      [...rig.masts.flatMap(mastRows), ...rig.spars.flatMap(sparRows), ...stayRows(rig)],
    ],
    [
      'sails',
      [
        ...['sail', 'type', 'class', 'mast', 'bent_to', 'foot_to', 'head_w', 'foot_w', 'head_z', 'foot_z'],
        ...['roach', 'tack_x', 'tack_z', 'clew_x', 'clew_z', 'throat_x', 'throat_z', 'head_x', 'headpt_z'],
        ...['area_m2', 'set_order'],
      ],
      sails.map(sail => {
        const area = figures.sails.get(sail.name)?.area
        const order = rig.order.indexOf(sail.name)
        return {
          ...sailRow(sail),
          area_m2: area?.known ? area.value.toFixed(1) : undefined,
          set_order: order < 0 ? undefined : order + 1,
        }
      }),
    ],
    [
      'rails',
      ['rail', 'kind', 'side', 'x_first', 'y_first', 'x_last', 'y_last', 'z', 'pins', 'note'],
      rails.map(railRow),
    ],
    [
      'lines',
      [
        ...[
          'id',
          'name',
          'kind',
          'acts_on',
          'mast',
          'side',
          'rail',
          'pin',
          'purchase',
          'rope_mm',
          'material',
        ],
        ...['travel_m', 'hands', 'opposes'],
      ],
      lines.map(line => {
        const travel = figures.leads().get(line.address)?.travel
        return {
          ...lineRow(line, rig, belays),
          travel_m: travel?.known ? travel.value.toFixed(2) : undefined,
          opposes: line.counterparts.flatMap(address => ids.get(address) ?? []).join(';'),
        }
      }),
    ],
    ['leads', ['line', 'seq', 'x', 'y', 'z', 'what', 'parts'], lines.flatMap(leadRows)],
    ['deck', ['item', 'kind', 'x0', 'x1', 'y0', 'y1', 'z_top'], deckRows(rig)],
  ]
  const rows = new Map(
    tables.map(([name, columns, rows]) => [name, { columns, rows: rows.map(cellsOf(columns)) }]),
  )
  return {
    rows,
    tables: new Map([...rows].map(([name, table]) => [name, written(table)])),
    leftOut: leftOutOf({ rig }),
  }
}

const isStraight = (rail: Rail) => rail.first !== undefined && rail.last !== undefined && rail.lie !== 'round'

const isOfStuddingsail = ({ host }: Line, { sailAt }: Rig) =>
  host?.kind === 'sail' && sailAt.get(host.name)?.kind === 'studdingsail'

const cellsOf = (columns: readonly string[]) => (row: Row) =>
  columns.map(column => {
    const value = row[column]
    return typeof value === 'number' ? String(Math.round(value * 100) / 100 + 0) : (value ?? '')
  })

function written({ columns, rows }: RigTable): string {
  const cell = (said: string) => (/[",\n]/.test(said) ? `"${said.replaceAll('"', '""')}"` : said)
  return `${[columns, ...rows].map(row => row.map(cell).join(',')).join('\n')}\n`
}

function hullRows({ vessel }: Rig): readonly Row[] {
  const deck = (name: string) => vessel.decks.find(one => one.name === name)?.height
  const said: readonly (readonly [string, Cell, string])[] = [
    ['name', vessel.name, ''],
    ['rig', vessel.rig, ''],
    ['lwl', vessel.waterline, 'm'],
    ['lbp', vessel.betweenPerpendiculars, 'm'],
    ['length_sparred', vessel.overSpars, 'm'],
    ['beam', vessel.beam, 'm'],
    ['draught', vessel.draught, 'm'],
    ['displacement', vessel.displacement && vessel.displacement / 1000, 't'],
    ['clr_x', vessel.lateralCentre?.x, 'm aft of FP'],
    ['clr_z', vessel.lateralCentre?.z, 'm above waterline'],
    ['gm', vessel.metacentricHeight, 'm'],
    ['main_deck_z', deck('main deck'), 'm'],
    ['forecastle_deck_z', deck('forecastle deck'), 'm'],
    ['hands_all', vessel.handsInAll, 'persons'],
    ['hands_watch', vessel.handsInWatch, 'persons'],
  ]
  return said.flatMap(([key, value, unit]) => (value === undefined ? [] : [{ key, value, unit }]))
}

const mastRows = ({ word, sections }: Mast): readonly Row[] =>
  sections.map(({ name, foot, head, diameter }) => ({
    spar: word === 'mast' ? name : `${word} ${name}`,
    kind: 'mast',
    mast: word,
    x0: foot?.x,
    z0: foot?.z,
    x1: head?.x,
    z1: head?.z,
    length_m: foot && head && head.z - foot.z,
    dia_mm: millimetres(diameter),
    hoists: 'no',
  }))

const millimetres = (length: number | undefined) => (length === undefined ? undefined : length * 1000)

function sparRows(spar: Spar): readonly Row[] {
  if (spar.kind === 'studdingsail boom') return []
  const [from, to] = spar.kind === 'yard' ? [spar.middle, spar.middle] : [spar.inner, spar.outer]
  return [
    {
      // A bowsprit goes by the name she is printed with.
      spar: spar.kind === 'bowsprit' ? spar.label.toLowerCase() : spar.name,
      kind: spar.kind === 'slung yard' ? 'yard' : spar.kind,
      mast: spar.mast?.replace(/ mast$/, ''),
      x0: from?.x,
      z0: from?.z,
      x1: to?.x,
      z1: to?.z,
      length_m: spar.length,
      dia_mm: millimetres(spar.diameter),
      hoists: spar.hoists ? 'yes' : 'no',
      z_lowered: spar.hoists ? spar.loweredHeight : undefined,
      mass_kg: spar.mass,
    },
  ]
}

const stayRows = ({ standing }: Rig): readonly Row[] =>
  standing.flatMap(one =>
    one.kind === 'stay'
      ? [
          {
            spar: one.name,
            kind: 'stay',
            x0: one.from?.x,
            z0: one.from?.z,
            x1: one.to?.x,
            z1: one.to?.z,
            dia_mm: millimetres(one.diameter),
            hoists: 'no',
          },
        ]
      : [],
  )

function sailRow(sail: Sail): Row {
  const mast = sail.mast?.replace(/ mast$/, '')
  if (sail.kind === 'square')
    return {
      sail: sail.name,
      type: 'square',
      class: sail.class,
      mast,
      bent_to: sail.yard,
      foot_to: sail.footYard,
      head_w: sail.head?.width,
      head_z: sail.head?.height,
      foot_w: sail.foot?.width,
      foot_z: sail.foot?.height,
      roach: sail.roach,
    }
  const corner = (...names: readonly string[]) => sail.corners.find(({ name }) => names.includes(name))?.at
  const [tack, clew, throat, head] = [
    corner('tack'),
    corner('clew'),
    corner('throat'),
    corner('head', 'peak'),
  ]
  return {
    sail: sail.name,
    type: throat ? 'quadrilateral' : 'triangular',
    class: sail.class,
    mast,
    bent_to: sail.on[0],
    foot_to: (sail.kind === 'fore-and-aft' ? sail.sheetedTo : undefined) ?? sail.on[1],
    tack_x: tack?.x,
    tack_z: tack?.z,
    clew_x: clew?.x,
    clew_z: clew?.z,
    throat_x: throat?.x,
    throat_z: throat?.z,
    head_x: head?.x,
    headpt_z: head?.z,
  }
}

const railRow = ({ code, name, kind, lie, first, last, places }: Rail): Row => ({
  rail: code,
  kind,
  side: lie === 'port' ? 'P' : lie === 'starboard' ? 'S' : 'C',
  x_first: first?.x,
  y_first: first?.y,
  x_last: last?.x,
  y_last: last?.y,
  z: first?.z,
  pins: places.filter(isOfTheRow).length,
  note: name,
})

/** A pin put in later, as 4a, stands between two of the row. */
const isOfTheRow = ({ pin }: { readonly pin: string }) => /^\d+$/.test(pin)

const idOf = ({ address }: Line) =>
  address.replaceAll('.', '-').replace(/-(port|starboard)$/, (_, side: string) => `-${side[0]}`)

function lineRow(line: Line, rig: Rig, belays: ReadonlySet<string>): Row {
  const belay = line.belay && belays.has(line.belay.rail) && isOfTheRow(line.belay) ? line.belay : undefined
  const side = line.side ?? line.belay?.side
  return {
    id: idOf(line),
    name: line.side ? `${line.words} ${line.side}` : line.words,
    kind: /^(ensign|signal|house flag) halyard$/.test(line.words) ? 'flag halyard' : line.kind,
    acts_on: actsOn(line, rig),
    mast: line.mast?.replace(/ mast$/, ''),
    side: side === 'port' ? 'P' : side === 'starboard' ? 'S' : 'C',
    rail: belay?.rail,
    pin: belay?.pin,
    purchase: line.purchase.join('+'),
    rope_mm: millimetres(line.rope?.diameter),
    material: line.rope?.material,
    hands: line.hands,
  }
}

/** The sail a line works, or the spar or mast that its deed names. */
function actsOn({ host, deed, lead }: Line, { sailAt, spars, masts }: Rig): string | undefined {
  const object = deed?.object ?? ''
  const sail = sailAt.get(host?.kind === 'sail' ? host.name : '')
  const around = sail ? [...(sail.kind === 'square' ? [sail.yard] : sail.on)] : []
  const own = around.find(
    name => object !== '' && name.endsWith(object) && !/^(head|clew|tack)$/.test(object),
  )
  if (own) return own
  if (host && !/mast$/.test(object)) return host.name
  if (/mast$/.test(object)) return object
  // A flag is told by its first block: the end of a gaff, or a truck.
  const block = lead[1]?.at
  const gaff = spars.find(
    one =>
      'outer' in one && one.outer && block && Math.hypot(one.outer.x - block.x, one.outer.z - block.z) < 0.3,
  )
  const mast = masts.find(
    ({ sections }) => block && Math.abs((sections.at(-1)?.head?.z ?? 0) - block.z) < 0.3,
  )
  return gaff?.name ?? (mast && `${mast.word} ${mast.sections.at(-1)?.name}`)
}

const leadRows = (line: Line): readonly Row[] =>
  line.leadUnknown === undefined
    ? line.lead.map(({ at, what, parts }, seq) => ({ line: idOf(line), seq, ...at, what, parts }))
    : []

/** The two of a mirrored pair bear their sides in their names. */
const deckRows = ({ deck }: Rig): readonly Row[] =>
  deck.map(({ name, kind, x0, x1, y0, y1, top }) => ({
    item:
      deck.filter(other => other.name === name).length > 1
        ? `${name} ${y0 + y1 < 0 ? 'port' : 'starboard'}`
        : name,
    kind,
    x0,
    x1,
    y0,
    y1,
    z_top: top,
  }))

/** What no column holds, each with its reason. */
function leftOutOf({ rig }: Pick<Compiled, 'rig'>): RigTables['leftOut'] {
  const lines = rig.lines.filter(line => !isOfStuddingsail(line, rig))
  const every = <T extends { readonly label: string }>(things: readonly T[], why: string) =>
    things.map(({ label }) => [label, why] as const)
  const pins = rig.rails
    .filter(isStraight)
    .flatMap(({ label, places }) =>
      places.filter(place => !isOfTheRow(place)).map(({ pin }) => `${label}, pin ${pin}`),
    )
  return [
    ...(rig.hull
      ? [['The shape of the hull', 'the table of the hull holds her measures only'] as const]
      : []),
    ...rig.masts.flatMap(({ label, platforms }) =>
      platforms.map(({ kind }) => [`${label}, ${kind}`, 'a mast is told by its sections'] as const),
    ),
    ...every(
      rig.standing.filter(({ kind }) => kind !== 'stay'),
      'of standing rigging the form holds stays',
    ),
    ...every(
      rig.spars.filter(({ kind }) => kind === 'studdingsail boom'),
      'the form tells spars on the centreline, and two booms a side run out along a yard',
    ),
    ...every(
      rig.sails.filter(({ kind }) => kind === 'studdingsail'),
      'the form tells sails on the centreline; her lines go with her',
    ),
    ...every(
      rig.sails.filter(sail => sail.kind !== 'square' && sail.reefs.length > 0),
      'a reef is known by the lead of its reef tackle, and this has none',
    ),
    ...every(
      rig.sails.filter(({ kind, reefs }) => kind === 'square' && reefs.length > 1),
      'a second reef has no reef tackle of its own, and so no lead',
    ),
    ...every(
      rig.rails.filter(rail => !isStraight(rail)),
      'pins lie evenly from a first to a last, and these lie round a mast; what is belayed there has no pin',
    ),
    ...pins.map(pin => [pin, 'pins are numbered through'] as const),
    ...every(
      lines.filter(({ pair, belay }) => !pair && belay === undefined),
      'it is sent down, and belays nowhere',
    ),
    ...every(
      lines.filter(({ shifts }) => shifts !== undefined),
      'a line has one pin, and this is shifted at every tack',
    ),
    ...every(
      lines.filter(({ horse }) => horse !== undefined),
      'no column names a horse; the block is told where it stands amidships',
    ),
    ...(rig.stations.length > 0 ? [['Stations', 'no table holds them'] as const] : []),
    ...(rig.allowances.length > 0 ? [['What is allowed, and why', 'no table holds it'] as const] : []),
  ]
}
