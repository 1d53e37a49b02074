import type { Coverage, Face, PaperDocument } from '../../sheets/index.ts'
import { textMarks } from '../text-marks.ts'
import { printable } from '../words.ts'

/** Words that a face can't set whole, and the characters it lacks. */
export interface MissingGlyphs {
  readonly face: Face
  readonly words: string
  readonly characters: readonly string[]
}

/**
 * What the faces of a document lack, each text once: on paper a box stands for every such character, so
 * whoever prints should be warned. An SVG keeps the characters, and a browser may find them in a font of its own.
 */
export function missingGlyphs(document: PaperDocument, covers: Coverage): readonly MissingGlyphs[] {
  const missing = new Map<string, MissingGlyphs>()
  for (const { words, type } of document.pages.flatMap(page => [...textMarks(page.marks)])) {
    const { face } = type
    if (covers(words, face)) continue
    const lacking = Array.from(printable(words)).filter(character => !covers(character, face))
    missing.set(`${face}|${words}`, { face, words, characters: [...new Set(lacking)] })
  }
  return [...missing.values()]
}
