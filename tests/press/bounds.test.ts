import { expect, test } from 'vitest'
import { boundsOf } from '../../src/press/bounds.ts'
import type { Mark } from '../../src/sheets/index.ts'
import { ink } from '../support/press-scene.ts'

const pen = { ink, width: 2 }
const disc: Mark = { kind: 'circle', at: { x: 10, y: 20 }, radius: 5, pen }

test('lines are bounded with half their width, circles with their radius too', () => {
  const line: Mark = {
    kind: 'line',
    points: [
      { x: 1, y: 9 },
      { x: 7, y: 3 },
    ],
    pen,
  }
  expect(boundsOf([line])).toEqual({ left: 0, top: 2, right: 8, bottom: 10 })
  expect(boundsOf([disc])).toEqual({ left: 4, top: 14, right: 16, bottom: 26 })
  expect(boundsOf([line, disc])).toEqual({ left: 0, top: 2, right: 16, bottom: 26 })
})

test('a group is bounded where it was moved to, and by its window', () => {
  const clip = [['M', 10, 10], ['L', 12, 10], ['L', 12, 30], ['Z']] as const
  const group: Mark = { kind: 'group', offset: { x: 100, y: 0 }, clip, marks: [disc] }
  expect(boundsOf([group])).toEqual({ left: 110, top: 14, right: 112, bottom: 26 })
})

test('words are bounded on their baseline, turned as they are', () => {
  const type = { face: 'Spectral', size: 72 } as const
  const words: Mark = { kind: 'text', at: { x: 0, y: 100 }, words: 'Haul', type, ink, width: 50 }
  expect(boundsOf([words])).toEqual({ left: 0, top: 100 - 0.95 * 25.4, right: 50, bottom: 100 + 0.3 * 25.4 })
  const upright = boundsOf([{ ...words, turn: 90 }])
  expect(upright?.top).toBeCloseTo(50, 6)
  expect(upright?.right).toBeCloseTo(0.3 * 25.4, 6)
})

test('of nothing seen there are no bounds', () => {
  expect(boundsOf([])).toBeUndefined()
  const away = [['M', 50, 50], ['L', 60, 50], ['L', 60, 60], ['Z']] as const
  expect(boundsOf([{ kind: 'group', clip: away, marks: [disc] }])).toBeUndefined()
})
