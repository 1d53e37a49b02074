import type { FaceFile } from '../fonts/index.ts'

/** Each family, and what may stand for it where an SVG's own fonts are not heeded. */
export const families: Readonly<Record<FaceFile['family'], string>> = {
  Spectral: 'Spectral, Georgia, serif',
  'Spectral SC': 'Spectral SC, Georgia, serif',
  'Fira Sans Condensed': 'Fira Sans Condensed, Arial Narrow, sans-serif',
}
