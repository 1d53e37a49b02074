import type { Coverage, Face, Mark, PaperDocument } from '../../sheets/index.ts'
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
  for (const page of document.pages) collect(page.marks, covers, missing)
  return [...missing.values()]
}

function collect(marks: readonly Mark[], covers: Coverage, missing: Map<string, MissingGlyphs>): void {
  for (const mark of marks) {
    if (mark.kind === 'group') collect(mark.marks, covers, missing)
    if (mark.kind !== 'text' || covers(mark.words, mark.type.face)) continue
    const { words } = mark
    const { face } = mark.type
    const lacking = Array.from(printable(words)).filter(character => !covers(character, face))
    missing.set(`${face}|${words}`, { face, words, characters: [...new Set(lacking)] })
  }
}
