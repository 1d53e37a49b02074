import type { Typeface } from '../typeface.ts'

/** The faces of a deck chart. Codes and numbers are the heaviest; nothing is under 8 pt. */
export const chartType = {
  vessels: [22, 18, 14].map(size => ({ face: 'Spectral SC Medium', size, tracking: 0.09 }) as const),
  vesselLeast: { face: 'Spectral SC Medium', size: 11, tracking: 0.05 },
  subtitle: { face: 'Spectral Italic', size: 10.5 },
  fact: { face: 'Fira Sans Condensed', size: 8.5 },
  side: { face: 'Spectral SC Medium', size: 11, tracking: 0.12 },
  code: { face: 'Fira Sans Condensed SemiBold', size: 8.5, tracking: 0.03 },
  railName: { face: 'Spectral SC Medium', size: 8.5, tracking: 0.05 },
  number: { face: 'Fira Sans Condensed SemiBold', size: 8, tabular: true },
  letter: { face: 'Fira Sans Condensed SemiBold', size: 8 },
  line: { face: 'Fira Sans Condensed', size: 8 },
  free: { face: 'Spectral Italic', size: 8 },
  deckNumber: { face: 'Fira Sans Condensed', size: 8, tabular: true },
  deckCode: { face: 'Fira Sans Condensed SemiBold', size: 8 },
  thing: { face: 'Spectral Italic', size: 8 },
  deck: { face: 'Spectral Italic', size: 9, tracking: 0.04 },
  mast: { face: 'Spectral SC Medium', size: 8, tracking: 0.08 },
  keyHead: { face: 'Spectral SC Medium', size: 9, tracking: 0.08 },
  key: { face: 'Spectral', size: 8.5 },
  note: { face: 'Spectral Italic', size: 8 },
  value: { face: 'Spectral', size: 8 },
  digest: { face: 'Fira Sans Condensed SemiBold', size: 8 },
} as const satisfies Record<string, Typeface | readonly Typeface[]>

/** From baseline to baseline of a list. */
export const listStep = 3.62
