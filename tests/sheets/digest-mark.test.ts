import { encode } from 'uqr'
import { expect, test } from 'vitest'
import { isInside, shapeOf } from '../../src/sheets/clip.ts'
import { digestMark } from '../../src/sheets/digest-mark.ts'
import type { PathStep } from '../../src/sheets/index.ts'

test('the printed code is the QR code of the digest, module for module', () => {
  const [at, side] = [{ x: 30, y: 40 }, 17.5]
  const mark = digestMark('7Q4K-9MTX', at, side)
  const path = mark.kind === 'group' ? mark.marks[0] : undefined
  const boxes = rings(path?.kind === 'path' ? path.steps : []).map(shapeOf)
  const { data, size } = encode('7Q4K-9MTX', { ecc: 'M', border: 0 })
  // Read back as a telephone does: is the middle of the module dark?
  const read = data.map((row, r) =>
    row.map((_, c) => {
      const middle = { x: at.x + ((c + 0.5) * side) / size, y: at.y + ((r + 0.5) * side) / size }
      return boxes.some(box => isInside(middle, box))
    }),
  )
  expect(size).toBe(21)
  expect(read).toEqual(data)
  // The finder of the upper left corner: a ring of dark, a ring of light, a dark middle.
  expect(read.slice(0, 7).map(row => row.slice(0, 7).map(Number).join(''))).toEqual([
    '1111111',
    '1000001',
    '1011101',
    '1011101',
    '1011101',
    '1000001',
    '1111111',
  ])
})

function rings(steps: readonly PathStep[]) {
  const found: { x: number; y: number }[][] = []
  for (const step of steps) {
    if (step[0] === 'M') found.push([{ x: step[1], y: step[2] }])
    if (step[0] === 'L') found[found.length - 1]?.push({ x: step[1], y: step[2] })
  }
  return found
}
