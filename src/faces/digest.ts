import { createHash } from 'node:crypto'
import type { Source } from '../text/index.ts'

/** Crockford's base 32: no letter that can be taken for a figure, nor read out for another. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'

/** Digest of all texts a rig was compiled from, as printed on every sheet: two groups of four, '7Q4K-9MTX'. */
export function digestOf(sources: readonly Source[]): string {
  const hash = createHash('sha256')
  for (const { text } of sources) {
    hash.update(`${Buffer.byteLength(text)}\n`)
    hash.update(text)
  }
  let bits = BigInt(`0x${hash.digest('hex').slice(0, 10)}`)
  let letters = ''
  for (let i = 0; i < 8; i++) {
    letters = `${alphabet[Number(bits & 31n)]}${letters}`
    bits >>= 5n
  }
  return `${letters.slice(0, 4)}-${letters.slice(4)}`
}
