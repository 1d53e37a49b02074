import type { Font, Glyph, GlyphPosition } from 'fontkit'
import type { Coverage, Face, Ruler } from '../../sheets/index.ts'
import { coverage } from './coverage.ts'
import { faceFiles } from './faces.ts'
import type { Features } from './features.ts'
import { type OpenFace, openFace } from './open-face.ts'
import { glyphOutlines, type Outlines } from './outlines.ts'
import { fontRuler } from './ruler.ts'
import { subsetter } from './subset.ts'

/** All that is known of the faces: how wide words are, what they lack, and what the presses embed. */
export interface Fonts {
  readonly ruler: Ruler
  readonly covers: Coverage
  readonly outlines: Outlines
  /** Printable words, with its near twin for a character that the face lacks, if it has one: a prime's is a quote. */
  readonly spelled: (words: string, face: Face) => string
  /** Words as the face can set them: spelled, and with a box for every character it still lacks. */
  readonly settable: (words: string, face: Face) => string
  /** The face for the PDF, which sets words with the very glyphs and kerning that the ruler measured. */
  readonly forPdf: (face: Face) => PdfFont
  /** A small TTF of the face with these characters, for a browser. */
  readonly forBrowser: (face: Face, characters: ReadonlySet<string>) => Promise<Uint8Array>
}

/** A font as the PDF library takes it; nothing else is to be known of it. */
export type PdfFont = { readonly parsed: unique symbol }

/**
 * Reads every face through `read`, which is given the path of a file among the installed packages, such as
 * '@expo-google-fonts/spectral/400Regular/Spectral_400Regular.ttf'. Each is parsed when first used, and once.
 */
export async function loadFonts(read: (packagePath: string) => Promise<Uint8Array>): Promise<Fonts> {
  const [{ create }, ...files] = await Promise.all([
    import('fontkit'),
    ...faces.map(async face => [face, await read(faceFiles[face].path)] as const),
  ])
  const bytes = new Map(files)
  const open = once((face: Face) => openFace(create(bytes.get(face) as Buffer) as Font))
  const harfbuzz = once((path: string) => read(path).then(subsetter))
  return {
    ruler: fontRuler(open),
    covers: coverage(open),
    outlines: glyphOutlines(open),
    spelled: (words, face) => open(face).spelled(words),
    settable: (words, face) => open(face).settable(words),
    forPdf: once((face: Face) => pdfFont(open(face))),
    forBrowser: async (face, characters) => {
      const subset = await harfbuzz('harfbuzzjs/dist/harfbuzz-subset.wasm')
      return subset(bytes.get(face) as Uint8Array, characters)
    },
  }
}

const faces = Object.keys(faceFiles) as Face[]

/** The same font, but for its layout: remembered, and copied because pdfkit scales positions in place. */
function pdfFont({ font, run }: OpenFace): PdfFont {
  const layout = (words: string, features: Features) => {
    const { glyphs, positions, advance } = run(words, features)
    return {
      glyphs: glyphs as Glyph[],
      positions: positions.map(position => ({ ...position })) as GlyphPosition[],
      advanceWidth: advance,
    }
  }
  return Object.create(font, { layout: { value: layout } }) as PdfFont
}

function once<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const made = new Map<Key, Value>()
  return key => {
    if (!made.has(key)) made.set(key, make(key))
    return made.get(key) as Value
  }
}
