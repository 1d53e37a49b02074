// Analyses the grammar once, so that what is bundled needn't do it at every start.
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const syntax = fileURLToPath(new URL('src/syntax', import.meta.url))

/** A plugin of esbuild that puts what the analysis of the grammar tells where the parser looks for it. */
export async function keptAnalysis() {
  const { outputFiles } = await build({
    stdin: {
      resolveDir: syntax,
      contents: `
        import { RigParser } from './parser.ts'
        import { lookaheadOf } from './sound-reader.ts'
        export const lookahead = JSON.stringify(lookaheadOf(new RigParser()))`,
    },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'esm',
  })
  const script = Buffer.from(outputFiles[0].contents).toString('base64')
  const { lookahead } = await import(`data:text/javascript;base64,${script}`)
  return {
    name: 'kept analysis',
    setup: ({ onLoad }) =>
      onLoad({ filter: /src.syntax.kept-lookahead\.ts$/ }, () => ({
        contents: `export const keptLookahead = JSON.parse('${lookahead}')`,
      })),
  }
}
