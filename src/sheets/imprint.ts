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

/** What the user names with --paper: the ISO family or the American one. */
export type PaperFamily = 'A4' | 'Letter'
