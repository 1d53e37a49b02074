import type { Face, TextMark } from '../../sheets/index.ts'
import { wholeRuns } from './alphabet.ts'
import { type Features, featuresOf } from './features.ts'
import type { OpenFace } from './open-face.ts'

/** Glyphs of one face, each with the characters it stands for. */
export type GlyphsInUse = ReadonlyMap<number, string>

/**
 * The glyphs that texts are set in, the space between them, and the rest of the alphabets they come from, by face in
 * the order of first use.
 */
export function glyphsInUse(
  texts: Iterable<TextMark>,
  open: (face: Face) => OpenFace,
): ReadonlyMap<Face, GlyphsInUse> {
  const faces = new Map<Face, Map<Features, Set<string>>>()
  for (const { words, type } of texts) {
    if (words === '') continue
    const manners = entryOf(faces, type.face, () => new Map<Features, Set<string>>())
    entryOf(manners, featuresOf(type), () => new Set([' '])).add(words)
  }
  return new Map([...faces].map(([face, manners]) => [face, glyphsOf(manners, open(face))]))
}

function glyphsOf(manners: ReadonlyMap<Features, ReadonlySet<string>>, { run }: OpenFace): GlyphsInUse {
  const glyphs = new Map<number, string>()
  for (const [features, texts] of manners) {
    const take = (words: string) => {
      for (const { id, characters } of run(words, features).glyphs)
        if (!glyphs.has(id)) glyphs.set(id, characters)
    }
    const characters = new Set<string>()
    for (const words of texts) for (const character of words) characters.add(character)
    wholeRuns(characters).forEach(take)
    texts.forEach(take)
  }
  return glyphs
}

function entryOf<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  const found = map.get(key) ?? make()
  map.set(key, found)
  return found
}
