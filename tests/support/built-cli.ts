import { spawn, spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** Builds the command line as it is now into a folder inside the package, and returns the file to run. */
export async function builtCli(): Promise<string> {
  const cache = join(root, 'node_modules', '.cache')
  mkdirSync(cache, { recursive: true })
  const outdir = mkdtempSync(join(cache, 'crosstree-'))
  await build({
    entryPoints: { cli: join(root, 'src/faces/cli.ts') },
    outdir,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
  })
  return join(outdir, 'cli.mjs')
}

/** How a run ended. */
export interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs the command to its end. */
export function run(
  cli: string,
  args: readonly string[],
  { cwd = root, input, env = {} }: RunOptions = {},
): Ran {
  const done = spawnSync(process.execPath, [cli, ...args], {
    cwd,
    input: input ?? '',
    env: { ...process.env, ...env },
    encoding: 'utf8',
    timeout: 200_000,
    maxBuffer: 64 * 1024 * 1024,
  })
  return { code: done.status, out: done.stdout, err: done.stderr }
}

export interface RunOptions {
  readonly cwd?: string
  readonly input?: string | Uint8Array
  readonly env?: Record<string, string>
}

/** Starts the command and leaves it running. */
export const start = (cli: string, args: readonly string[], cwd: string) =>
  spawn(process.execPath, [cli, ...args], { cwd, stdio: 'ignore' })
