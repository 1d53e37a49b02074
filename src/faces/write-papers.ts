import { basename, join } from 'node:path'
import { setFlagsFromString } from 'node:v8'
import type { Compiled } from '../compile.ts'
import type { Finding } from '../findings/index.ts'
import type { Imprint, PaperFamily, StyleName } from '../sheets/index.ts'
import type { PaperKind } from '../sheets/papers.ts'
import { optimiseLaterStill } from './optimise-later.ts'
import type { Press } from './press-paper.ts'
import type { PressThread } from './press-thread.ts'
import type { Progress } from './progress.ts'
import { type Finished, publish } from './publish.ts'

/** What is wanted of the papers of a compiled rig. */
export interface Order {
  readonly kinds: ReadonlySet<PaperKind>
  readonly paper: PaperFamily
  readonly style: StyleName
  readonly folder: string
  readonly imprint: Imprint
}

/** What presses papers: one press here and, where there is a second processor, one in a thread. */
export interface Presses {
  readonly here: Promise<Press>
  readonly second: PressThread | undefined
}

/**
 * Opens presses for papers of these kinds, which goes on while a rig is compiled. A sail plan alone is pressed before a
 * thread would have started.
 */
export async function openPresses(kinds: ReadonlySet<PaperKind>): Promise<Presses> {
  const option = optimiseLaterStill(process.versions.v8)
  if (option !== undefined) setFlagsFromString(option)
  const [{ openPress }, { pressThread }] = await Promise.all([
    import('./press-paper.ts'),
    import('./press-thread.ts'),
  ])
  const areMany = kinds.has('pin charts') || kinds.has('handbooks')
  const second = areMany ? pressThread() : undefined
  const here = openPress()
  // Whoever waits for it learns of a failure.
  here.catch(() => {})
  return { here, second }
}

/**
 * Lays out, presses and publishes papers; returns the names written and what was found while laying out. The second
 * press begins with the first paper as soon as it is laid out, and the one here with the last when all are.
 */
export async function writePapers(
  compiled: Compiled,
  order: Order,
  { here, second }: Presses,
  progress: Progress,
): Promise<{ readonly names: readonly string[]; readonly findings: readonly Finding[] }> {
  const { paperMakers } = await import('../sheets/papers.ts')
  const { ruler, covers, press } = await here
  const { paper, style, imprint, kinds } = order
  const makers = paperMakers(compiled, { ruler, covers, imprint, paper, style }, kinds)
  const findings: Finding[] = []
  const laidOut = makers.flatMap((make, index) => {
    const made = make()
    findings.push(...made.findings)
    return made.value.map(one => {
      progress(index / makers.length / 2, one.document.title)
      return { one, offer: second?.offer(one) }
    })
  })
  const pressed: Promise<readonly Finished[]>[] = []
  for (const [index, { one, offer }] of laidOut.toReversed().entries()) {
    progress((1 + index / laidOut.length) / 2, one.document.title)
    const isBegun = offer !== undefined && !offer.takeBack()
    pressed.push(isBegun ? offer.pressed : Promise.resolve(await press(one)))
  }
  const files = (await Promise.all(pressed)).flat()
  publish(order.folder, files, replacedBy(kinds, new Set(files.map(({ name }) => name))))
  return { names: files.map(({ name }) => name), findings }
}

const stems: Readonly<Record<PaperKind, RegExp>> = {
  'sail plan': /^sail-plan\.(svg|pdf)$/,
  'pin charts': /^(pin-chart|rail-.+)\.(svg|pdf)$/,
  handbooks: /^handbook-.+\.pdf$/,
}

/** Papers of the kinds now written replace all older ones of those kinds, so that none of a lost rail stays behind. */
const replacedBy = (kinds: ReadonlySet<PaperKind>, names: ReadonlySet<string>) => (name: string) =>
  names.has(name) || [...kinds].some(kind => stems[kind].test(name))

/** The folder the papers of a rig go to unless the user names one. */
export const defaultFolder = (stem: string) => join('out', safeStem(stem))

/** A file's stem as a folder's name: no path in it, and nothing the shell or the file system would take amiss. */
export function safeStem(stem: string): string {
  const safe = basename(stem)
    .replace(/[^\p{L}\p{N}._-]+/gu, '-')
    .replace(/^[-.]+|[-.]+$/g, '')
  return /^(|con|prn|aux|nul|com\d|lpt\d)$/i.test(safe) ? `rig-${safe}` : safe
}
