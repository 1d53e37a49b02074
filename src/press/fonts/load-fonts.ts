import type { Font } from 'fontkit'
import type { Coverage, Face, Ruler } from '../../sheets/index.ts'
import { coverage } from './coverage.ts'
import { faceFiles } from './faces.ts'
import { glyphOutlines, type Outlines } from './outlines.ts'
import { fontRuler } from './ruler.ts'

/** A font as the PDF library takes it; nothing else is to be known of it. */
export type ParsedFont = { readonly parsed: unique symbol }

/** All that is known of the faces: how wide words are, what they lack, and what the presses embed. */
export interface Fonts {
  readonly ruler: Ruler
  readonly covers: Coverage
  readonly outlines: Outlines
  readonly parsed: (face: Face) => ParsedFont
}

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
  const font = once((face: Face) => create(bytes.get(face) as Buffer) as Font)
  return {
    ruler: fontRuler(font),
    covers: coverage(font),
    outlines: glyphOutlines(font),
    parsed: face => font(face) as unknown as ParsedFont,
  }
}

const faces = Object.keys(faceFiles) as Face[]

function once<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const made = new Map<Key, Value>()
  return key => {
    const before = made.get(key)
    if (before !== undefined) return before
    const value = make(key)
    made.set(key, value)
    return value
  }
}
