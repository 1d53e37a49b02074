import type { Span } from '../text/index.ts'

/** A station: a party of hands and the rails it works. */
export interface Station {
  readonly name: string
  readonly label: string
  readonly handsInWatch: number | undefined
  readonly handsInAll: number | undefined
  /** Codes of its rails ('FR-P', 'FR-S'), in the order of the text, port before starboard. */
  readonly rails: readonly string[]
  /** `pairKey`s of lines it works on other stations' rails: these outweigh the rail. */
  readonly lines: readonly string[]
  /** Names of the stations it is manned by, where it has no hands of its own. */
  readonly mannedBy: readonly string[]
  /** Other duties: 'helm'. */
  readonly takes: readonly string[]
  readonly span: Span
}
