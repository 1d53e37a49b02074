/** The faces the sheets are set in, all whole open faces (OFL 1.1) that the press embeds. */
export type Face =
  | 'Spectral'
  | 'Spectral Italic'
  | 'Spectral Medium'
  | 'Spectral Medium Italic'
  | 'Spectral SemiBold'
  | 'Spectral Bold'
  | 'Spectral SC'
  | 'Spectral SC Medium'
  | 'Spectral SC SemiBold'
  | 'Fira Sans Condensed'
  | 'Fira Sans Condensed Italic'
  | 'Fira Sans Condensed Medium'
  | 'Fira Sans Condensed SemiBold'
  | 'Fira Sans Condensed Bold'
  | 'Fira Sans Condensed SemiBold Italic'

/** A face at a size. `size` in points, `tracking` in em added after every letter. */
export interface Typeface {
  readonly face: Face
  readonly size: number
  readonly tracking?: number
  /** Tabular lining figures, for columns. */
  readonly tabular?: boolean
}

/** Width of words in millimetres, with kerning and tracking, measured from the very font the press embeds. */
export type Ruler = (words: string, type: Typeface) => number

/** Whether the face has a glyph for every character: what it lacks would print as an empty box. */
export type Coverage = (words: string, face: Face) => boolean

/** Millimetres in a typographic point: 1/72 of an inch of 25.4 mm. */
export const millimetresPerPoint = 25.4 / 72

/** Height of capitals in millimetres at this size: Spectral 0.66 em, Fira Sans Condensed 0.69 em. */
export function capHeight({ face, size }: Typeface): number {
  return (face.startsWith('Fira') ? 0.69 : 0.66) * size * millimetresPerPoint
}
