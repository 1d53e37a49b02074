import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { keptAnalysis } from './keep-analysis.mjs'

const [folder = 'dist'] = process.argv.slice(2)
const shared = {
  outdir: folder,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  minifySyntax: true,
  legalComments: 'linked',
}

// The verbs that the command loads when asked for. They are modules, which a script that V8 was handed compiled can't
// import by itself: it is given an `importModule` for that.
const verbs = ['make-papers', 'reckon', 'explain', 'fix', 'fair', 'reeve', 'stores']
const verbsApart = {
  name: 'verbs apart',
  setup: ({ onLoad }) =>
    onLoad({ filter: /src.faces.\w+\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, 'utf8')
      const wanted = new RegExp(`import\\('\\./(${verbs.join('|')})\\.ts'\\)`, 'g')
      return { contents: text.replace(wanted, "importModule('./$1.js')"), loader: 'ts' }
    }),
}

const analysed = await keptAnalysis()

rmSync(folder, { recursive: true, force: true })
// The library and those verbs. What only papers need stays outside, and is loaded when asked for.
await build({
  ...shared,
  entryPoints: ['src/index.ts', ...verbs.map(verb => `src/faces/${verb}.ts`)],
  entryNames: '[name]',
  chunkNames: 'part-[hash]',
  splitting: true,
  plugins: [analysed],
  external: ['pdfkit', 'fontkit', 'svgdom', '@svgdotjs/svg.js', 'harfbuzzjs', 'harfbuzzjs/*', 'fflate', 'uqr', 'highs'],
})
// The command with its check, as one script that V8 can be handed compiled; and what starts it.
await build({
  ...shared,
  entryPoints: { command: 'src/faces/cli.ts' },
  outExtension: { '.js': '.cjs' },
  format: 'iife',
  plugins: [analysed, verbsApart],
  define: { 'import.meta.url': 'url' },
  // None of our verbs is a program of its own, and the module is slow to load.
  alias: { 'node:child_process': './src/faces/no-process.ts' },
  banner: { js: '(function (require, importModule, url) {' },
  footer: { js: '})' },
})
// V8 reads a script sooner that is all ASCII; what esbuild leaves otherwise stands in patterns.
const command = join(folder, 'command.cjs')
const escaped = readFileSync(command, 'utf8').replace(/[^\0-\x7f]/g, one => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`)
writeFileSync(command, escaped)
await build({
  ...shared,
  entryPoints: { cli: 'src/faces/start.ts' },
  outExtension: { '.js': '.cjs' },
  format: 'cjs',
  define: { 'import.meta.dirname': '__dirname' },
})

// The trees of the standard gear's texts, so that a check need not parse them.
const { parse } = await import(pathToFileURL(join(folder, 'index.js')).href)
mkdirSync(join(folder, 'trees'))
for (const file of readdirSync('rigs/gear').filter(file => file.endsWith('.rig'))) {
  const text = readFileSync(join('rigs/gear', file), 'utf8')
  const { value: tree, findings } = parse({ name: `standard gear/${file}`, text })
  if (findings.length === 0) writeFileSync(join(folder, 'trees', `${file}.json`), JSON.stringify(tree))
}

// The rules' pages go with the program: `explain` prints them.
cpSync('src/rules', join(folder, 'rules'), {
  recursive: true,
  filter: path => !path.endsWith('.ts'),
})
// What `reckon --format json` and `find --format json` promise.
for (const verb of ['reckon', 'find'])
  cpSync(`src/press/figures/${verb}.schema.json`, join(folder, 'schema', `${verb}.json`))

// Compiled by a run of the command, so that all that a check needs is in it.
const keeper = fileURLToPath(new URL('keep-compiled.mjs', import.meta.url))
const { status } = spawnSync(process.execPath, [keeper, folder], { stdio: ['ignore', 'ignore', 'inherit'] })
if (status !== 0) throw new Error('the command could not be run')
