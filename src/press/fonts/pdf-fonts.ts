import { create, type Font } from 'fontkit'
import {
  type Face,
  millimetresPerPoint,
  type PathStep,
  type TextMark,
  type Typeface,
} from '../../sheets/index.ts'
import { once } from '../once.ts'
import { type Features, featuresOf } from './features.ts'
import { glyphsInUse } from './glyphs-in-use.ts'
import type { OpenFace, Run } from './open-face.ts'
import { type Command, outline } from './outline.ts'
import { type Pack, packer } from './pack.ts'
import { type ShownWords, shownWords } from './shown-words.ts'

/** The faces as the PDF needs them. */
export interface PdfFonts {
  /** The faces that these texts are set in, each as a document embeds it, in the order of their first use. */
  readonly embedded: (texts: Iterable<TextMark>) => ReadonlyMap<Face, EmbeddedFace>
  /** The outlines of words in millimetres, the first letter's origin at 0,0, y down. */
  readonly outlines: (words: string, type: Typeface) => readonly PathStep[]
  /** Packs the streams of a document; a subset that an earlier one had too is packed already. */
  readonly pack: Pack
}

/** A font as pdfkit takes it; nothing else is to be known of it. */
export type PdfFont = { readonly parsed: unique symbol }

/** One face in one document, with what pdfkit must know of every glyph of the subset, drawn or not. */
export interface EmbeddedFace {
  readonly font: PdfFont
  /** Words as the file shows them: with the very glyphs and kerning that the ruler measured. */
  readonly set: (words: string, features: Features) => ShownWords
  /** How far each glyph advances, in thousandths of an em. */
  readonly widths: readonly number[]
  /** The characters that each glyph stands for. */
  readonly meanings: readonly (readonly number[])[]
}

/**
 * Faces parsed by fontkit, as pdfkit wants them: it makes the subsets that a PDF embeds. A subset depends on
 * nothing but its glyphs, so that documents with the same glyphs share one, whichever is made first.
 */
export function pdfFonts(bytes: (face: Face) => Uint8Array, open: (face: Face) => OpenFace): PdfFonts {
  const parse = once((face: Face) => create(bytes(face) as Buffer) as Font)
  const { pack, keep } = packer()
  const subsets = once((face: Face) =>
    once((glyphs: string) => {
      const subset = subsetOf(parse(face), open(face), glyphs.split(' ').map(Number))
      keep(subset.bytes)
      return subset
    }),
  )
  const embedded = (face: Face, inUse: ReadonlyMap<number, string>): EmbeddedFace => {
    const glyphs = [...inUse.keys()].sort((one, other) => one - other)
    const { font, widths, set } = subsets(face)(glyphs.join(' '))
    return { font, widths, set, meanings: [[0], ...glyphs.map(id => codePoints(inUse.get(id) ?? ''))] }
  }
  return {
    embedded: texts =>
      new Map([...glyphsInUse(texts, open)].map(([face, inUse]) => [face, embedded(face, inUse)])),
    outlines: (words, type) =>
      outlinesOf(open(type.face).run(words, featuresOf(type)), parse(type.face), type),
    pack,
  }
}

/** A face with some of its glyphs: what documents that need just these share. */
interface Subset extends Omit<EmbeddedFace, 'meanings'> {
  readonly bytes: Uint8Array
}

function subsetOf(font: Font, open: OpenFace, glyphs: readonly number[]): Subset {
  // fontkit's published types are wrong about it.
  const subset = font.createSubset() as unknown as {
    readonly includeGlyph: (id: number) => number
    readonly encode: () => Uint8Array
  }
  const places = new Map(glyphs.map(id => [id, subset.includeGlyph(id)]))
  const widths = [0, ...glyphs].map(id => (font.getGlyph(id).advanceWidth * 1000) / font.unitsPerEm)
  const bytes = subset.encode()
  const ready = { createSubset: { value: () => ({ encode: () => bytes }) } }
  return {
    font: Object.create(font, ready) as PdfFont,
    widths,
    bytes,
    set: shownWords(open, id => places.get(id) as number, widths),
  }
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
