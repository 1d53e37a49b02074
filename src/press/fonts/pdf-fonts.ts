import { create, type Font } from 'fontkit'
import { type Face, millimetresPerPoint, type PathStep, type Typeface } from '../../sheets/index.ts'
import { type Features, featuresOf } from './features.ts'
import type { OpenFace, Run } from './open-face.ts'
import { type Command, outline } from './outline.ts'

/** The faces as the PDF needs them. */
export interface PdfFonts {
  /** The face for pdfkit, which sets words with the very glyphs and kerning that the ruler measured. */
  readonly font: (face: Face) => PdfFont
  /** The outlines of words in millimetres, the first letter's origin at 0,0, y down. */
  readonly outlines: (words: string, type: Typeface) => readonly PathStep[]
}

/** A font as pdfkit takes it; nothing else is to be known of it. */
export type PdfFont = { readonly parsed: unique symbol }

/** Faces parsed by fontkit, as pdfkit wants them: it makes the subsets that a PDF embeds. */
export function pdfFonts(bytes: (face: Face) => Uint8Array, open: (face: Face) => OpenFace): PdfFonts {
  const parsed = new Map<Face, Font>()
  const parse = (face: Face) => {
    const font = parsed.get(face) ?? (create(bytes(face) as Buffer) as Font)
    parsed.set(face, font)
    return font
  }
  return {
    font: face => withLayout(parse(face), open(face)),
    outlines: (words, type) =>
      outlinesOf(open(type.face).run(words, featuresOf(type)), parse(type.face), type),
  }
}

/** The same font, but for its layout, which is ours. pdfkit scales what it is given, so it is given its own. */
function withLayout(font: Font, { run }: OpenFace): PdfFont {
  const layout = (words: string, features: Features) => {
    const { glyphs, advance } = run(words, features)
    return {
      glyphs: glyphs.map(({ id, characters }) => ({
        id,
        codePoints: codePoints(characters),
        advanceWidth: font.getGlyph(id).advanceWidth,
      })),
      positions: glyphs.map(glyph => ({
        xAdvance: glyph.advance,
        yAdvance: 0,
        xOffset: glyph.right,
        yOffset: glyph.up,
      })),
      advanceWidth: advance,
    }
  }
  return Object.create(font, { layout: { value: layout } }) as PdfFont
}

// Every glyph must mean something in a tagged PDF; a space of no width says nothing.
function codePoints(characters: string): readonly number[] {
  return Array.from(characters || '\u200b', character => character.codePointAt(0) as number)
}

function outlinesOf({ glyphs }: Run, font: Font, { size, tracking = 0 }: Typeface): readonly PathStep[] {
  const scale = (size * millimetresPerPoint) / font.unitsPerEm
  let pen = 0
  return glyphs.flatMap(({ id, advance, right, up }) => {
    const left = (pen + right) * scale
    pen += advance + tracking * font.unitsPerEm
    return outline(font.getGlyph(id).path.commands as readonly Command[], left, -up * scale, scale)
  })
}
