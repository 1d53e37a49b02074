import { cpSync, rmSync } from 'node:fs'
import { build } from 'esbuild'

// Chevrotain and commander are bundled, so that `check` starts fast; what only papers need stays outside and is
// loaded when asked for.
rmSync('dist', { recursive: true, force: true })
await build({
  entryPoints: { cli: 'src/faces/cli.ts', index: 'src/index.ts' },
  outdir: 'dist',
  bundle: true,
  splitting: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  // Commander is CommonJS and asks for Node's own modules by require.
  banner: { js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(import.meta.url);" },
  minifySyntax: true,
  legalComments: 'linked',
  chunkNames: 'parts/[name]-[hash]',
  external: ['pdfkit', 'fontkit', 'svgdom', '@svgdotjs/svg.js', 'harfbuzzjs', 'harfbuzzjs/*', 'fflate', 'uqr'],
})
// The rules' pages go with the program: `explain` prints them.
cpSync('src/rules', 'dist/rules', {
  recursive: true,
  filter: path => !path.endsWith('.ts'),
})
// What `reckon --format json` promises.
cpSync('src/press/figures/reckon.schema.json', 'dist/schema/reckon.json')
