import { spawnSync } from 'node:child_process'
import { cpSync, rmSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

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

rmSync(folder, { recursive: true, force: true })
// The library and those verbs. What only papers need stays outside, and is loaded when asked for.
await build({
  ...shared,
  entryPoints: ['src/index.ts', ...verbs.map(verb => `src/faces/${verb}.ts`)],
  entryNames: '[name]',
  chunkNames: 'parts/[name]-[hash]',
  splitting: true,
  external: ['pdfkit', 'fontkit', 'svgdom', '@svgdotjs/svg.js', 'harfbuzzjs', 'harfbuzzjs/*', 'fflate', 'uqr', 'highs'],
})
// The command with its check, as one script that V8 can be handed compiled; and what starts it.
await build({
  ...shared,
  entryPoints: { command: 'src/faces/cli.ts' },
  outExtension: { '.js': '.cjs' },
  format: 'iife',
  plugins: [verbsApart],
  define: { 'import.meta.url': 'url' },
  banner: { js: '(function (require, importModule, url) {' },
  footer: { js: '})' },
})
await build({ ...shared, entryPoints: { cli: 'src/faces/start.ts' } })

// The rules' pages go with the program: `explain` prints them.
cpSync('src/rules', join(folder, 'rules'), {
  recursive: true,
  filter: path => !path.endsWith('.ts'),
})
// What `reckon --format json` promises.
cpSync('src/press/figures/reckon.schema.json', join(folder, 'schema', 'reckon.json'))

// Compiled by a run of the command, so that all that a check needs is in it.
const keeper = fileURLToPath(new URL('keep-compiled.mjs', import.meta.url))
const { status } = spawnSync(process.execPath, [keeper, folder], { stdio: ['ignore', 'ignore', 'inherit'] })
if (status !== 0) throw new Error('the command could not be run')
