/** Inks of the fine style, as colours on screen. Tints never carry meaning alone. */
export const ink = {
  paper: '#FCFAF5',
  ink: '#1B1F24',
  rig: '#565D66',
  faint: '#8C9299',
  rule: '#B9B2A4',
  more: '#0B5688',
  less: '#A34A0A',
  hull: '#343B43',
  bootTop: '#8A4B2A',
  belowWater: '#E9DCCB',
  squareSail: '#F5ECD8',
  foreAndAftSail: '#DCE4E6',
  squareCloth: '#CDBF9F',
  foreAndAftCloth: '#B4C0C4',
  deck: '#F3ECDD',
  house: '#E2DACA',
  railPlank: '#E9DFC9',
} as const

/** Line weights in millimetres, a family in the ratio of root two. */
export const weight = { a: 0.13, b: 0.18, c: 0.25, d: 0.35, e: 0.5, f: 0.7 } as const

/** The only dashes: what is drawn by rule, what lies behind, what is conjectural. */
export const dash = { byRule: [1.6, 0.55], hidden: [0.35, 0.55], conjectural: [3, 1] } as const

/** Of running text, unless another is said. */
export const black = '#000000'
