import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { basename, join } from 'node:path'
import type { Compiled } from '../compile.ts'
import type { Finding } from '../findings/index.ts'
import type { Imprint, PaperFamily } from '../sheets/index.ts'
import type { PaperKind } from '../sheets/papers.ts'
import type { Progress } from './progress.ts'
import { type Finished, publish } from './publish.ts'

/** What is wanted of the papers of a compiled rig. */
export interface Order {
  readonly kinds: ReadonlySet<PaperKind>
  readonly paper: PaperFamily
  readonly folder: string
  readonly imprint: Imprint
}

/** Lays out, presses and publishes papers; returns the names written and what was found while laying out. */
export async function writePapers(
  compiled: Compiled,
  order: Order,
  progress: Progress,
): Promise<{ readonly names: readonly string[]; readonly findings: readonly Finding[] }> {
  const [{ paperMakers }, { loadFonts }, { toSvg }, { toPdf }] = await Promise.all([
    import('../sheets/papers.ts'),
    import('../press/fonts/index.ts'),
    import('../press/svg/index.ts'),
    import('../press/pdf/index.ts'),
  ])
  const fonts = await loadFonts(readPackaged)
  const { paper, imprint, kinds } = order
  const makers = paperMakers(compiled, { ruler: fonts.ruler, covers: fonts.covers, imprint, paper }, kinds)
  const files: Finished[] = []
  const findings: Finding[] = []
  for (const [index, make] of makers.entries()) {
    const made = make()
    findings.push(...made.findings)
    for (const { document, sheet } of made.value) {
      progress(index / makers.length, document.title)
      if (sheet) files.push({ name: `${document.id}.svg`, bytes: await toSvg(sheet, fonts) })
      files.push({ name: `${document.id}.pdf`, bytes: await toPdf(document, fonts) })
    }
  }
  const names = files.map(file => file.name)
  publish(order.folder, files, replacedBy(kinds, new Set(names)))
  return { names, findings }
}

const stems: Readonly<Record<PaperKind, RegExp>> = {
  'sail plan': /^sail-plan\.(svg|pdf)$/,
  'pin charts': /^(pin-chart|rail-.+)\.(svg|pdf)$/,
  handbooks: /^handbook-.+\.pdf$/,
}

/** Papers of the kinds now written replace all older ones of those kinds, so that none of a lost rail stays behind. */
const replacedBy = (kinds: ReadonlySet<PaperKind>, names: ReadonlySet<string>) => (name: string) =>
  names.has(name) || [...kinds].some(kind => stems[kind].test(name))

const require = createRequire(import.meta.url)

/** A file of an installed package, found as Node finds packages. */
const readPackaged = (path: string): Promise<Uint8Array> => readFile(require.resolve(path))

/** The folder the papers of a rig go to unless the user names one. */
export const defaultFolder = (stem: string) => join('out', safeStem(stem))

/** A file's stem as a folder's name: no path in it, and nothing the shell or the file system would take amiss. */
export function safeStem(stem: string): string {
  const safe = basename(stem)
    .replace(/[^\p{L}\p{N}._-]+/gu, '-')
    .replace(/^[-.]+|[-.]+$/g, '')
  return /^(|con|prn|aux|nul|com\d|lpt\d)$/i.test(safe) ? `rig-${safe}` : safe
}
