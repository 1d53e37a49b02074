import { basename, join } from 'node:path'
import { setImmediate } from 'node:timers/promises'
import type { Compiled } from '../compile.ts'
import type { Finding } from '../findings/index.ts'
import type { Imprint, PaperFamily, StyleName } from '../sheets/index.ts'
import type { PaperKind } from '../sheets/papers.ts'
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

/** Lays out, presses and publishes papers; returns the names written and what was found while laying out. */
export async function writePapers(
  compiled: Compiled,
  order: Order,
  progress: Progress,
): Promise<{ readonly names: readonly string[]; readonly findings: readonly Finding[] }> {
  const [{ paperMakers }, { openPress }, { pressThread }] = await Promise.all([
    import('../sheets/papers.ts'),
    import('./press-paper.ts'),
    import('./press-thread.ts'),
  ])
  const { ruler, covers, press } = await openPress()
  const { paper, style, imprint, kinds } = order
  const makers = paperMakers(compiled, { ruler, covers, imprint, paper, style }, kinds)
  const second = makers.length < worthAThread ? undefined : pressThread()
  const pressed: Promise<readonly Finished[]>[] = []
  const findings: Finding[] = []
  try {
    for (const [index, make] of makers.entries()) {
      const made = make()
      findings.push(...made.findings)
      for (const one of made.value) {
        progress(index / makers.length, one.document.title)
        pressed.push(second?.hasRoom() ? heeded(second.press(one)) : Promise.resolve(await press(one)))
        // What the second press has done is heard only here.
        await setImmediate()
      }
    }
    const files = (await Promise.all(pressed)).flat()
    publish(order.folder, files, replacedBy(kinds, new Set(files.map(({ name }) => name))))
    return { names: files.map(({ name }) => name), findings }
  } finally {
    second?.close()
  }
}

/** Fewer papers than this are pressed before a thread has started. */
const worthAThread = 6

// Whoever waits for all of them learns of a failure; until then it must not count as one that nobody heeds.
function heeded<Value>(promise: Promise<Value>): Promise<Value> {
  promise.catch(() => {})
  return promise
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
