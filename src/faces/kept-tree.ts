import { readFileSync } from 'node:fs'
import type { Tree } from '../syntax/index.ts'
import type { Source } from '../text/index.ts'

/** Where the build keeps the trees of the standard gear's texts. Run from the sources there are none. */
const folder = new URL('./trees/', import.meta.url)

/** The tree that the build kept of a text of the standard gear; undefined where it kept none of this very text. */
export function keptTree(path: string, { name, text }: Source): Tree | undefined {
  try {
    const tree: Tree = JSON.parse(readFileSync(new URL(`${path}.json`, folder), 'utf8'))
    return tree.source.name === name && tree.source.text === text ? tree : undefined
  } catch {
    return undefined
  }
}
