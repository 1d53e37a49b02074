import { smallWords } from '../syntax/index.ts'
import type { Space } from './tables.ts'

const small = new Set<string>(smallWords)

/** Whether a name needs no quotes: no word of it would end it, and all are plain words. */
export const isPlain = (name: string) =>
  name.split(/\s+/).every(word => /^\p{L}[\p{L}\p{N}'’-]*$/u.test(word) && !small.has(word.toLowerCase()))

/** A name as it stands in a text. */
export const spoken = (name: string) => (isPlain(name) ? name : `"${name.replaceAll('"', '')}"`)

export const metres = (value: number) => `${Math.abs(value).toFixed(2)} m`
export const aft = (x: number) => `${metres(x)} ${x < 0 ? 'forward' : 'aft'}`
export const up = (z: number) => `${metres(z)} ${z < 0 ? 'below' : 'up'}`
export const millimetres = (value: number) => `${Number(value.toFixed(1))} mm`
export const hands = (count: number) => `${count} ${count === 1 ? 'hand' : 'hands'}`

/** A point as it is said of a line that belongs to a side: 'out' on its own side, by name on the other. */
export function place([x, y, z]: Space, side: 'port' | 'starboard' | undefined): string {
  if (Math.abs(y) < 0.005) return `${aft(x)} ${up(z)}`
  const its = y < 0 ? 'port' : 'starboard'
  return `${aft(x)} ${metres(y)} ${its === side ? 'out' : its} ${up(z)}`
}

export const athwart = ([x, y]: Space) =>
  Math.abs(y) < 0.005 ? aft(x) : `${aft(x)} ${metres(y)} ${y < 0 ? 'port' : 'starboard'}`
