import { compile } from '../../src/compile.ts'
import type { Finding } from '../../src/findings/index.ts'
import { reeve, type TableName } from '../../src/reeve/index.ts'
import { inLanguage, type Rig } from '../../src/rig/index.ts'
import type { Files, Reading } from '../../src/syntax/index.ts'
import { decode } from '../../src/text/index.ts'
import { spoiledTables } from '../reeve/tables.ts'
import { compiledRig } from '../support/compiled.ts'
import { paperFindings } from '../support/papers.ts'

const text = (name: string, words: string): Reading => ({
  kind: 'text',
  source: { name, text: words },
  findings: [],
})

const compiled = (words: string, read: Files['read'] = () => ({ kind: 'missing' })) =>
  compile({ read }, { name: 'example.rig', text: words }).findings

const tables = (table: TableName, from: string, to: string) => () =>
  reeve(spoiledTables('schooner-pellow-finch', table, from, to), { read: () => ({ kind: 'missing' }) })
    .findings

const barque = () => compiledRig('barque-harrow-tansy')

/** What can't be printed on a page, because it is too long, can't be seen, is no text, or takes a folder to show. */
export const unprintable: ReadonlyMap<string, () => readonly Pick<Finding, 'rule' | 'severity'>[]> = new Map([
  [
    'name/no-word',
    () => inLanguage(compiledRig('schooner-pellow-finch').value.rig, 'German')?.findings ?? [],
  ],
  ['syntax/too-much', () => compiled(`# ${'x'.repeat(10_000)}\n`)],
  ['syntax/hidden-mark', () => compiled('stays\n  fore\u202e stay\n')],
  [
    'syntax/no-text',
    () => decode(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13), 'a.rig').findings,
  ],
  [
    'syntax/not-utf-8',
    () =>
      decode(
        Uint8Array.from('sails # Gro\u00dfsegel\n', c => c.charCodeAt(0)),
        'a.rig',
      ).findings,
  ],
  [
    'file/refused',
    () => compiled('bring in "gear"\n', () => ({ kind: 'refused', because: 'it is a folder' })),
  ],
  [
    'file/too-deep',
    () => compiled('bring in "1.rig"\n', ({ path }) => text(path, `bring in "${next(path)}"\n`)),
  ],
  [
    'sheet/book-too-thick',
    () => {
      const { value } = barque()
      const { rig } = value
      const [station] = rig.stations
      const rails = rig.rails.map(rail => rail.code)
      const lines = rig.lines.map(line => ({ ...line, station: station?.name }))
      const lineAt = new Map(lines.map(line => [line.address, line]))
      const stations = station ? [{ ...station, rails }] : []
      return paperFindings({ ...value, rig: { ...rig, lines, lineAt, stations } }, ['handbooks'])
    },
  ],
  [
    'sheet/larger-paper',
    () => {
      const { value } = barque()
      const { rig } = value
      const long = (label: string) => `${label}, ${'as it has been led since her refit '.repeat(3)}`
      const lines = rig.lines.map(line => ({
        ...line,
        label: long(line.label),
        labelOnMast: long(line.labelOnMast),
      }))
      const lineAt = new Map(lines.map(line => [line.address, line]))
      return paperFindings({ ...value, rig: { ...rig, lines, lineAt } }, ['pin charts'])
    },
  ],
  [
    'sheet/too-many',
    () => {
      const { value } = barque()
      const [sail] = value.rig.sails
      const sails = Array.from({ length: 70 }, (_, at) => ({ ...sail, name: `jib ${at}` }))
      return paperFindings({ ...value, rig: { ...value.rig, sails } as Rig }, ['sail plan'])
    },
  ],
  ['table/not-read', tables('deck', 'windlass', '"windlass')],
  ['table/no-column', tables('lines', 'acts_on', 'acts')],
  ['table/no-number', tables('rails', '6.9,-2.85', 'six,-2.85')],
  ['table/empty', tables('rails', '6.9,-2.85', ',-2.85')],
  ['table/unknown', tables('leads', 'jib-halyard', 'jib-haylard')],
  ['table/no-pin', tables('lines', 'FR-P,11', 'FR-P,12')],
  ['table/twice', tables('spars', 'outer jib stay', 'jib stay')],
  ['table/no-name', tables('spars', 'outer jib stay', 'outer jib stay '.repeat(20))],
  ['table/wrong-side', tables('rails', '6.9,-2.85', '6.9,2.85')],
  ['table/left-out', tables('lines', 'hands,', 'heads,')],
])

const next = (path: string) => `${Number.parseInt(path, 10) + 1}.rig`
