import { describe, expect, test } from 'vitest'
import { inLanguage, type Rail } from '../../src/rig/index.ts'
import { deedWords, haulBrings } from '../../src/sheets/deed-words.ts'
import { easeWords, easeWordsInShort } from '../../src/sheets/ease-words.ts'
import { blankStrips, railStrips } from '../../src/sheets/rail-strip/index.ts'
import { railView } from '../../src/sheets/rail-view.ts'
import type { Setting } from '../../src/sheets/setting.ts'
import type { Mark, Sheet } from '../../src/sheets/sheet.ts'
import { compiledRig } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'
import { boxOf, flat, ids, overlaps, texts } from './boxes.ts'

const { ruler } = await installedFonts()
const setting = (paper: Setting['paper']): Setting => ({
  ruler,
  paper,
  imprint: { digest: '7Q4K-9MTX', from: 'test.rig', errors: 0 },
})
const barque = compiledRig('barque-harrow-tansy').value.rig
const schooner = compiledRig('schooner-pellow-finch').value.rig
const railOf = (code: string): Rail => barque.railAt.get(code) as Rail
const strip = (code: string, paper: Setting['paper'] = 'A4'): Sheet =>
  railStrips(barque, railOf(code), setting(paper)).value[0] as Sheet
const words = (sheet: Sheet) => texts(sheet).map(mark => mark.words)

const cases = [barque, schooner].flatMap(rig =>
  (['A4', 'Letter'] as const).map(paper => [rig.vessel.name, paper, rig] as const),
)

describe.each(cases)('every strip of %s on %s', (_, paper, rig) => {
  const sheets = rig.rails.map(rail => ({ rail, ...railStrips(rig, rail, setting(paper)) }))

  test('fits, each rail on one sheet', () => {
    expect(sheets.flatMap(({ findings }) => findings)).toEqual([])
    expect(sheets.map(({ value }) => value.length)).toEqual(rig.rails.map(() => 1))
  })

  test('holds every place and every line of the rail', () => {
    for (const { rail, value } of sheets) {
      const all = value.flatMap(sheet => ids(sheet.marks))
      const expected = rail.places.flatMap(place => [
        place.address,
        ...place.lines.map(line => `line.${line}`),
      ])
      expect(all.filter(id => /^(pin|line)\./.test(id)).sort()).toEqual(expected.sort())
    }
  })

  test('lets no word touch another or leave the frame, and none but the foot and margin falls under 15 pt', () => {
    for (const { value } of sheets) {
      for (const sheet of value) {
        expect(overlaps(sheet)).toEqual([])
        const out = texts(sheet).filter(mark => {
          const { left, right, top, bottom } = boxOf(mark)
          return left < 7 || right > sheet.width - 7 || top < 7 || bottom > sheet.height - 7
        })
        expect(out.map(mark => mark.words)).toEqual([])
        const small = texts(sheet).filter(({ type }) => type.size < 15)
        expect(small.every(mark => mark.at.y > sheet.height - 11 || mark.turn === 90)).toBe(true)
        expect(small.every(({ type }) => type.size >= 8)).toBe(true)
      }
    }
  })

  test('the blank has the same places to the millimetre, and tells nothing', () => {
    for (const { rail, value } of sheets) {
      const blanks = blankStrips(rig, rail, setting(paper)).value
      expect(blanks.map(sheet => sheet.id)).toEqual(value.map(sheet => `${sheet.id}-blank`))
      blanks.forEach((blank, index) => {
        expect(numbersOf(blank)).toEqual(numbersOf(value[index] as Sheet))
        const names = rail.places.flatMap(place =>
          place.lines.flatMap(line => rig.lineAt.get(line)?.labelOnSail ?? []),
        )
        expect(words(blank).filter(word => names.includes(word) || word === 'free')).toEqual([])
      })
    }
  })
})

describe('how a rail is faced', () => {
  test.each([
    ['FR-S', 'left', 'seen facing the rail from the deck', 1],
    ['FR-P', 'right', 'seen facing the rail from the deck', 23],
    ['FF-P', 'left', 'seen from outboard, facing the mast', 1],
    ['FF-S', 'right', 'seen from outboard, facing the mast', 4],
    ['BR-P', 'left', 'seen from outboard, facing inboard', 1],
    ['FTK-P', 'right', 'seen facing it from the deck', 1],
    ['FF-A', undefined, 'seen from abaft', 1],
  ] as const)('%s: bow %s, %s', (code, bow, sentence, first) => {
    const view = railView(railOf(code), barque)
    expect([view.bow, view.sentence, view.leftToRight[0]?.number]).toEqual([bow, sentence, first])
    expect(words(strip(code))).toContain(sentence)
  })

  test('a beam has port on the left', () => {
    expect(words(strip('FF-A'))).toEqual(expect.arrayContaining(['port', 'starboard']))
  })
})

describe('what a strip says', () => {
  test('wide columns break words no more than their rows want', () => {
    const { rig } = compiledRig('schooner-pellow-finch').value
    const rail = rig.railAt.get('FR-P') ?? fail('FR-P')
    const said = railStrips(rig, rail, setting('A4')).value.flatMap(words)
    expect(said.filter(word => word === 'hoists').length).toBe(3)
    expect(said.filter(word => word === 'the yard').length).toBe(5)
    expect(said).not.toContain('the')
  })

  test('sails stand over the pins they own, and a lone pin carries its whole name', () => {
    expect(words(strip('FR-S'))).toEqual(
      expect.arrayContaining([
        'Course',
        'Lower topsail',
        'Upper topsail',
        'Topgallant',
        'Royal',
        'Inner buntline',
      ]),
    )
    expect(words(strip('FTK-P'))).toContain('Course tack')
  })

  test('few pins are lettered level, many are turned and read upward', () => {
    const turns = (code: string) =>
      new Set(
        texts(strip(code))
          .filter(({ type }) => type.size >= 15)
          .map(({ turn = 0 }) => turn),
      )
    expect(turns('FB-P')).toEqual(new Set([0]))
    expect(turns('FR-P')).toEqual(new Set([0, 90]))
  })

  test('the distance it is set for is printed', () => {
    expect(words(strip('FR-P'))).toContain('Set for reading at 0.75 m')
  })

  test('a rail beyond what one sheet holds is divided over several, every place once', () => {
    const long = railOf('FR-P')
    const more = railOf('MR-P').places.map((place, index) => ({
      ...place,
      number: 24 + index,
      address: `pin.FR-P.${24 + index}`,
      at: undefined,
    }))
    const rail = {
      ...long,
      lie: 'centre' as const,
      places: [...long.places.map(place => ({ ...place, at: undefined })), ...more],
    }
    const { value, findings } = railStrips(barque, rail, { ...setting('A4'), sheetNumber: { n: 5, of: 9 } })
    expect(findings).toEqual([])
    expect(value.map(sheet => words(sheet).find(word => word.startsWith('sheet ')))).toEqual([
      'sheet 5.1 of 9',
      'sheet 5.2 of 9',
    ])
    expect(value.map(sheet => sheet.id)).toEqual(['rail-FR-P-1', 'rail-FR-P-2'])
    const pins = value.flatMap(sheet => ids(sheet.marks)).filter(id => id.startsWith('pin.'))
    expect(pins).toHaveLength(46)
  })
})

test('long names of another language stand whole on every strip', () => {
  const { rig } = compiledRig('barquentine-otter-fennel').value
  const spoken = inLanguage(rig, 'German')?.value
  if (!spoken) return expect.fail('the barquentine has no German')
  const sheets = spoken.rails.flatMap(rail => {
    const { value, findings } = railStrips(spoken, rail, setting('A4'))
    expect(findings).toEqual([])
    return value
  })
  for (const sheet of sheets)
    expect(
      words(sheet).some(word => word === 'ease with it' || word === 'with it'),
      sheet.id,
    ).toBe(true)
  expect(sheets.flatMap(words).filter(word => word.endsWith('…'))).toEqual([])
  expect(sheets.flatMap(overlaps)).toEqual([])
})

describe('deeds and answers in words', () => {
  const line = (words: string, side?: 'port' | 'starboard') =>
    barque.lines.find(each => each.words === words && each.side === side) ?? fail(words)
  test.each([
    ['fore upper topsail halyard', undefined, 'hoists the yard', 'hoists the yard'],
    ['fore royal clewline', 'port', 'lifts the clew', 'clew up to the yard'],
    ['fore course leechline', 'starboard', 'gathers the leech', 'leech in to the yard'],
    ['fore royal brace', 'port', 'swings its arm aft', 'swings its arm aft'],
  ] as const)('%s', (name, side, deed, brings) => {
    expect([deedWords(line(name, side)), haulBrings(line(name, side), barque)]).toEqual([deed, brings])
  })

  test('kinds are named for the own side, in the plural where there are several', () => {
    expect(easeWords(line('fore course clewgarnet', 'port'), barque)).toEqual(['sheet', 'tack'])
    expect(easeWords(line('fore royal brace', 'port'), barque)).toEqual(['other brace'])
    expect([...easeWords(line('fore royal halyard'), barque)].sort()).toEqual(['buntlines', 'clewlines'])
    expect(easeWordsInShort(line('fore upper topsail halyard'), barque)).toBe('all 8 take-in lines')
  })
})

/** The big numbers on the plank with the x of each. */
function numbersOf(sheet: Sheet): readonly string[] {
  return flat(sheet.marks as readonly Mark[]).flatMap(mark =>
    mark.kind === 'text' && /^\d+$/.test(mark.words) && mark.type.size >= 24
      ? [`${mark.words} at ${mark.at.x.toFixed(3)} ${mark.at.y.toFixed(3)}`]
      : [],
  )
}

function fail(name: string): never {
  throw new Error(`no line ${name}`)
}
