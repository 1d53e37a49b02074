import type { Font } from 'fontkit'
import type { Coverage, Face } from '../../sheets/index.ts'
import { printable } from '../words.ts'

/** Whether the font has a glyph for each character of the words, as they would be printed. */
export function coverage(font: (face: Face) => Font): Coverage {
  return (words, face) => {
    const { characterSet } = known(font(face))
    return [...printable(words)].every(character => characterSet.has(character.codePointAt(0) as number))
  }
}

const sets = new WeakMap<Font, { readonly characterSet: ReadonlySet<number> }>()

function known(font: Font): { readonly characterSet: ReadonlySet<number> } {
  const before = sets.get(font)
  if (before) return before
  const set = { characterSet: new Set(font.characterSet) }
  sets.set(font, set)
  return set
}
