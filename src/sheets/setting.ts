import type { Imprint, PaperFamily } from './imprint.ts'
import type { StyleName } from './style.ts'
import type { Coverage, Ruler } from './typeface.ts'

/** What a sheet is set with: type metrics, its origin and its paper. All of it handed in. */
export interface Setting {
  readonly ruler: Ruler
  readonly imprint: Imprint
  readonly paper: PaperFamily
  /** Of the plan and the charts; fine where it is left out. A book has one ink. */
  readonly style?: StyleName
  /** Whether a face can print words; where it is left out, every name is taken as printable. */
  readonly covers?: Coverage
  /** Which of the written sheets this is; undefined for a sheet drawn by itself. */
  readonly sheetNumber?: { readonly n: number; readonly of: number }
}
