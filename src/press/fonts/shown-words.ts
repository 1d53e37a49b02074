import { once } from '../once.ts'
import type { Features } from './features.ts'
import type { Glyph, OpenFace } from './open-face.ts'

/** Words as a PDF shows them in a face. */
export interface ShownWords {
  /** Glyphs and the gaps between them, as the operator TJ takes them; `up` is how far they are raised, in ems. */
  readonly pieces: readonly { readonly up: number; readonly glyphs: string }[]
  /** Boxes stand in them for characters that the face lacks. */
  readonly hasStandIns: boolean
}

/**
 * Sets words in a subset of a face: `place` tells where it keeps a glyph, and `widths`, by that place, how far each
 * advances by itself, in thousandths of an em.
 */
export function shownWords(
  { run, settable, unitsPerEm }: OpenFace,
  place: (id: number) => number,
  widths: readonly number[],
): (words: string, features: Features) => ShownWords {
  const shown = once((features: Features) =>
    once((words: string) => ({
      pieces: piecesOf(run(words, features).glyphs),
      hasStandIns: settable(words) !== words,
    })),
  )
  const thousandths = (units: number) => (units * 1000) / unitsPerEm

  function piecesOf(glyphs: readonly Glyph[]): ShownWords['pieces'] {
    const pieces: { up: number; glyphs: string }[] = []
    for (const { id, advance, right, up } of glyphs) {
      const at = place(id)
      const gap = thousandths(advance - right) - (widths[at] as number)
      const glyph = `${moved(thousandths(right))}${at.toString(16).padStart(4, '0')}${moved(gap)}`
      const last = pieces.at(-1)
      if (last && last.up === up) last.glyphs += glyph
      else pieces.push({ up, glyphs: glyph })
    }
    return pieces.map(piece => ({
      up: piece.up / unitsPerEm,
      glyphs: `<${piece.glyphs}>`.replaceAll('<>', ''),
    }))
  }
  return (words, features) => shown(features)(words)
}

// A gap ends the letters before it and begins those after it. It is taken off the advance, not added to it.
function moved(gap: number): string {
  const thousandths = -Math.round(gap * 1e6) / 1e6
  return thousandths === 0 ? '' : `>${thousandths}<`
}
