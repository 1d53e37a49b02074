import { millimetresPerPoint, type Typeface } from '../typeface.ts'

/** The faces of a strip. Sizes are given for a body of 15 pt, read at 0.75 m; `scale` carries them further off. */
export function stripType(scale: number) {
  const at = (type: Typeface): Typeface => ({ ...type, size: type.size * scale })
  return {
    number: at({ face: 'Fira Sans Condensed SemiBold', size: 24, tabular: true }),
    letter: at({ face: 'Fira Sans Condensed SemiBold', size: 17 }),
    bands: [17, 16, 15].map(size => at({ face: 'Fira Sans Condensed SemiBold', size })),
    name: at({ face: 'Fira Sans Condensed SemiBold', size: 18 }),
    nameInLines: at({ face: 'Fira Sans Condensed SemiBold', size: 15.5 }),
    body: at({ face: 'Fira Sans Condensed', size: 15 }),
    ease: at({ face: 'Fira Sans Condensed Italic', size: 15 }),
    free: at({ face: 'Spectral Italic', size: 15 }),
  } as const
}

export type StripType = ReturnType<typeof stripType>

/** Faces of the head and the foot, the same on every strip. */
export const headType = {
  code: { face: 'Fira Sans Condensed SemiBold', size: 30 },
  titles: [24, 21, 18].map(size => ({ face: 'Spectral SC Medium', size, tracking: 0.05 }) as const),
  titleLeast: { face: 'Spectral SC Medium', size: 15, tracking: 0.05 },
  vessel: { face: 'Spectral SC Medium', size: 15, tracking: 0.09 },
  beside: { face: 'Spectral Italic', size: 15 },
  row: { face: 'Spectral SC', size: 12, tracking: 0.05 },
  footItalic: { face: 'Spectral Italic', size: 8 },
  foot: { face: 'Fira Sans Condensed', size: 8 },
} as const satisfies Record<string, Typeface | readonly Typeface[]>

/** From baseline to baseline where one cell holds several lines, tight as a strip must be: 0.99 of the size. */
export const lineStep = ({ size }: Typeface): number => 0.99 * size * millimetresPerPoint

/** The distance a body size is set for, in metres: 15 pt are read at 0.75, 20 at 1, and so on in proportion. */
export const readingDistance = (bodySize: number): number => bodySize / 20
