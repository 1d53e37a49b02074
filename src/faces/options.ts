import type { StyleName } from '../sheets/index.ts'

/** How findings are written. */
export type Format = 'plain' | 'json' | 'sarif'

/** Options of `check`. */
export interface CheckOptions {
  readonly format: Format
  readonly name: string
  readonly fix?: boolean
  readonly write?: boolean
}

/** Options of `fair`. */
export interface FairOptions {
  readonly check?: boolean
  readonly name: string
}

/** Options of the verbs that write papers. */
export interface PaperOptions {
  /** Of sail plan and charts. */
  readonly style?: StyleName
  readonly into?: string
  readonly paper: 'A4' | 'Letter'
  readonly language?: string
  readonly nicknames?: boolean
  readonly unsound?: boolean
  readonly format: Format
  readonly name: string
}
