import { describe, expect, test, vi } from 'vitest'
import { type Clause, nameKey, parse, type Statement } from '../../src/syntax/index.ts'

// The first reading analyses the grammar, which takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 })

const pagesOf = (text: string) => {
  const { value, findings } = parse({ name: 'test.rig', text })
  expect(findings).toEqual([])
  return value.pages
}

/** The first statement of a page, from a text of one page. */
const first = (text: string): Statement => {
  const statement = pagesOf(text)[0]?.block[0]
  if (statement === undefined) throw new Error('no statement')
  return statement
}

const kinds = (clauses: readonly Clause[]) => clauses.map(({ kind }) => kind)

describe('entries', () => {
  test('a mast and its sections', () => {
    const mast = first(`masts
  fore mast, stepped 7.40 m aft 1.60 m up, raked 3 deg aft, yards 0.50 m forward
    lower mast to 14.00 m up, 320 mm thick
    top 2.75 m wide 13.40 m up
    crosstrees 1.45 m wide 21.60 m up
    conjectural by "a photograph of 1911"
`)
    expect(mast.name?.words).toBe('fore mast')
    expect(kinds(mast.clauses)).toEqual(['stepped', 'raked', 'yards', 'conjectural'])
    expect(mast.block.map(({ kind, name, clauses }) => [kind, name?.words, ...kinds(clauses)])).toEqual([
      ['section', 'lower mast', 'leadTo', 'thick'],
      ['section', 'top', 'wide', 'coords'],
      ['section', 'crosstrees', 'wide', 'coords'],
    ])
  })

  test('a line of a gear of which nothing is said but that it is conjectural', () => {
    const sail = first(`sails
  jib, headsail on jib stay
    gear jib
      halyard conjectural by "a letter"
      masthead block at stay head, conjectural
`)
    expect(sail.block[0]?.block.map(({ kind }) => kind)).toEqual(['line', 'block'])
  })

  test('a sail, several corners on one line, and its gear', () => {
    const sail = first(`sails
  fore topsail, square topsail on fore topsail yard, sheeted to fore yard
    head 8.37 m wide 16.75 m up, foot 41 ft 6 in wide 11.80 m up, roach 0.50 m
    reef 1.83 m below head, cringle 4.29 m out
    gear square topsail
      lead block 0.50 m up
      sheet 14 mm, 2 hands
      outer buntline like inner buntline
        gathers foot against sheet
      with tack single, 14 mm spun polyester
      without reef tackle
`)
    expect(kinds(sail.clauses)).toEqual(['class', 'on', 'sheeted'])
    expect(sail.block.map(({ kind, name, clauses }) => [kind, name?.words, ...kinds(clauses)])).toEqual([
      ['corner', 'head', 'wide', 'coords'],
      ['corner', 'foot', 'wide', 'coords', 'roach'],
      ['corner', 'reef', 'offset', 'cringle'],
      ['hang', 'square topsail'],
    ])
    expect(
      sail.block[3]?.block.map(({ kind, name, added, clauses }) => [
        kind,
        name?.words,
        added,
        ...kinds(clauses),
      ]),
    ).toEqual([
      ['block', 'lead block', false, 'coords'],
      ['line', 'sheet', false, 'rope', 'count'],
      ['line', 'outer buntline', false, 'like', 'deed', 'against'],
      ['line', 'tack', true, 'single', 'rope'],
      ['particular', undefined, false, 'without'],
    ])
  })

  test('phases: orders, acts in order, sides named, what is waited for', () => {
    const sequence = first(`gear jib
  to set
    before "The jib below is set."
    "Hoist away."  answer "Hoist away.", cautions 8 and 2
      haul lee buntline then weather buntline, let go sheets above, stand by named brace, tend sheet, when running
      aloft 3 hands, gaskets off
      until the luff is straight   # a remark
`)
    expect([sequence.kind, sequence.name?.words, ...kinds(sequence.clauses)]).toEqual([
      'sequence',
      'set',
      'before',
    ])
    const phase = sequence.block[0]
    expect(phase?.name).toMatchObject({ words: 'Hoist away.', quoted: true })
    expect(phase?.clauses).toMatchObject([
      { kind: 'answer', words: { text: 'Hoist away.' } },
      { kind: 'cautions', numbers: [{ value: 8 }, { value: 2 }] },
      {
        kind: 'act',
        act: 'haul',
        lines: [{ reach: 'lee' }],
        // biome-ignore lint/suspicious/noThenProperty: the tree's own field, "haul A then B".
        then: [{ reach: 'weather', name: { words: 'buntline' } }],
      },
      { kind: 'act', act: 'let go', lines: [{ reach: 'above', name: { words: 'sheets' } }] },
      { kind: 'act', act: 'stand by', lines: [{ reach: 'named' }] },
      { kind: 'act', act: 'tend', when: { text: 'running' } },
      { kind: 'aloft', count: { value: 3 }, words: { text: 'gaskets off' } },
      { kind: 'until', words: { text: 'the luff is straight' } },
    ])
  })

  test('pins: ranges, sides, free and shared', () => {
    const [page] = pagesOf(`belay on fore rail like main rail
  1  port jib halyard, starboard free for the stunsail
  2 to 4  free
  6  shared by signal halyard and slab line because both idle, and light
`)
    expect([page?.kind, page?.name?.words, ...kinds(page?.clauses ?? [])]).toEqual([
      'belayOn',
      'fore rail',
      'like',
    ])
    const berths = page?.block.map(({ pins, clauses }) => ({ pins, clauses }))
    expect(berths).toMatchObject([
      {
        pins: { from: { value: 1 } },
        clauses: [
          { berth: { kind: 'line', side: 'port' } },
          { berth: { kind: 'free', side: 'starboard', for: { text: 'the stunsail' } } },
        ],
      },
      {
        pins: { from: { value: 2 }, to: { value: 4 } },
        clauses: [{ berth: { kind: 'free', side: undefined } }],
      },
      { clauses: [{ berth: { kind: 'shared', because: { text: 'both idle, and light' } } }] },
    ])
  })

  test('facts of the vessel, several on a line', () => {
    const [page] = pagesOf(`vessel Grey Plover
  topsail schooner
  waterline 25.00 m, over spars 33.20 m
  hands 14 in all, 5 in a watch
  measure in ft and in
  revision "C" 25 November 2026
`)
    expect(page?.block.map(({ name, clauses }) => [name?.words, ...kinds(clauses)])).toEqual([
      ['topsail schooner'],
      ['waterline', 'measure'],
      ['over spars', 'measure'],
      ['hands', 'muster', 'muster'],
      ['measure', 'in'],
      ['revision', 'label', 'date'],
    ])
  })
})

describe('words', () => {
  test('words that mean something elsewhere are free for names', () =>
    expect(
      first('deck\n  hold hatch, hatch from 9.40 m to 10.60 m aft, 0.70 m each side, top 2.30 m up\n'),
    ).toMatchObject({
      name: { words: 'hold hatch' },
      clauses: [{ kind: 'class' }, { kind: 'extent', axis: 'aft' }, { kind: 'eachSide' }, { kind: 'top' }],
    }))

  test('names take letters of any script, hyphens, apostrophes and dots', () =>
    expect(
      pagesOf(
        'labels in Ελληνικά\n  fore.upper-topsail.clewline.port "Großsegel’s"\n  Großsegel O’Neill’s-Fall short "x"\n',
      )[0],
    ).toMatchObject({
      clauses: [{ kind: 'in', names: [{ words: 'Ελληνικά' }] }],
      block: [
        { name: { words: 'fore.upper-topsail.clewline.port' } },
        { name: { words: 'Großsegel O’Neill’s-Fall' } },
      ],
    }))

  test('names that programs stumble over are names', () => {
    const page = pagesOf(
      'rails\n  __proto__, port and starboard\n  constructor, marked CON\n  toString at 1 m aft\n'.replace(
        '__proto__',
        'proto__',
      ),
    )[0]
    expect(page?.block.map(({ name }) => name?.words)).toEqual(['proto__', 'constructor', 'toString'])
  })

  test('names compare without case, and with dots, hyphens and blanks alike', () => {
    expect(nameKey('Fore.Upper-Topsail')).toBe(nameKey('the fore  upper topsail'))
    expect(nameKey('Großsegel\u0301')).toBe(nameKey('großsege\u013a'))
    expect(nameKey('__proto__')).toBe('__proto__')
  })

  test('curly quotes, primes, decimal commas, fractions and no-break spaces are read', () =>
    expect(
      first('lines\n  slab line called “Slab”, 2½ in round manila, cut 41′ 6″, travels 9,40\u00a0m\n')
        .clauses,
    ).toMatchObject([
      { kind: 'called', label: { text: 'Slab' } },
      { kind: 'rope', round: true, material: { words: 'manila' } },
      { kind: 'cut', measure: { value: expect.closeTo(12.6492, 9), written: '41′ 6″' } },
      { kind: 'travels', measure: { value: 9.4 } },
    ]))
})
