import { encode } from 'uqr'
import { ink } from './ink.ts'
import type { Mark, PathStep, Point } from './sheet.ts'

/**
 * The digest as a printed code that any telephone reads (QR, level M), a square of `side` millimetres with its
 * upper left corner at the point. It needs 3 mm clear all round. Drawn as one path, so that no hairline of
 * paper shows between its modules.
 */
export function digestMark(digest: string, { x, y }: Point, side: number): Mark {
  const { data, size } = encode(digest, { ecc: 'M', border: 0 })
  const module = side / size
  const steps = data.flatMap((row, r) =>
    runs(row).flatMap(({ from, to }) => box(x + from * module, y + r * module, (to - from) * module, module)),
  )
  return {
    kind: 'group',
    id: 'digest-mark',
    title: `Digest ${digest}`,
    tag: { role: 'Figure', alt: `Code of the digest ${digest}` },
    marks: [{ kind: 'path', steps, fill: { ink: ink.ink } }],
  }
}

/** Runs of dark modules in one row, `to` exclusive. */
function runs(row: readonly boolean[]): readonly { readonly from: number; readonly to: number }[] {
  const found: { from: number; to: number }[] = []
  row.forEach((dark, i) => {
    const last = found[found.length - 1]
    if (!dark) return
    if (last?.to === i) last.to = i + 1
    else found.push({ from: i, to: i + 1 })
  })
  return found
}

const box = (x: number, y: number, width: number, height: number): readonly PathStep[] => [
  ['M', x, y],
  ['L', x + width, y],
  ['L', x + width, y + height],
  ['L', x, y + height],
  ['Z'],
]
