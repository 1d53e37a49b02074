import type { Finding } from '../../src/findings/index.ts'
import { type Drawn, type PaperKind, paperMakers } from '../../src/sheets/papers.ts'
import { installedFonts } from './fonts.ts'

const { ruler, covers } = await installedFonts()
const imprint = { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 }

/** What is found while papers of these kinds are laid out on A4; all kinds unless said. */
export function paperFindings(
  drawn: Drawn,
  kinds: readonly PaperKind[] = ['sail plan', 'pin charts', 'handbooks'],
): readonly Finding[] {
  const makers = paperMakers(drawn, { ruler, covers, imprint, paper: 'A4' }, new Set(kinds))
  return makers.flatMap(make => make().findings)
}
