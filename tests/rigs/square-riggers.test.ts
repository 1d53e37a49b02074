import { describe, expect, it, test } from 'vitest'
import { inLanguage } from '../../src/rig/index.ts'
import { deckChart } from '../../src/sheets/deck-chart/index.ts'
import { labelBoxesMeet } from '../../src/sheets/label-box.ts'
import { railStrips } from '../../src/sheets/rail-strip/index.ts'
import { sailPlan } from '../../src/sheets/sail-plan/index.ts'
import { overlaps } from '../sheets/boxes.ts'
import { boxOf, groupsOf, textsOf } from '../sheets/plan-marks.ts'
import { compiledRig, compiledText, exampleText } from '../support/compiled.ts'
import { installedFonts } from '../support/fonts.ts'

const { ruler } = await installedFonts()

const vessels = [
  'ship-sorrel-wend',
  'brig-quill-marten',
  'barquentine-otter-fennel',
  'schooner-teasel-vane',
] as const

const settingOf = (vessel: string) =>
  ({
    ruler,
    paper: 'A4',
    imprint: { digest: '7Q4K-9MTX', from: `${vessel}.rig`, errors: 0 },
    sheetNumber: { n: 1, of: 9 },
  }) as const

/** What the head of her own text says that she has, counted there by hand. */
function saidOf(vessel: string) {
  const words = /^# (\d+) sails, (\d+) lines, (\d+) places to belay, (\d+) stations\.$/m.exec(
    exampleText(vessel),
  )
  const [sails, lines, places, stations] = (words ?? []).slice(1).map(Number)
  return { sails, lines, places, stations }
}

describe.each(vessels)('%s', vessel => {
  const { value, findings } = compiledRig(vessel)
  const { rig, figures, evolutions } = value
  const setting = settingOf(vessel)

  it('is clean', () => {
    expect(findings.filter(({ severity }) => severity !== 'note').map(({ message }) => message)).toEqual([])
  })

  it('has the sails, lines, pins and stations that her own head tells of', () => {
    const { sails, lines, rails, stations } = rig
    expect({
      sails: sails.length,
      lines: lines.length,
      places: rails.flatMap(rail => rail.places).length,
      stations: stations.length,
    }).toEqual(saidOf(vessel))
  })

  it('is whole: every line belayed, led and worked, every sail set and doused, reckoned and in the order', () => {
    const rove = rig.lines.filter(({ lifted }) => lifted === undefined)
    const wanting = rove.filter(line => !line.belay || !line.station || line.leadUnknown !== undefined)
    expect(wanting.map(line => line.words)).toEqual([])
    expect(evolutions.sails.filter(({ set, douse }) => !set || !douse).map(({ sail }) => sail)).toEqual([])
    expect([...figures.sails].filter(([, { area }]) => !area.known).map(([sail]) => sail)).toEqual([])
    expect(new Set(rig.order)).toEqual(new Set(rig.sails.map(({ name }) => name)))
  })

  it('says in her orders how every haul is answered, and has the hands for it', () => {
    const phases = evolutions.sails.flatMap(({ set, douse }) =>
      [set, douse].flatMap(order => order?.phases ?? []),
    )
    const silent = phases.flatMap(({ order, answers }) =>
      answers.flatMap(({ hauled, how }) => (how.kind === 'follows' ? [`${order} ${hauled.pairKey}`] : [])),
    )
    expect(silent).toEqual([])
    expect(
      phases.filter(({ hands }) => hands.stations.some(({ short }) => short > 0)).map(({ order }) => order),
    ).toEqual([])
  })

  it('is drawn with a name for every sail, and no word over another', () => {
    const { value: sheet } = sailPlan(rig, figures, setting)
    expect(groupsOf(sheet.marks).filter(({ id }) => id?.startsWith('name.')).length).toBe(rig.sails.length)
    const texts = textsOf(sheet.marks)
    const meeting = texts.flatMap(({ mark: a }, i) =>
      texts
        .slice(i + 1)
        .flatMap(({ mark: b }) => (labelBoxesMeet(boxOf(a), boxOf(b)) ? [`${a.words} on ${b.words}`] : [])),
    )
    expect(meeting).toEqual([])
  })

  it('is charted with every pin and line once, and no word over another', () => {
    const { value: sheet } = deckChart(rig, figures, setting)
    expect(overlaps(sheet)).toEqual([])
    const ids = groupsOf(sheet.marks).flatMap(({ id }) => id ?? [])
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([])
    const places = rig.rails.flatMap(rail => rail.places.map(({ address }) => address))
    expect(ids.filter(id => id.startsWith('pin.')).sort()).toEqual(places.sort())
  })

  it('has a strip for every rail, and no word over another', () => {
    for (const rail of rig.rails) {
      for (const sheet of railStrips(rig, rail, setting).value) expect(overlaps(sheet), rail.code).toEqual([])
    }
  })
})

describe('the ship', () => {
  const { rig, figures } = compiledRig('ship-sorrel-wend').value

  test('crosses double topgallants on fore and main, and a skysail on the main', () => {
    const onMast = (mast: string) =>
      rig.sails.flatMap(sail => (sail.kind === 'square' && sail.mast === mast ? [sail.class] : []))
    const eight = [
      'course',
      'lower topsail',
      'upper topsail',
      'lower topgallant',
      'upper topgallant',
      'royal',
    ]
    expect(onMast('fore mast')).toEqual(eight)
    expect(onMast('main mast')).toEqual([...eight, 'skysail'])
    expect(onMast('mizzen mast')).toEqual(['course', 'lower topsail', 'upper topsail', 'topgallant', 'royal'])
  })

  test('sets studdingsails of four lines a side, and leaves them out of her plain sail', () => {
    const studdingsails = rig.sails.filter(sail => sail.kind === 'studdingsail')
    expect(studdingsails).toHaveLength(2)
    for (const { name } of studdingsails) {
      const lines = rig.lines.filter(({ host }) => host?.name === name)
      expect(lines.map(({ side }) => side)).toEqual(Array(4).fill(['port', 'starboard']).flat())
      const halyard = lines.find(({ kind, side }) => kind === 'halyard' && side === 'starboard')
      expect(halyard?.lead.at(-1)?.at.y).toBeGreaterThan(7)
    }
    const plain = rig.sails.filter(sail => sail.kind !== 'studdingsail')
    const area = (names: readonly string[]) =>
      names.reduce((sum, name) => {
        const one = figures.sails.get(name)?.area
        return sum + (one?.known ? one.value : Number.NaN)
      }, 0)
    expect(figures.total.known && figures.total.value).toBeCloseTo(area(plain.map(({ name }) => name)), 6)
    expect(area(studdingsails.map(({ name }) => name))).toBeGreaterThan(40)
  })

  test('has the name of her main royal where her text says, and not where the plan would have it', () => {
    const planOf = (text: string) => {
      const { value } = compiledText(text, 'ship-sorrel-wend.rig')
      return sailPlan(value.rig, value.figures, settingOf('ship-sorrel-wend')).value
    }
    const text = exampleText('ship-sorrel-wend')
    const nameAt = (sheet: ReturnType<typeof planOf>) => {
      const name = groupsOf(sheet.marks).find(({ id }) => id === 'name.main-royal')
      return textsOf(name ? [name] : [])[0]?.mark.at.x ?? Number.NaN
    }
    // Aft is to the left on the plan, and two millimetres are half a metre at 1 : 250.
    expect(nameAt(planOf(text))).toBeLessThan(nameAt(planOf(text.replace(/^ {2}main royal at .*$/m, ''))) - 2)
  })
})

describe('the brig', () => {
  const { rig, evolutions } = compiledRig('brig-quill-marten').value
  const railOf = (name: string) => rig.rails.filter(rail => rail.name === name)

  test('braces her fore yards from aft and her main yards from forward', () => {
    const braces = rig.lines.filter(({ kind }) => kind === 'brace')
    const ways = (mast: string) => new Set(braces.filter(line => line.mast === mast).map(line => line.swings))
    expect(ways('fore mast')).toEqual(new Set(['aft']))
    expect(ways('main mast')).toEqual(new Set(['forward']))
    const eased = (sail: string) =>
      evolutions.ordersAt
        .get(sail)
        ?.set?.phases.find(({ order }) => order === 'Hoist away.')
        ?.ease.find(({ pairKey }) => pairKey.endsWith('.brace'))?.reach
    expect([eased('fore topsail'), eased('main topsail')]).toEqual(['lee', 'weather'])
  })

  test('numbers the pin put in after pin 5 as 5a, and belays on it', () => {
    const [port] = railOf('fore rail')
    expect(port?.places.map(({ pin }) => pin).slice(3, 8)).toEqual(['4', '5', '5a', '6', '7'])
    const slabLine = rig.lines.find(({ words }) => words === 'fore course slab line')
    expect(slabLine?.belay).toMatchObject({ rail: 'FR-P', number: 6, pin: '5a' })
    expect(rig.placeAt.get('pin.FR-P.5a')?.lines).toEqual([slabLine?.address])
  })

  test('has a spider band numbered round her main mast, from forward by starboard', () => {
    const [band] = railOf('main band')
    const places = band?.places ?? []
    expect(band).toMatchObject({ kind: 'spider band', lie: 'round' })
    expect(places.map(({ side }) => side)).toEqual([
      ...['centre', 'starboard', 'starboard', 'starboard', 'centre', 'port', 'port', 'port'],
    ])
    const [forward, aft] = [places[0]?.at, places[4]?.at]
    expect((aft?.x ?? 0) - (forward?.x ?? 0)).toBeCloseTo(0.41 + 2 * 0.1, 3)
  })

  test('knows bitts, kevels, racks and shroud cleats, and two light lines on one of these', () => {
    const kinds = ['fore bitts', 'fore tack kevel', 'bowsprit rack', 'main shroud cleats'].map(
      name => railOf(name)[0]?.kind,
    )
    expect(kinds).toEqual(['bitts', 'kevel', 'rack', 'shroud cleat'])
    const shared = rig.rails.flatMap(rail => rail.places).filter(place => place.shared)
    expect(shared.map(({ lines }) => lines)).toEqual([['house-flag-halyard', 'signal-halyard']])
  })

  test('has the tack and sheet of her fore course in one rope, on each side', () => {
    const tacks = rig.lines.filter(({ words }) => words === 'fore course tack')
    expect(tacks.map(({ middledWith }) => middledWith)).toEqual([
      'fore.course.sheet.port',
      'fore.course.sheet.starboard',
    ])
  })

  test('has two reef bands in each topsail, the main topsail its own', () => {
    const depths = (name: string) => rig.sailAt.get(name)?.reefs.map(({ cringleOut }) => cringleOut)
    expect(depths('fore topsail')).toEqual([5.12, 5.41])
    expect(depths('main topsail')).toEqual([5.32, 5.61])
  })
})

describe('the five-masted schooner', () => {
  const { rig } = compiledRig('schooner-teasel-vane').value

  test('has five masts alike, each thing of theirs counted from its own mast', () => {
    expect(rig.masts.map(({ word }) => word)).toEqual(['fore', 'main', 'mizzen', 'jigger', 'spanker'])
    const from = (mast: string, x: number | undefined) =>
      (x ?? 0) - (rig.mastAt.get(mast)?.foot?.x ?? Number.NaN)
    for (const { name, word } of rig.masts.slice(1)) {
      const fore = rig.rails.find(rail => rail.name === 'fore rail')?.first
      const own = rig.rails.find(rail => rail.name === `${word} rail`)?.first
      expect(from(name, own?.x)).toBeCloseTo(from('fore mast', fore?.x), 6)
      const boom = rig.sparAt.get(`${word} boom`)
      expect(boom?.kind === 'boom' && from(name, boom.inner?.x)).toBeCloseTo(
        0.5 + 1.9 * Math.tan(Math.PI / 60),
        6,
      )
    }
  })

  test('knows the sail from the mast of one name, and each line by its whole address', () => {
    expect(rig.sailAt.get('mizzen')).toMatchObject({ mast: 'mizzen mast', class: 'gaff sail' })
    const throats = rig.lines.filter(({ kind }) => kind === 'throat halyard').map(({ address }) => address)
    expect(throats).toEqual([
      'foresail.throat-halyard',
      'mainsail.throat-halyard',
      'mizzen.throat-halyard',
      'jigger.throat-halyard',
      'spanker.throat-halyard',
    ])
    expect(rig.lineAt.get('mizzen.gaff-topsail.halyard')?.belay).toMatchObject({ rail: 'ZR-P', pin: '9' })
  })

  test('finds a line by the kind of its sail on the rails of its mast', () => {
    const peaks = rig.lines.filter(({ kind }) => kind === 'peak halyard').map(({ belay }) => belay?.rail)
    expect(peaks).toEqual(['FF-P', 'MF-P', 'ZF-P', 'JF-P', 'SF-P'])
  })
})

describe('the barquentine', () => {
  const { value, findings } = compiledRig('barquentine-otter-fennel')
  const { rig } = value
  const lineOf = (words: string) => rig.lines.find(line => line.words === words)

  test('lists the gear of her royal as lifted, with its pins free and no finding', () => {
    const lifted = rig.lines.filter(line => line.lifted !== undefined)
    expect(new Set(lifted.map(({ host }) => host?.name))).toEqual(new Set(['fore royal']))
    expect(lifted).toHaveLength(9)
    expect(lifted.map(({ belay }) => belay)).toEqual(Array(9).fill(undefined))
    expect(lifted[0]?.lifted).toBe('she is laid up from November to March')
    expect(rig.placeAt.get('pin.FR-P.16')).toMatchObject({ lines: [], keptFree: true })
    expect(findings).toEqual([])
  })

  test('keeps what a survey found of a line, by whom and when it is due again', () => {
    expect(lineOf('fore course brace')?.survey).toEqual({
      day: { year: 2026, month: 4, day: 20 },
      by: 'the bosun',
      condition: 'worn',
      note: 'chafed at the pendant block, turned end for end',
      due: { year: 2027, month: 3, day: 1 },
    })
    expect(lineOf('mizzen throat halyard')?.survey?.condition).toBe('sound')
    expect(lineOf('fore course tack')?.survey).toBeUndefined()
  })

  test('numbers her blocks and dates their inspection', () => {
    expect(rig.blocks.map(({ name, number, inspected }) => [name, number, inspected?.day])).toEqual([
      ['fore course tack block', '1', 3],
      ['fore course sheet block', '2', 3],
      ['fore course brace block', '3', 4],
    ])
  })

  test('credits what is conjectural', () => {
    expect(rig.sailAt.get('fore royal')?.conjectural).toBe(true)
    expect(rig.sailAt.get('fore royal')?.credited).toBe('a photograph in which the yard is hidden')
    expect(rig.sparAt.get('fore royal yard')?.credited).toBe('a photograph in which the yard is hidden')
    expect(rig.sailAt.get('mizzen gaff topsail')?.credited).toContain('bill')
  })

  test('knows her lines by nickname, whipping and colour', () => {
    expect(lineOf('jib halyard')?.nicknames).toEqual(['the lark'])
    expect(lineOf('fore course tack')).toMatchObject({ nicknames: ['the ox'], whipped: 'red' })
    expect(lineOf('ensign halyard')?.coloured).toBe('white')
  })
})

describe('the words of other languages', () => {
  const { rig } = compiledRig('barquentine-otter-fennel').value
  const named = (language: string) => {
    const spoken = inLanguage(rig, language)
    return (words: string) => spoken?.value.lines.find(line => line.words === words)?.label
  }

  test('come from the ship first, then from the glossary, with a mark where they are from memory', () => {
    const german = named('German')
    expect(german('mainsail throat halyard')).toBe('Großsegel, Klaufall°')
    expect(german('fore upper topsail reef tackle')).toBe('Vorobermarssegel, Refftalje°')
    expect(named('French')('jib downhaul')).toBe('foc, cale-bas°')
    expect(inLanguage(rig, 'German')?.value.railAt.get('FR-P')?.label).toBe('Focknagelbank')
    expect(inLanguage(rig, 'German')?.value.vessel.credits.at(-1)).toBe('° German from memory')
  })

  test('name every line of a kind after its own sail, where the ship has one word for all of them', () => {
    const schooner = inLanguage(compiledRig('schooner-pellow-finch').value.rig, 'German')
    const clewline = schooner?.value.lines.find(({ words }) => words === 'fore topsail clewline')
    expect(clewline).toMatchObject({ label: 'Vormarssegel, Geitau', labelOnSail: 'Geitau' })
  })

  test('speak the orders too', () => {
    const orders = inLanguage(rig, 'Dutch')
      ?.value.sailAt.get('jib')
      ?.toSet?.phases.map(({ order }) => order)
    expect(orders).toContain('Hijs op!°')
  })

  test('are never guessed: what a glossary lacks keeps its own name, and is told of', () => {
    const spanish = inLanguage(rig, 'Spanish')
    expect(named('Spanish')('mainsail clew outhaul')).toBe('Mainsail clew outhaul')
    const [missing] = spanish?.findings ?? []
    expect(missing).toMatchObject({ rule: 'name/no-word', severity: 'note' })
    expect(missing?.message).toContain('"clew outhaul"')
    expect(inLanguage(rig, 'Latin')).toBeUndefined()
  })

  test.each(['english', 'dutch', 'german', 'french', 'spanish', 'swedish'])(
    'the %s glossary has words for what every ship has, and says of each where it is from',
    language => {
      const { terms } = rig.tongues.get(language) ?? { terms: new Map() }
      const everyShip = [
        'halyard',
        'sheet',
        'tack',
        'clewline',
        'clewgarnet',
        'buntline',
        'leechline',
        'brace',
        'lift',
      ]
      expect(
        [...everyShip, 'downhaul', 'reef tackle', 'bowline', 'throat halyard', 'vang'].filter(
          word => !terms.has(word),
        ),
      ).toEqual([])
      const text = exampleText(`gear/glossary-${language}`)
      const entries = text.split('\n').filter(line => /^ {2}\S/.test(line))
      expect(entries.filter(line => !/ from (memory|".+")$/.test(line))).toEqual([])
      expect(terms.size).toBe(entries.length)
    },
  )
})
