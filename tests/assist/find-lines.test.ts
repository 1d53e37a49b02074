import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import { describe, expect, it } from 'vitest'
import { findLines, nearNames } from '../../src/assist/index.ts'
import { jsonFigures } from '../../src/press/figures/index.ts'
import { plainTables } from '../../src/press/table/index.ts'
import { foundRecord, foundTables } from '../../src/sheets/found/index.ts'
import { compiledRig, compiledText, exampleRigs } from '../support/compiled.ts'

const jibs = `bring in standard gear
bring in German glossary

vessel Grey Plover

stays
  jib stay
  outer jib stay

sails
  jib, headsail on jib stay
    gear jib
      halyard nicknamed "the Monkey" and "Old Tom", short "J hal", whipped "red", 3 hands, 16 mm manila, conjectural by "a letter"
  outer jib, headsail on outer jib stay
    gear jib

rails
  fore rail, port and starboard, 11 pins, pin 4a, marked FR

belay on fore rail
  1   jib sheet
  2   outer jib sheet
  4a  port jib halyard, starboard outer jib halyard
  8   port jib downhaul, starboard outer jib downhaul

labels in German
  jib "Klüver"

survey 14 October 2026, by "the bosun"
  jib halyard, worn, "chafed at the truck", due 1 April 2027
`
const { rig } = compiledText(jibs).value
const addresses = (words: string) =>
  findLines(rig, words).lines.flatMap(({ pair }) => pair.map(({ address }) => address))

describe('a line is found', () => {
  it.each([
    ['its whole name', 'Jib halyard'],
    ['its address', 'jib.halyard'],
    ['a nickname', 'monkey'],
    ['the other nickname, in capitals', 'OLD TOM'],
    ['its short form', 'j hal'],
    ['its name in another language', 'Klüver, Fall'],
    ['the same without its accent', 'kluver fall'],
    ['the beginnings of its words, and its side', 'ji hal port'],
    ['a nickname misspelt', 'monky'],
    ['its pin, by the rail’s letters', 'FR-P 4a'],
    ['its pin, as it is printed', 'FR-P4a'],
    ['its pin, closed up', 'FRP4a'],
    ['its pin, closed up but for the number', 'FRP 4a'],
    ['its pin, by the rail’s name', 'fore rail port pin 4a'],
  ])('by %s: %s', (_, words) => expect(addresses(words)).toEqual(['jib.halyard']))

  it('with all that bear a part of a name', () =>
    expect(addresses('downhaul')).toEqual(['jib.downhaul', 'outer-jib.downhaul']))

  it('alone where its name is met whole, though others hold it', () =>
    expect(addresses('jib sheet')).toEqual(['jib.sheet.port', 'jib.sheet.starboard']))

  it('of one side, where a side is said', () =>
    expect(addresses('outer jib sheet starboard')).toEqual(['outer-jib.sheet.starboard']))

  it('on both sides of a pin, and never by half a number', () => {
    for (const pin of ['FR 4a', 'FR4a'])
      expect(addresses(pin), pin).toEqual(['jib.halyard', 'outer-jib.halyard'])
    expect(addresses('FR 1')).toEqual(['jib.sheet.port', 'jib.sheet.starboard'])
  })
})

it('places that stand free are told as such', () => {
  const { lines, free } = findLines(rig, 'FR 9')
  expect([lines, free.map(({ address }) => address)]).toEqual([[], ['pin.FR-P.9', 'pin.FR-S.9']])
})

it('what nothing is called by finds nothing, and near names are offered', () => {
  for (const words of ['', 'port', 'the', '…', 'capstan', 'x'.repeat(500)])
    expect(findLines(rig, words), words).toEqual({ lines: [], free: [] })
  expect(nearNames(rig, 'jib halyrds')).toContain('jib halyard')
})

it('is told with its places, what is eased, its rope and its survey', () =>
  expect(plainTables(foundTables(rig, findLines(rig, 'monkey')))).toBe(`Jib halyard
----------------  ---------------------------------------------------------------------------
short             J hal
called            the Monkey, Old Tom
in other tongues  Klüver, Fall (German)
found as          the Monkey
at                fore rail, port, pin 4a (FR-P 4a)
hauling           hoists the head
ease              Jib downhaul, fore rail, port, pin 8 (FR-P 8)
hands             3
rope              16 mm manila, whipped red
rove              gun
surveyed          worn, “chafed at the truck”, 14 October 2026 by the bosun, due 1 April 2027
known             conjectural, by a letter
address           jib.halyard
`))

const schema = new URL('../../src/press/figures/find.schema.json', import.meta.url)
const isValid = new Ajv({ allErrors: true, strict: true }).compile(JSON.parse(readFileSync(schema, 'utf8')))

describe.each(exampleRigs)('%s', name => {
  const { rig } = compiledRig(name).value

  it('has every line found by its name and by its address', () => {
    for (const line of rig.lines) {
      const by = (words: string) => findLines(rig, words).lines.flatMap(({ pair }) => pair)
      expect(by(line.words), line.words).toContain(line)
      expect(by(line.address), line.address).toContain(line)
    }
  })

  it('tells of all her lines, and of places that stand free, as the schema says', () => {
    const all = {
      lines: rig.lines.flatMap(line => findLines(rig, line.address).lines),
      free: rig.rails.flatMap(({ places }) => places.filter(({ lines }) => lines.length === 0)),
    }
    isValid(JSON.parse(jsonFigures(foundRecord(rig, 'all', all))))
    expect(isValid.errors ?? []).toEqual([])
  })
})
