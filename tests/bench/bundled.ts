import { mkdtempSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { keptAnalysis } from '../../keep-analysis.mjs'

/** Bundles the stages as the command is bundled; the path of the file. */
export async function bundleStages(): Promise<string> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'crosstree-')), 'stages.cjs')
  await build({
    entryPoints: [join(import.meta.dirname, 'stages.ts')],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    minifySyntax: true,
    plugins: [await keptAnalysis()],
  })
  return outfile
}

export const stagesOf = (bundle: string): typeof import('./stages.ts') =>
  createRequire(import.meta.url)(bundle)
