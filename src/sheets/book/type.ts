import type { Typeface } from '../typeface.ts'

// The one ink of the book: it must live through an office printer, a copier and a wet pocket.
export { black } from '../ink.ts'

/** Paper, as lettering on black is cut out of it. */
export const white = '#FFFFFF'

/** Line weights of the book, in millimetres. */
export const rule = {
  tableRow: points(0.3),
  furniture: points(0.5),
  frame: points(0.6),
  box: points(0.8),
  section: points(0.8),
  table: points(1.1),
  cautionEdge: points(3),
  cover: points(2.2),
} as const

/** Type of the handbook, a role a line. Nothing is set smaller than `smallest`. */
export const type = {
  station: { face: 'Spectral Bold', size: 54 },
  coverVessel: { face: 'Spectral SC Medium', size: 17, tracking: 0.08 },
  coverRig: { face: 'Spectral Medium Italic', size: 12.5 },
  coverKind: { face: 'Spectral Medium', size: 20 },
  cover: { face: 'Fira Sans Condensed', size: 11 },
  coverStrong: { face: 'Fira Sans Condensed SemiBold', size: 11 },
  title: { face: 'Spectral Bold', size: 20 },
  titleLong: { face: 'Spectral Bold', size: 19 },
  titleContinued: { face: 'Spectral Medium Italic', size: 12 },
  subtitle: { face: 'Spectral Medium Italic', size: 9.5 },
  chartSubtitle: { face: 'Spectral Medium Italic', size: 10 },
  section: { face: 'Spectral SC SemiBold', size: 11.5, tracking: 0.06 },
  sectionInTable: { face: 'Spectral SC SemiBold', size: 11, tracking: 0.06 },
  text: { face: 'Spectral Medium', size: 9.5 },
  textStrong: { face: 'Spectral Bold', size: 9.5 },
  textItalic: { face: 'Spectral Medium Italic', size: 9.5 },
  order: { face: 'Spectral SemiBold', size: 13 },
  answer: { face: 'Spectral Medium Italic', size: 10.5 },
  answerLabel: { face: 'Fira Sans Condensed', size: 8.5 },
  phaseNumeral: { face: 'Spectral Bold', size: 24 },
  working: { face: 'Fira Sans Condensed', size: 10.3 },
  workingAddress: { face: 'Fira Sans Condensed SemiBold', size: 10.3 },
  workingOthers: { face: 'Fira Sans Condensed Italic', size: 10.3 },
  cautionShort: { face: 'Fira Sans Condensed SemiBold', size: 10 },
  cautionFull: { face: 'Fira Sans Condensed Medium', size: 10.5 },
  cautionNumber: { face: 'Fira Sans Condensed SemiBold', size: 11.5 },
  tableHead: { face: 'Fira Sans Condensed SemiBold', size: 8.5 },
  register: { face: 'Fira Sans Condensed', size: 9.4 },
  registerStrong: { face: 'Fira Sans Condensed SemiBold', size: 9.4 },
  registerItalic: { face: 'Fira Sans Condensed Italic', size: 9.4 },
  registerFigures: { face: 'Fira Sans Condensed', size: 9.4, tabular: true },
  index: { face: 'Fira Sans Condensed', size: 9 },
  indexStrong: { face: 'Fira Sans Condensed SemiBold', size: 9 },
  indexItalic: { face: 'Fira Sans Condensed Italic', size: 9 },
  indexFigures: { face: 'Fira Sans Condensed', size: 9, tabular: true },
  chartSail: { face: 'Fira Sans Condensed', size: 10 },
  chartLine: { face: 'Fira Sans Condensed SemiBold', size: 10 },
  chartOthers: { face: 'Fira Sans Condensed Italic', size: 10 },
  chartNumber: { face: 'Fira Sans Condensed SemiBold', size: 9.5 },
  note: { face: 'Fira Sans Condensed', size: 9.5 },
  noteStrong: { face: 'Fira Sans Condensed SemiBold', size: 9.5 },
  noteItalic: { face: 'Fira Sans Condensed Italic', size: 9.5 },
  actionWord: { face: 'Fira Sans Condensed Bold', size: 9, tracking: 0.05 },
  count: { face: 'Spectral Bold', size: 24 },
  legend: { face: 'Fira Sans Condensed', size: 8.5 },
  headStation: { face: 'Fira Sans Condensed Bold', size: 8.5, tracking: 0.06 },
  headStationSmall: { face: 'Fira Sans Condensed Bold', size: 8 },
  headSection: { face: 'Fira Sans Condensed SemiBold', size: 8.5 },
  headSectionSmall: { face: 'Fira Sans Condensed SemiBold', size: 8 },
  headVessel: { face: 'Spectral SC Medium', size: 9.5, tracking: 0.06 },
  headVesselSmall: { face: 'Spectral SC Medium', size: 8 },
  foot: { face: 'Fira Sans Condensed', size: 8 },
  footStrong: { face: 'Fira Sans Condensed SemiBold', size: 8 },
} as const satisfies Record<string, Typeface>

/** The smallest type of the book, in points: what can be read in the hand. */
export const smallest = 8

/** Distance of baselines, in millimetres, for lines led at so many points. */
export const leading = {
  subtitle: points(12),
  text: points(12.6),
  working: points(12),
  cautionFull: points(12.4),
  register: points(11),
  index: points(11.6),
} as const

/** Points as millimetres. */
export function points(count: number): number {
  return (count * 25.4) / 72
}
