import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { buildGears } from '../../src/rig/build/gears.ts'
import type { Kit } from '../../src/rig/build/kit.ts'
import { parse } from '../../src/syntax/index.ts'

const folder = join(import.meta.dirname, '../../rigs/gear')
const files = ['square-sails', 'studdingsails', 'fore-and-aft-sails', 'lug-and-lateen-sails']
const pages = files.flatMap(name => {
  const file = `${name}.rig`
  return parse({ name: file, text: readFileSync(join(folder, file), 'utf8') }).value.pages
})
const gears = [...buildGears(pages, () => undefined).values()]

/** The rows of its table: the gear's name, and what is to be given. */
const rows = new Map(
  readFileSync(join(folder, 'README.md'), 'utf8')
    .split('\n')
    .flatMap(line => {
      const [, name, given] = /^\| `([^`]+)` \|[^|]*\|([^|]*)\|$/.exec(line) ?? []
      return name === undefined ? [] : [[name, given?.trim() ?? ''] as const]
    }),
)

/** The blocks of a kit that have no place, and that one of its lines is led by. */
function toBeGiven(kit: Kit): readonly string[] {
  const led = new Set<string>()
  for (const { through, to } of kit.lines.values()) {
    for (const place of to ? [...through, to] : through) if (place.from) led.add(place.from.words)
  }
  return [...kit.blocks.values()]
    .filter(({ place, name }) => !place && led.has(name.words))
    .map(one => one.name.words)
}

describe('the page of the standard gear', () => {
  test('has each gear once', () => {
    expect([...rows.keys()].sort()).toEqual(gears.map(kit => kit.name.words).sort())
  })

  test.each(gears.map(kit => [kit.name.words, kit] as const))(
    'tells what the %s leaves to be given',
    (name, kit) => {
      expect(rows.get(name)?.split(', ').filter(Boolean).sort()).toEqual([...toBeGiven(kit)].sort())
    },
  )
})
