import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The package's own folder, found upward from this file: the same from the sources and when built. */
export const home = findHome(dirname(fileURLToPath(import.meta.url)))

function findHome(from: string): string {
  if (existsSync(join(from, 'package.json'))) return from
  const above = dirname(from)
  if (above === from) throw new Error('the package has lost its package.json')
  return findHome(above)
}

/** The standard gear that comes with the program. */
export const standardGearFolder = join(home, 'rigs', 'gear')
