/** What every sheet says of its own making. Handed in: no sheet reads a clock or a file. */
export interface Imprint {
  /** Digest of all the sources, two groups of four: '7Q4K-9MTX'. */
  readonly digest: string
  /** The entry file's name, as printed. */
  readonly from: string
  /** Errors in the rig; more than zero marks the sheet "from a rig with n errors" and leaves out the digest. */
  readonly errors: number
}

/** Standard papers, upright, in millimetres (ISO 216; ANSI/ASME Y14.1). */
export const paper = {
  A3: { width: 297, height: 420 },
  A4: { width: 210, height: 297 },
  A5: { width: 148, height: 210 },
  Tabloid: { width: 279.4, height: 431.8 },
  Letter: { width: 215.9, height: 279.4 },
} as const

/** What a paper is called that is twice as long and broad (ISO 216 and DIN 476; ANSI/ASME Y14.1). */
const twice: Readonly<Record<string, string>> = {
  A3: 'A1',
  A2: 'A0',
  A1: '2A0',
  A0: '4A0',
  Tabloid: 'ANSI D',
  'ANSI C': 'ANSI E',
}

/** A paper's name at so many times its length and breadth. */
export const enlargedName = (name: string, times: number): string =>
  times === 1 ? name : ((times === 2 ? twice[name] : undefined) ?? `${name} at ${100 * times} %`)

/** What the user names with --paper: the ISO family or the American one. */
export type PaperFamily = 'A4' | 'Letter'
