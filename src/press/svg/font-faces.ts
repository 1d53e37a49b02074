import type { Face, Mark } from '../../sheets/index.ts'
import { type Fonts, faceFiles } from '../fonts/index.ts'
import { textMarks } from '../text-marks.ts'

/**
 * The style sheet that brings the fonts of these marks along: of each face the characters in use, in the
 * file itself, so that a drawing looks the same wherever it is opened and asks no network for anything.
 */
export async function fontFaces(marks: readonly Mark[], fonts: Fonts): Promise<string> {
  const used = charactersOf(marks, fonts)
  // Sorted, so that the file doesn't depend on which mark comes first.
  const faces = [...used].sort(([one], [other]) => (one < other ? -1 : 1))
  const rules = await Promise.all(
    faces.map(async ([face, characters]) => rule(face, await fonts.forBrowser(face, characters))),
  )
  return rules.join('')
}

function charactersOf(marks: readonly Mark[], fonts: Fonts): ReadonlyMap<Face, ReadonlySet<string>> {
  const used = new Map<Face, Set<string>>()
  for (const { words, type } of textMarks(marks)) {
    const characters = used.get(type.face) ?? new Set()
    used.set(type.face, characters)
    for (const character of fonts.spelled(words, type.face)) characters.add(character)
  }
  return used
}

function rule(face: Face, font: Uint8Array): string {
  const { family, weight, style } = faceFiles[face]
  const source = `url(data:font/ttf;base64,${base64(font)})`
  return `@font-face{font-family:'${family}';font-weight:${weight};font-style:${style};src:${source}}`
}

function base64(bytes: Uint8Array): string {
  const letters: string[] = []
  for (let at = 0; at < bytes.length; at += 8192)
    letters.push(String.fromCharCode(...bytes.subarray(at, at + 8192)))
  return btoa(letters.join(''))
}
