import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { velocityRatio } from '../../src/rig/index.ts'
import { compiledText } from '../support/compiled.ts'

// R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. III, in our own words.

const text = readFileSync(new URL('dana-style.rig', import.meta.url), 'utf8')
const compiled = compiledText(text, 'dana-style.rig')
const { rig } = compiled.value

const ratioOf = (name: string) => {
  const line = rig.lines.find(one => one.words === name)
  if (!line) throw new Error(`there is no ${name}`)
  return velocityRatio(line.purchase)
}
const sideOf = (name: string) => rig.lines.find(one => one.words === name)?.belay?.side

it('compiles without an error', () => {
  expect(compiled.findings.filter(one => one.severity === 'error').map(one => one.message)).toEqual([])
})

it('leads single what he leads single: royal gear, topgallant sheets, mizzen topgallant braces', () => {
  const royals = ['fore', 'main', 'mizzen'].flatMap(mast =>
    ['sheet', 'clewline', 'halyard', 'brace'].map(line => `${mast} royal ${line}`),
  )
  const single = [...royals, 'fore topgallant sheet', 'main topgallant sheet', 'mizzen topgallant brace']
  expect(single.map(name => [name, ratioOf(name)])).toEqual(single.map(name => [name, 1]))
})

it('gives two to one what he gives a gun tackle, and the tacks and sheets of the courses', () => {
  const double = [
    'fore topsail clewline',
    'main topgallant clewline',
    'mizzen topsail sheet',
    'fore course tack',
    'main course sheet',
  ]
  expect(double.map(name => [name, ratioOf(name)])).toEqual(double.map(name => [name, 2]))
})

it('gives the topsail halyards a runner and a luff: two times three', () => {
  expect(['fore', 'main', 'mizzen'].map(mast => ratioOf(`${mast} topsail halyard`))).toEqual([6, 6, 6])
})

it('leads fore and mizzen topsail halyards to port, main to starboard, topgallant halyards opposite', () => {
  expect(['fore', 'main', 'mizzen'].map(mast => sideOf(`${mast} topsail halyard`))).toEqual([
    'port',
    'starboard',
    'port',
  ])
  expect(['fore', 'main', 'mizzen'].map(mast => sideOf(`${mast} topgallant halyard`))).toEqual([
    'starboard',
    'port',
    'starboard',
  ])
})
