import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

/** A rig's text, and the files it may bring in: beside it lies `gear/`, the standard gear. No tree is kept. */
export function rigIn(rig) {
  const folder = dirname(rig)
  const read = ({ shelf, path }) => {
    const text = readFileSync(join(folder, shelf === 'standard gear' ? 'gear' : '', path), 'utf8')
    return { kind: 'text', source: { name: `${shelf}/${path}`, text }, findings: [] }
  }
  return { files: { read }, source: { name: rig, text: readFileSync(rig, 'utf8') } }
}
