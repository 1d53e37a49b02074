import { type Metres, metres } from '../../measure/index.ts'

/** A share of the vessel's measures or of spars named before it: { beam: 2.5 }, { 'main mast': 8 / 9 }. */
type Shares = Readonly<Record<string, number>>

/** A rule for the lengths of spars from the vessel's beam and length: each from what stands before it. */
export interface Proportions {
  readonly name: string
  readonly source: string
  readonly lengths: readonly (readonly [spar: string, of: Shares])[]
  /** Greatest thickness as a share of the length, for spars whose name ends so. */
  readonly thickness: readonly (readonly [spar: string, ofLength: number])[]
}

/** What a rule begins from; `length` is the waterline's, or the lower deck's in the navy's. */
export interface Dimensions {
  readonly beam: Metres
  readonly length: Metres
}

/** Lengths of all spars by a rule, in its order. */
export function lengthsBy(rule: Proportions, { beam, length }: Dimensions): ReadonlyMap<string, Metres> {
  const found = new Map<string, number>([
    ['beam', beam],
    ['length', length],
  ])
  for (const [spar, of] of rule.lengths) {
    const parts = Object.entries(of).map(([name, share]) => share * (found.get(name) ?? Number.NaN))
    found.set(
      spar,
      parts.reduce((sum, part) => sum + part, 0),
    )
  }
  found.delete('beam')
  found.delete('length')
  return new Map([...found].map(([spar, value]) => [spar, metres(value)]))
}

/** Greatest thickness of a spar of this length by a rule; undefined where the rule has none for it. */
export function thicknessBy(rule: Proportions, spar: string, length: Metres): Metres | undefined {
  const share = rule.thickness.find(([name]) => spar.endsWith(name))?.[1]
  return share === undefined ? undefined : metres(share * length)
}

/** Distances of three masts from the stem by the rule of sevenths: R. H. Dana Jr, The Seaman's Friend, 1847, ch. I. */
export const mastsBySevenths = (length: Metres): readonly [Metres, Metres, Metres] => [
  metres(length / 7),
  metres((length * 4) / 7),
  metres((length * 6) / 7),
]

/** Inches of thickness for a foot of length. */
const inchesAFoot = (n: number) => n / 12

const masts = ['main', 'fore', 'mizzen'] as const
/** The same share for the spar of each mast: topmasts of their lower masts. */
const each = (spar: string, of: string, share: number, on: readonly string[] = masts) =>
  on.map(mast => [`${mast} ${spar}`, { [`${mast} ${of}`]: share }] as const)

/** Rules in print, the oldest last. They differ among themselves, and from ships as built, by a third and more. */
export const proportions: readonly Proportions[] = [
  {
    name: 'merchantman, 1847',
    source: "R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. I",
    lengths: [
      ['main mast', { beam: 2.5 }],
      ['fore mast', { 'main mast': 8 / 9 }],
      ['mizzen mast', { 'main mast': 5 / 6 }],
      ['bowsprit', { 'main mast': 2 / 3 }],
      ['jib-boom', { bowsprit: 1 }],
      ...each('topmast', 'mast', 3 / 5),
      ...each('topgallant mast', 'topmast', 1 / 2),
      ['main yard', { beam: 2 }],
      ['fore yard', { 'main yard': 7 / 8 }],
      ...each('topsail yard', 'yard', 2 / 3, ['main', 'fore']),
      ...each('topgallant yard', 'topsail yard', 2 / 3, ['main', 'fore']),
      ...each('royal yard', 'topgallant yard', 2 / 3, ['main', 'fore']),
      ['crossjack yard', { 'main topsail yard': 1 }],
      ['mizzen topsail yard', { 'main topgallant yard': 1 }],
      ['spanker boom', { 'main topsail yard': 1 }],
      ['spanker gaff', { 'spanker boom': 2 / 3 }],
    ],
    thickness: [
      ['yard', inchesAFoot(1 / 4)],
      ['mast', inchesAFoot(1.25 / 3)],
    ],
  },
  {
    name: 'merchantman, 1830',
    source: 'P. Hedderwick, A Treatise on Marine Architecture, Edinburgh 1830, pp. 352 and 357',
    lengths: [
      ['main mast', { beam: 12 / 7, length: 4 / 21 }],
      ['fore mast', { 'main mast': 14 / 15 }],
      ['main masthead', { 'main mast': 0.14 }],
      ['main topmast', { 'main mast': 4 / 7 }],
      ['main topgallant mast', { 'main topmast': 5 / 9 }],
      ['main royal mast', { 'main topgallant mast': 4 / 7 }],
      ['main pole', { 'main royal mast': 3 / 5 }],
    ],
    thickness: [
      ['topmast', inchesAFoot(1 / 3)],
      ['mast', inchesAFoot(0.3)],
    ],
  },
  {
    name: 'navy, 1794',
    source: 'D. Steel, Elements of Mastmaking, 1794, p. 39, second-hand',
    lengths: [
      ['main mast', { beam: 1 / 2, length: 1 / 2 }],
      ['fore mast', { 'main mast': 8 / 9 }],
      ['mizzen mast', { 'main mast': 6 / 7 }],
      ...each('topmast', 'mast', 3 / 5),
      ...each('topgallant mast', 'topmast', 1 / 2),
      ['main yard', { 'main mast': 8 / 9 }],
      ['fore yard', { 'main yard': 7 / 8 }],
      ['main topsail yard', { 'main yard': 5 / 7 }],
      ['main topgallant yard', { 'main topsail yard': 3 / 5 }],
    ],
    thickness: [
      ['topmast', inchesAFoot(1 / 3)],
      ['topgallant mast', inchesAFoot(1 / 3)],
    ],
  },
  {
    name: 'large ship, 1707',
    source: "The Sea-Man's Vade Mecum, London 1707, p. 131",
    lengths: [
      // (length + beam + half the beam) / 5 is in yards where they are in feet.
      ['main mast', { length: 3 / 5, beam: 9 / 10 }],
      ...each('topmast', 'mast', 2 / 3, ['main']),
      ['main yard', { 'main mast': 2 / 3 + 1 / 12 }],
      ['fore yard', { 'main yard': 6 / 7 }],
      ['main topsail yard', { 'main yard': 1 / 2 }],
    ],
    thickness: [],
  },
  {
    name: 'small ship, 1707',
    source: "The Sea-Man's Vade Mecum, London 1707, p. 131",
    lengths: [
      ['main mast', { beam: 3 }],
      ['main topmast', { 'main mast': 2 / 3 }],
      ['main yard', { 'main mast': 2 / 3 + 1 / 12 }],
      ['fore yard', { 'main yard': 6 / 7 }],
      ['main topsail yard', { 'main yard': 1 / 2 }],
    ],
    thickness: [],
  },
  {
    name: 'bark, early 19th century',
    source: 'Edinburgh Encyclopaedia, construction of ships',
    lengths: [
      ['main yard', { length: 0.6 }],
      ['main topsail yard', { 'main yard': 0.81 }],
      ['main topgallant yard', { 'main topsail yard': 0.7 }],
    ],
    thickness: [],
  },
  {
    name: 'ship of 1627',
    source: 'J. Smith, A Sea Grammar, London 1627, ch. III',
    lengths: [['main mast', { beam: 72 / 29 }]],
    thickness: [['mast', 1 / 36]],
  },
]
