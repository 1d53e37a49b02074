import { compile } from '../compile.ts'
import { counted } from '../findings/index.ts'
import { type Metres, metres, units } from '../measure/index.ts'
import { csvTable, jsonTables, plainTables } from '../press/table/index.ts'
import { workbook } from '../press/workbook/index.ts'
import { coilOf120Fathoms, solve, storesOf } from '../reckon/index.ts'
import { storesTables } from '../sheets/stores/index.ts'
import { Complaint } from './complaint.ts'
import { publish } from './publish.ts'
import { type Entry, readEntry } from './read-text.ts'
import { told } from './tell.ts'

/** How what is to be ordered is told. */
export interface StoresOptions {
  readonly format: 'plain' | 'json' | 'csv' | 'xlsx'
  readonly into?: string
  readonly name: string
  /** Length of a coil: '220 m', '120 fathom' is 720 ft. */
  readonly coil?: string
  /** Width of the cloth: '24 in'. */
  readonly cloth?: string
}

/** A cloth as wide as the bolts of old canvas: 24 inches. */
const usualCloth = metres(0.6096)

/**
 * Tells what is to be ordered for a rig: as tables on standard output, or as files in a folder. The exit code is 1 where its
 * text has errors; the tables are written all the same, as far as they are known.
 */
export async function stores(file: string, options: StoresOptions, version: string): Promise<number> {
  const coil = lengthIn('--coil', options.coil, coilOf120Fathoms)
  const clothWidth = lengthIn('--cloth', options.cloth, usualCloth)
  const entry = readEntry(file, options.name)
  const { value, findings } = compile(entry.files, entry.read.source, entry.path)
  const { rig, figures } = value
  const tables = storesTables(await storesOf(rig, figures, { coil, clothWidth }, solve), rig.vessel)
  const errors = [...entry.read.findings, ...findings].filter(({ severity }) => severity === 'error')
  if (errors.length > 0)
    process.stderr.write(told(errors, rig.sources, { format: 'plain', version, stream: process.stderr }))
  if (options.format === 'plain') process.stdout.write(plainTables(tables))
  else if (options.format === 'json') process.stdout.write(jsonTables(tables))
  else {
    const files =
      options.format === 'xlsx'
        ? [{ name: 'stores.xlsx', bytes: workbook(tables, `${rig.vessel.name ?? entry.stem}: stores`) }]
        : tables.map(table => ({
            name: `stores-${table.id}.csv`,
            bytes: new TextEncoder().encode(csvTable(table)),
          }))
    write(files, entry, options)
  }
  return counted(errors).errors > 0 ? 1 : 0
}

function write(
  files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
  entry: Entry,
  { into, format }: StoresOptions,
): void {
  const folder = into ?? `out/${entry.stem}`
  const own = format === 'xlsx' ? /^stores\.xlsx$/ : /^stores-[a-z]+\.csv$/
  publish(folder, files, name => own.test(name))
  process.stdout.write(`${files.map(({ name }) => `${folder}/${name}`).join('\n')}\n`)
}

function lengthIn(option: string, said: string | undefined, usual: Metres): Metres {
  if (said === undefined) return usual
  const [, amount, unit] = /^\s*([0-9]+(?:[.,][0-9]+)?)\s*(m|mm|cm|ft|in)\s*$/.exec(said) ?? []
  const length =
    Number(amount?.replace(',', '.')) * (units[unit as 'm' | 'mm' | 'cm' | 'ft' | 'in']?.si ?? Number.NaN)
  if (!(length > 0 && length < 10_000))
    throw new Complaint(`${option} "${said}": say a length with its unit, as in "220 m" or "24 in".`)
  return metres(length)
}
