/** How much of what lies behind a sail its ground covers: the rest shows through. */
export const cover = { square: 0.66, foreAndAft: 0.9 } as const

const paper = '#FCFAF5'
const squareSail = '#F5ECD8'
const foreAndAftSail = '#DCE4E6'

/** Inks of the fine style, as colours on screen; no two are alike. Tints never carry meaning alone. */
export const ink = {
  paper,
  ink: '#1B1F24',
  rig: '#565D66',
  faint: '#8C9299',
  rule: '#B9B2A4',
  more: '#0B5688',
  less: '#A34A0A',
  hull: '#343B43',
  bootTop: '#8A4B2A',
  belowWater: '#E9DCCB',
  squareSail,
  foreAndAftSail,
  /** What the grounds of sails come to on paper, so that a gap in their seams does not show as a patch. */
  squareOnPaper: mixed(paper, squareSail, cover.square),
  foreAndAftOnPaper: mixed(paper, foreAndAftSail, cover.foreAndAft),
  squareCloth: '#CDBF9F',
  foreAndAftCloth: '#B4C0C4',
  deck: '#F3ECDD',
  house: '#E2DACA',
  railPlank: '#E9DFC9',
} as const

export type InkName = keyof typeof ink

/** Line weights in millimetres, a family in the ratio of root two. */
export const weight = { a: 0.13, b: 0.18, c: 0.25, d: 0.35, e: 0.5, f: 0.7 } as const

export type WeightName = keyof typeof weight

/** The only dashes: what is drawn by rule, what lies behind, what is conjectural. */
export const dash = { byRule: [1.6, 0.55], hidden: [0.35, 0.55], conjectural: [3, 1] } as const

/** Of running text, unless another is said. */
export const black = '#000000'

function mixed(under: string, over: string, share: number): string {
  const part = (colour: string, i: number) => Number.parseInt(colour.slice(1 + 2 * i, 3 + 2 * i), 16)
  const channel = (i: number) => Math.round(part(under, i) * (1 - share) + part(over, i) * share)
  return `#${[0, 1, 2].map(i => channel(i).toString(16).padStart(2, '0')).join('')}`.toUpperCase()
}
