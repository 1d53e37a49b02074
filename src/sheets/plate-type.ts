import type { Typeface } from './typeface.ts'

/** Type of the plates, a role a line. Nothing in the hand is set under 8 points. */
export const plateType = {
  vessel: { face: 'Spectral SC Medium', size: 27, tracking: 0.09 },
  rig: { face: 'Spectral Italic', size: 12.5 },
  title: { face: 'Spectral', size: 10.5 },
  note: { face: 'Spectral Italic', size: 8.5 },
  unsound: { face: 'Spectral SC Medium', size: 10.5, tracking: 0.05, tabular: true },
  heading: { face: 'Spectral SC Medium', size: 9, tracking: 0.12 },
  key: { face: 'Spectral', size: 8.5 },
  list: { face: 'Spectral', size: 8 },
  listItalic: { face: 'Spectral Italic', size: 8 },
  bandLabel: { face: 'Spectral Italic', size: 8.5 },
  bandValue: { face: 'Spectral', size: 8.5 },
  scale: { face: 'Spectral', size: 9 },
  barNumber: { face: 'Fira Sans Condensed', size: 8, tabular: true },
  barUnit: { face: 'Spectral Italic', size: 8.5 },
  sheetNumber: { face: 'Spectral SC Medium', size: 14, tracking: 0.04, tabular: true },
  digest: { face: 'Fira Sans Condensed SemiBold', size: 8 },
  mark: { face: 'Fira Sans Condensed SemiBold', size: 8 },
  dimension: { face: 'Spectral Italic', size: 9 },
} as const satisfies Record<string, Typeface>
