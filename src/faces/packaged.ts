import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'

const require = createRequire(import.meta.url)

/** A file of an installed package, found as Node finds packages. */
export const readPackaged = (path: string): Promise<Uint8Array> => readFile(require.resolve(path))
