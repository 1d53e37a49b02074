import { kilograms, metres } from '../measure/index.ts'
import { plainTables } from '../press/table/index.ts'
import { type Assumptions, joined, purchaseOfBlocks, type Tackle, tackleOf } from '../reckon/index.ts'
import {
  metricLength,
  proportionsTables,
  ropeTable,
  smallVesselTable,
  tackleTable,
  windTable,
} from '../sheets/reckoning/index.ts'
import { Complaint } from './complaint.ts'
import { areaIn, forceIn, lengthIn, massIn } from './reckon-options.ts'

/** What may be reckoned without a rig, as said on the command line. */
export interface ByHandOptions {
  readonly purchase?: string
  readonly blocks?: string
  readonly rove: 'advantage' | 'disadvantage'
  readonly load?: string
  readonly leads: string
  readonly rope?: string
  readonly beam?: string
  readonly waterline?: string
  /** A height over the sea, for the wind there. */
  readonly height?: string
  /** The area of sails and how high their centre stands; of a catamaran what she weighs and how far her hulls are apart. */
  readonly sail?: string
  readonly centre?: string
  readonly displaces?: string
  readonly hulls?: string
}

/** Whether anything is asked for that needs no rig. */
export const isByHand = ({ purchase, blocks, rope, beam, height, sail }: ByHandOptions): boolean =>
  [purchase, blocks, rope, beam, height, sail].some(said => said !== undefined)

/** Reckons a tackle, a rope, spars, the wind at a height or a small vessel's criteria without a rig, and tells them on standard output. */
export function reckonByHand(options: ByHandOptions, assumptions: Assumptions): void {
  const { purchase, blocks, rope, beam, height, sail } = options
  const tables = [
    ...(purchase !== undefined || blocks !== undefined ? [byTackle(options, assumptions)] : []),
    ...(rope !== undefined && purchase === undefined && blocks === undefined
      ? [byRope(rope, assumptions)]
      : []),
    ...(beam !== undefined ? byBeam(beam, options.waterline) : []),
    ...(height !== undefined ? [byHeight(height, assumptions)] : []),
    ...(sail !== undefined ? [bySail(sail, options)] : []),
  ]
  process.stdout.write(plainTables(tables))
}

function byTackle(options: ByHandOptions, assumptions: Assumptions) {
  const { load, leads, rope = 'manila' } = options
  if (load === undefined) throw new Complaint('--purchase asks for --load, as in "--load 4t".')
  if (!/^[0-9]{1,2}$/.test(leads))
    throw new Complaint(`--leads "${leads}": say how many lead blocks, as in "1".`)
  const { tackle, said } = tackleSaid(options)
  return tackleTable(
    { said, tackle, load: forceIn('--load', load), leads: Number(leads), material: rope },
    assumptions,
  )
}

/** The tackle by its name or by its blocks; what can be rove to advantage is, where that is said. */
function tackleSaid({ purchase, blocks, rove }: ByHandOptions): {
  readonly tackle: Tackle
  readonly said: string
} {
  if (blocks !== undefined) {
    const found = purchaseOfBlocks(partsOf(blocks), `to ${rove}`)
    if (!found.known) throw new Complaint(`--blocks: ${found.because}`)
    return { tackle: joined([found.value]), said: found.value.name }
  }
  const names = partsOf(purchase ?? '').map(name =>
    rove === 'advantage' && !/ to (dis)?advantage$/.test(name) ? `${name} to advantage` : name,
  )
  const found = tackleOf(names)
  if (!found.known) throw new Complaint(`--purchase: ${found.because}`)
  return { tackle: found.value, said: names.join(' and ') }
}

const partsOf = (said: string): readonly string[] =>
  said
    .trim()
    .toLowerCase()
    .split(/\s*,\s*|\s+and\s+/)

function byRope(said: string, assumptions: Assumptions) {
  const [, size, round, material] = /^\s*(.+?(?:mm|cm|in|m|"))\s+(round\s+)?(\D.*?)\s*$/.exec(said) ?? []
  if (size === undefined || material === undefined)
    throw new Complaint(
      `--rope "${said}": say size and material, as in "24 mm manila" or "3 in round manila".`,
    )
  const length = lengthIn('--rope', size)
  return ropeTable(material, metres(round === undefined ? length : length / Math.PI), assumptions)
}

function byBeam(beam: string, waterline: string | undefined) {
  if (waterline === undefined) throw new Complaint('--beam asks for --waterline, as in "--waterline 110ft".')
  return proportionsTables(metres(lengthIn('--beam', beam)), metres(lengthIn('--waterline', waterline)))
}

const byHeight = (height: string, assumptions: Assumptions) =>
  windTable({ assumptions }, { length: metricLength }, [metres(lengthIn('--height', height))])

function bySail(sail: string, { centre, displaces, hulls }: ByHandOptions) {
  if (centre === undefined)
    throw new Complaint('--sail asks for --centre, how high its centre stands, as in "--centre 30ft".')
  if ((displaces === undefined) !== (hulls === undefined))
    throw new Complaint('a catamaran asks for both --displaces and --hulls.')
  return smallVesselTable({
    area: areaIn('--sail', sail),
    centre: metres(lengthIn('--centre', centre)),
    displacement: displaces === undefined ? undefined : kilograms(massIn('--displaces', displaces)),
    hulls: hulls === undefined ? undefined : metres(lengthIn('--hulls', hulls)),
  })
}
