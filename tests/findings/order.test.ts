import { expect, test } from 'vitest'
import { type Finding, inFileOrder } from '../../src/findings/index.ts'

const sources = ['main.rig', 'part.rig'].map(name => ({ name, text: '' }))
const finding = (source: string, start: number, message: string): Finding => ({
  rule: 'sheet/name-cut',
  severity: 'warning',
  at: { source, start, end: start + 4 },
  message,
  related: [],
})

test('findings stand in the order of the texts, and what several papers find alike stands once', () => {
  const [late, early, part] = [
    finding('main.rig', 30, 'Cut in one book.'),
    finding('main.rig', 10, 'Cut in one book.'),
    finding('part.rig', 0, 'Cut in one book.'),
  ] as const
  const other = { ...early, message: 'Cut in another.' }
  expect(inFileOrder([part, late, early, other, { ...early }], sources)).toEqual([other, early, late, part])
})
