import type { Coverage, Face } from '../../sheets/index.ts'
import { printable } from '../words.ts'
import { nearTwin, type OpenFace } from './open-face.ts'

/** Whether the face can show each character of the words, as they would be printed. */
export function coverage(faces: (face: Face) => OpenFace): Coverage {
  return (words, face) => {
    const { has } = faces(face)
    return Array.from(printable(words)).every(
      character => has(character) || nearTwin(character) !== undefined,
    )
  }
}
