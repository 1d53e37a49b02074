import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'

/**
 * The golden file of this name under tests/golden. `UPDATE_GOLDEN=1 npx vitest run` writes what is drawn now
 * in its place: look at it before it is committed, and say in the commit what changed to the eye.
 */
export function golden(name: string, drawn: string): string {
  const file = fileURLToPath(new URL(`../golden/${name}`, import.meta.url))
  if (process.env.UPDATE_GOLDEN === '1') {
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, drawn)
  }
  return existsSync(file)
    ? readFileSync(file, 'utf8')
    : `no golden file ${name}: write it with UPDATE_GOLDEN=1`
}
