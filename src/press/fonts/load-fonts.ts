import type { Coverage, Face, Ruler } from '../../sheets/index.ts'
import { once } from '../once.ts'
import { coverage } from './coverage.ts'
import { faceFiles } from './faces.ts'
import { shaper } from './harfbuzz.ts'
import { openFace } from './open-face.ts'
import type { PdfFonts } from './pdf-fonts.ts'
import { fontRuler } from './ruler.ts'
import { subsetter } from './subset.ts'

/** All that is known of the faces: how wide words are, what they lack, and what the presses embed. */
export interface Fonts {
  readonly ruler: Ruler
  readonly covers: Coverage
  /** Printable words, with its near twin for a character that the face lacks, if it has one: a prime's is a quote. */
  readonly spelled: (words: string, face: Face) => string
  /** Words as the face can set them: spelled, and with a box for every character it still lacks. */
  readonly settable: (words: string, face: Face) => string
  readonly forPdf: () => Promise<PdfFonts>
  /** A small TTF of the face with these characters, for a browser. */
  readonly forBrowser: (face: Face, characters: ReadonlySet<string>) => Promise<Uint8Array>
}

/**
 * Reads the fonts, and the shaper that measures with them, through `read`: it is given the path of a file
 * among the installed packages, such as '@expo-google-fonts/spectral/400Regular/Spectral_400Regular.ttf'.
 * What only one format needs is read when that format first asks.
 */
export async function loadFonts(read: (packagePath: string) => Promise<Uint8Array>): Promise<Fonts> {
  const [openFont, ...files] = await Promise.all([
    read('harfbuzzjs/dist/harfbuzz.wasm').then(shaper),
    ...faces.map(async face => [face, await read(faceFiles[face].path)] as const),
  ])
  const readFaces = new Map(files)
  const bytes = (face: Face) => readFaces.get(face) as Uint8Array
  const open = once((face: Face) => openFace(openFont(bytes(face))))
  const subsets = lazily(async () => {
    const ofFont = await read('harfbuzzjs/dist/harfbuzz-subset.wasm').then(subsetter)
    return once((face: Face) => {
      const ofFace = ofFont(bytes(face))
      return once((characters: string) => ofFace(new Set(characters)))
    })
  })
  const forPdf = lazily(() => import('./pdf-fonts.ts').then(({ pdfFonts }) => pdfFonts(bytes, open)))
  return {
    ruler: fontRuler(open),
    covers: coverage(open),
    spelled: (words, face) => open(face).spelled(words),
    settable: (words, face) => open(face).settable(words),
    forPdf,
    forBrowser: async (face, characters) => (await subsets())(face)([...characters].sort().join('')),
  }
}

const faces = Object.keys(faceFiles) as Face[]

function lazily<Value>(make: () => Value): () => Value {
  const made = once((_: 'it') => make())
  return () => made('it')
}
