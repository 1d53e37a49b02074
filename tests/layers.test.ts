import { readdirSync, readFileSync } from 'node:fs'
import { posix } from 'node:path'
import { expect, it } from 'vitest'

// The stages in the order data flows. A stage imports only from itself and from what stands before it.
const order = [
  'measure',
  'text',
  'findings',
  'syntax',
  'fair',
  'rig',
  'reckon',
  'evolve',
  'rules',
  'assist',
  'sheets',
  'press',
  'compile',
  'reeve',
  'index',
  'faces',
]
const place = (path: string) => order.indexOf(path.split('/')[0]?.replace(/\.[jt]s$/, '') ?? '')

// Quoted, side-effect, dynamic and re-exporting imports alike.
const importing = /(?:\bfrom\s*|\bimport\s*\(?\s*)(['"`])(\.[^'"`]+)\1/g

const targetsOf = (file: string, source: string) =>
  [...source.matchAll(importing)].map(([, , target]) => posix.join(posix.dirname(file), target ?? ''))

const looksAhead = (file: string, source: string) =>
  targetsOf(file, source).filter(target => place(file) < place(target))

const root = new URL('../src/', import.meta.url)
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .map(file => file.replaceAll('\\', '/'))
  .filter(file => file.endsWith('.ts'))
const sources = new Map(files.map(file => [file, readFileSync(new URL(file, root), 'utf8')]))

it('knows every folder of the sources', () => {
  expect(files.length).toBeGreaterThan(100)
  expect(files.filter(file => place(file) < 0)).toEqual([])
})

it('finds an import that looks ahead, however it is written', () => {
  for (const ahead of [
    "import { a } from '../sheets/index.ts'",
    "import '../sheets/index.ts'",
    "const a = await import('../sheets/index.ts')",
    "export * from '../sheets/index.ts'",
  ]) {
    expect(looksAhead('rig/sail.ts', ahead)).toEqual(['sheets/index.ts'])
  }
  expect(looksAhead('rig/sail.ts', "import { a } from '../syntax/index.ts'")).toEqual([])
})

it('lets no stage import a later one', () => {
  const ahead = [...sources].flatMap(([file, source]) =>
    looksAhead(file, source).map(target => `${file} imports ${target}`),
  )
  expect(ahead).toEqual([])
})

it('lets no ring of files form', () => {
  const rings: string[] = []
  const done = new Set<string>()
  const visit = (file: string, path: readonly string[]) => {
    if (path.includes(file)) {
      rings.push([...path.slice(path.indexOf(file)), file].join(' -> '))
      return
    }
    if (done.has(file)) return
    for (const target of targetsOf(file, valuesOf(sources.get(file) ?? ''))) visit(target, [...path, file])
    done.add(file)
  }
  for (const file of files) visit(file, [])
  expect(rings).toEqual([])
})

// Types vanish when the program runs; a ring of types alone is no ring at run time.
const valuesOf = (source: string) =>
  source.replace(/\b(?:import|export) type [^'"]*from\s*['"][^'"]+['"]/g, '')

it('touches the world only in the faces', () => {
  const worldly = [...sources].filter(
    ([file, source]) => !file.startsWith('faces/') && /['"]node:/.test(source),
  )
  expect(worldly.map(([file]) => file)).toEqual([])
})
