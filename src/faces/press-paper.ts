import { loadFonts } from '../press/fonts/index.ts'
import { toPdf } from '../press/pdf/index.ts'
import { toSvg } from '../press/svg/index.ts'
import type { Coverage, Ruler } from '../sheets/index.ts'
import type { Paper } from '../sheets/papers.ts'
import { readPackaged } from './packaged.ts'
import type { Finished } from './publish.ts'

/** A press with its fonts loaded, and what the sheets want of those. */
export interface Press {
  readonly ruler: Ruler
  readonly covers: Coverage
  /** Presses a paper into its files: the PDF, and the SVG where it is a single sheet. */
  readonly press: (paper: Paper) => Promise<readonly Finished[]>
}

export async function openPress(): Promise<Press> {
  const fonts = await loadFonts(readPackaged)
  return {
    ruler: fonts.ruler,
    covers: fonts.covers,
    press: async ({ document, sheet }) => [
      ...(sheet ? [{ name: `${document.id}.svg`, bytes: await toSvg(sheet, fonts) }] : []),
      { name: `${document.id}.pdf`, bytes: await toPdf(document, fonts) },
    ],
  }
}
