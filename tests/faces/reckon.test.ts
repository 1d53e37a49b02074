import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { builtCli, run } from '../support/built-cli.ts'

let cli = ''
beforeAll(async () => {
  cli = await builtCli()
}, 60_000)

const rig = (name: string) => join(import.meta.dirname, '../../rigs', `${name}.rig`)
const reckoned = (...args: readonly string[]) => run(cli, ['reckon', ...args])
/** The value that stands behind a name in a table of figures. */
const figure = (out: string, name: string) =>
  out
    .split('\n')
    .find(line => line.startsWith(name))
    ?.slice(name.length)
    .trim()

describe('a rig', () => {
  it('is told in tables, in her own units', () => {
    const metric = reckoned(rig('barque-harrow-tansy'))
    expect(metric.code).toBe(0)
    expect(metric.err).toBe('')
    expect(figure(metric.out, 'Area, all of it')).toMatch(/^1111\.\d {2}m²$/)
    expect(metric.out).toContain('Planning figures only')
    for (const title of [
      'Sails',
      'Balance as sail is set',
      'Under working canvas',
      'Spars',
      'Lengths of lines',
      'Loads, hands and safety',
    ])
      expect(metric.out).toContain(`\n${title}\n`)
    expect(
      Math.max(
        ...metric.out
          .split('\n')
          .filter(line => /^\w.* {2}/.test(line))
          .map(line => line.length),
      ),
    ).toBeLessThan(140)
  })

  it('is told as JSON', () => {
    const { code, out } = reckoned(rig('schooner-pellow-finch'), '--format', 'json')
    expect(code).toBe(0)
    const json = JSON.parse(out)
    expect(json.sails[0]).toMatchObject({
      name: expect.any(String),
      area_m2: expect.any(Number),
      centroid: { x_m: expect.any(Number), z_m: expect.any(Number) },
    })
    expect(json.total_area_m2).toBeCloseTo(321.9, 0)
    expect(json.lines[0]).toMatchObject({
      length_m: expect.any(Number),
      pull_N: expect.any(Number),
      hands: expect.any(Number),
      safety: expect.any(Number),
    })
  })

  it('balances the sails that are named, and offers the nearest of one she has not', () => {
    const { out } = reckoned(rig('barque-harrow-tansy'), '--set', 'Fore course and main course')
    expect(out).toContain('Balance under Fore course, Main course')
    const plan = reckoned(rig('barque-harrow-tansy'), '--set', 'Topsail  breeze')
    expect(plan.out).toContain('Balance under Topsail breeze')
    expect(figure(plan.out.slice(plan.out.indexOf('Balance under')), 'Steady heel, close-hauled')).toMatch(
      /^3\.\d +°$/,
    )
    const wrong = reckoned(rig('barque-harrow-tansy'), '--set', 'fore corse')
    expect(wrong.code).toBe(2)
    expect(wrong.err).toMatch(/no sail called "fore corse"\. Nearest: fore course/)
  })

  it('is reckoned for the wind, the hands and the rope that are chosen', () => {
    const json = (...args: readonly string[]) =>
      JSON.parse(reckoned(rig('schooner-pellow-finch'), '--format', 'json', ...args).out)
    const usual = json()
    expect(json('--wind', 'force 5').assumptions.wind_m_s).toBeCloseTo(9.35, 2)
    expect(json('--wind', '16 kn').sails[0].force_N / usual.sails[0].force_N).toBeCloseTo(
      (8.2311 / 8) ** 2,
      4,
    )
    const strong = json('--hand', '450 N').lines[0]
    expect(strong.hands).toBe(Math.ceil(strong.pull_N / 450))
    expect(json('--rope-age', 'old').lines[0].safety / usual.lines[0].safety).toBeCloseTo(0.5, 4)
    expect(
      json('--timber', 'steel', '--canvas', 'navy flax', '--friction', '5 %', '--loss', '10 %').assumptions,
    ).toMatchObject({
      timber: 'steel',
      canvas: 'navy flax',
      friction_share: 0.05,
      loss_beyond_four_hands: 0.1,
    })
  })

  it('with errors is reckoned as far as it goes, and her errors told beside it', () => {
    const file = join(mkdtempSync(join(tmpdir(), 'crosstree-')), 'mole.rig')
    writeFileSync(
      file,
      'vessel Mole\n  cutter\n\nstays\n  jib stay\n\nsails\n  jib, headsail on jib stay\n    tack 0.00 m aft 1.00 m up, head 3.00 m aft 9.00 m up, clew 4.00 m aft 1.00 m up\n  flying jib, headsail on jib stay\n',
    )
    const { code, out, err } = reckoned(file)
    expect(code).toBe(1)
    expect(err).toMatch(/error sail\/nothing-sets-it/)
    expect(out).toMatch(/^Jib +16\.0 /m)
    expect(out.replaceAll('\n', ' ')).toMatch(
      /\? Flying jib \(area,[^)]*\): The flying jib is given no tack and no clew and no head\. /,
    )
  })
})

describe('by hand', () => {
  it('the wind at a height, by both laws', () => {
    const { code, out } = reckoned('--height', '30 m', '--wind', '10 m/s')
    expect(code).toBe(0)
    // 10 m/s at 10 m: 11.28 by the power law at sea, 11.01 by the log law.
    expect(out).toMatch(/^30\.00 +11\.3 +11\.0 /m)
  })

  it('the criteria of a small vessel, each with its caution', () => {
    const catamaran = reckoned(
      ...['--sail', '700 ft2', '--centre', '22 ft', '--displaces', '20000 lb', '--hulls', '16 ft'],
    )
    expect(catamaran.code).toBe(0)
    expect(catamaran.out).toMatch(
      /171\.057, exposed waters +2\.08 +1\.50 +lbf\/ft² +yes +equation not checked/,
    )
    expect(reckoned('--sail', '1200ft2', '--centre', '30ft').out).toMatch(/^The same +36000 +ft lb/m)
    for (const wrong of [
      ['--sail', '700'],
      ['--sail', '700 ft2'],
      ['--sail', '70 m2', '--centre', '9 m', '--hulls', '3 m'],
    ])
      expect(reckoned(...wrong).code).toBe(2)
  })

  it('a luff to advantage with one lead', () => {
    const { code, out } = reckoned(
      '--purchase',
      'luff',
      '--rove',
      'advantage',
      '--load',
      '4t',
      '--leads',
      '1',
    )
    expect(code).toBe(0)
    expect(figure(out, 'Pull on the fall')).toBe('13.73  kN')
    expect(figure(out, 'Hands ')).toBe('62')
    expect(out).toContain('Friction of 10 % a sheave, on the load; 225 N a hand.')
    expect(out).toContain('Planning figures only')
  })

  it('a tackle upon another, and one by its blocks', () => {
    expect(
      figure(
        reckoned('--purchase', 'twofold and gun to advantage', '--load', '10 t').out,
        'Pull on the fall',
      ),
    ).toBe('13.08  kN')
    expect(reckoned('--blocks', 'treble and double', '--load', '1 t').out).toMatch(
      /power without friction +5\n/,
    )
  })

  it('a rope, with the rules of thumb beside it', () => {
    const { out } = reckoned('--rope', '3 in round manila')
    expect(out).toMatch(/^Breaks at +28\.9\d /m)
    expect(out).toMatch(/^manila, 900 C² lb +36\.03 /m)
  })

  it('the proportions of spars', () => {
    const { out } = reckoned('--beam', '32 ft 6 in', '--waterline', '110 ft')
    expect(out).toMatch(/^main yard +19\.81 +413$/m)
  })

  it.each([
    [[], /name a rig file, or say --purchase/],
    [['--purchase', 'luff'], /asks for --load/],
    [['--purchase', 'lufff', '--load', '4t'], /no purchase called "lufff". Nearest: luff/],
    [['--purchase', 'runner', '--rove', 'advantage', '--load', '4t'], /rove in one way only/],
    [['--purchase', 'luff', '--load', '4'], /say a weight or a force/],
    [['--purchase', 'luff', '--load', '-4 t'], /say a weight or a force/],
    [['--purchase', 'luff', '--load', '0 t'], /must be above nothing/],
    [['--purchase', 'luff', '--load', '4t', '--leads', 'one'], /say how many lead blocks/],
    [['--purchase', 'luff', '--load', '4t', '--friction', '120 %'], /say a share below 100 %/],
    [['--purchase', 'luff', '--load', '4t', '--wind', 'gale'], /say a wind/],
    [['--purchase', 'luff', '--load', '4t', '--wind', '900 m/s'], /say a wind up to 100 m\/s/],
    [['--blocks', 'treble and single', '--load', '4t'], /can't be rove together/],
    [['--rope', '24 mm manila', '--timber', 'pitch pin'], /say one of pitch pine/],
    [['--rope', '24 mm manila', '--canvas', 'silk'], /say one of cotton duck/],
    [['--rope', 'manila'], /say size and material/],
    [['--beam', '9 m'], /asks for --waterline/],
    [['nowhere.rig'], /can't be read/],
  ])('%j is a wrong call', (args, complaint) => {
    const { code, err, out } = reckoned(...args)
    expect(err).toMatch(complaint)
    expect(err).not.toMatch(/\n\s+at /)
    expect(code).toBe(2)
    expect(out).toBe('')
  })
})
