import { compile } from '../../src/compile.ts'
import type { Finding } from '../../src/findings/index.ts'
import type { Files, Reading } from '../../src/syntax/index.ts'
import { decode } from '../../src/text/index.ts'

const text = (name: string, words: string): Reading => ({
  kind: 'text',
  source: { name, text: words },
  findings: [],
})

const compiled = (words: string, read: Files['read'] = () => ({ kind: 'missing' })) =>
  compile({ read }, { name: 'example.rig', text: words }).findings

/** What can't be printed on a page, because it is too long, can't be seen, is no text, or takes a folder to show. */
export const unprintable: ReadonlyMap<string, () => readonly Pick<Finding, 'rule' | 'severity'>[]> = new Map([
  ['syntax/too-much', () => compiled(`# ${'x'.repeat(10_000)}\n`)],
  ['syntax/hidden-mark', () => compiled('stays\n  fore\u202e stay\n')],
  [
    'syntax/no-text',
    () => decode(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13), 'a.rig').findings,
  ],
  [
    'syntax/not-utf-8',
    () =>
      decode(
        Uint8Array.from('sails # Gro\u00dfsegel\n', c => c.charCodeAt(0)),
        'a.rig',
      ).findings,
  ],
  [
    'file/refused',
    () => compiled('bring in "gear"\n', () => ({ kind: 'refused', because: 'it is a folder' })),
  ],
  [
    'file/too-deep',
    () => compiled('bring in "1.rig"\n', ({ path }) => text(path, `bring in "${next(path)}"\n`)),
  ],
])

const next = (path: string) => `${Number.parseInt(path, 10) + 1}.rig`
