import { readFile } from 'node:fs/promises'
import { type Fonts, loadFonts } from '../../src/press/fonts/index.ts'

const packages = new URL('../../node_modules/', import.meta.url)

/** Fonts read anew, that remember nothing. */
export const freshFonts = (): Promise<Fonts> => loadFonts(path => readFile(new URL(path, packages)))

let loaded: Promise<Fonts> | undefined

/** The fonts as they are installed, read once for all tests of a file. */
export function installedFonts(): Promise<Fonts> {
  loaded ??= freshFonts()
  return loaded
}
