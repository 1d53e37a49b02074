import { describe, expect, test } from 'vitest'
import { metresPerSecond } from '../../src/measure/index.ts'
import { type Figures, reckon, usual } from '../../src/reckon/index.ts'
import { reckoningRecord } from '../../src/sheets/reckoning/index.ts'
import { compiledRig, compiledText, exampleRigs, exampleText } from '../support/compiled.ts'

/** Every measure of length of a text made another. */
function remeasured(
  text: string,
  write: (metres: number) => string,
  thick: (metres: number) => string,
): string {
  return text
    .split('\n')
    .map(line =>
      line.replace(/(\d+(?:\.\d+)?) (m|mm)( thick)?(?![\w"])/g, (_all, number, unit, said) =>
        unit === 'm' ? write(Number(number)) : `${thick(Number(number) / 1000)}${said ?? ''}`,
      ),
    )
    .join('\n')
}
const inMetres = (metres: number) => `${metres.toFixed(6)} m`
const inFeet = (metres: number) => {
  const inches = metres / 0.0254
  const feet = Math.floor(inches / 12)
  return `${feet} ft ${(inches - feet * 12).toFixed(4)} in`
}
const enlarged = (text: string) =>
  remeasured(
    text,
    metres => inMetres(metres * 1.1),
    metres => `${(metres * 1100).toFixed(4)} mm`,
  )
/** A size of rope in inches must say that it is no circumference. */
const inFeetAndInches = (text: string) =>
  remeasured(text, inFeet, metres => `${(metres / 0.0254).toFixed(6)} in thick`).replaceAll(
    'thick thick',
    'thick',
  )

const figuresOf = (text: string): Figures => reckon(compiledText(text).value.rig)
const value = (figure: { known: boolean; value?: unknown; because?: string }): number => {
  if (!figure.known) throw new Error(figure.because)
  return Number(figure.value)
}

describe.each(['barque-harrow-tansy', 'schooner-pellow-finch'])('%s', name => {
  const text = exampleText(name)
  const plain = figuresOf(text)
  const { rig } = compiledText(text).value

  test('enlarged by 1.1: areas by 1.21, the lead in per cent unchanged', () => {
    const large = figuresOf(enlarged(text))
    expect(value(large.total) / value(plain.total)).toBeCloseTo(1.21, 6)
    for (const [sail, { area }] of plain.sails) {
      expect(value(large.sails.get(sail)?.area ?? area) / value(area), sail).toBeCloseTo(1.21, 5)
    }
    if (!plain.lead.known || !large.lead.known) throw new Error('no lead')
    // A square sail hangs a fixed 10 cm before its yard: a tenth of that, over her waterline, is all that may differ.
    const difference = value(large.lead.value.share) - value(plain.lead.value.share)
    expect(Math.abs(difference)).toBeLessThanOrEqual(0.01 / (rig.vessel.waterline ?? 0))
  })

  test('metres rewritten as feet and inches: the same figures to 0.1 per cent', () => {
    const rewritten = compiledText(inFeetAndInches(text)).value.rig
    const before = reckoningRecord(rig, plain)
    const after = reckoningRecord(rewritten, reckon(rewritten))
    expect(alike(before, after, '')).toEqual([])
  })

  test("the total's centre is the moment sum of its sails", () => {
    let [area, momentX, momentZ] = [0, 0, 0]
    for (const sail of rig.sails) {
      const figures = plain.sails.get(sail.name)
      if (!figures?.area.known || !figures.centroid.known) throw new Error(sail.name)
      area += figures.area.value
      momentX += figures.area.value * figures.centroid.value.x
      momentZ += figures.area.value * figures.centroid.value.z
    }
    if (!plain.centreOfEffort.known) throw new Error('no centre')
    expect(plain.centreOfEffort.value.x).toBeCloseTo(momentX / area, 9)
    expect(plain.centreOfEffort.value.z).toBeCloseTo(momentZ / area, 9)
  })
})

test.each(exampleRigs)('%s: wind by the root of two doubles the force on every sail', name => {
  const { rig } = compiledRig(name).value
  const [one, other] = [usual.wind, metresPerSecond(usual.wind * Math.SQRT2)].map(wind =>
    reckon(rig, { ...usual, wind }).sailLoads(),
  )
  for (const [sail, load] of one ?? []) {
    const blown = other?.get(sail)
    if (!load.known || !blown?.known) continue
    expect(blown.value.force / load.value.force, sail).toBeCloseTo(2, 9)
    expect(blown.value.strongForce).toBe(load.value.strongForce)
  }
})

/** Where two records differ by more than a thousandth, or by a word. */
function alike(one: unknown, other: unknown, at: string): readonly string[] {
  if (typeof one === 'number' && typeof other === 'number') {
    return Math.abs(one - other) <= 0.001 * Math.max(Math.abs(one), 1e-3) ? [] : [`${at}: ${one}, ${other}`]
  }
  if (typeof one !== 'object' || one === null || typeof other !== 'object' || other === null) {
    return one === other ? [] : [`${at}: ${one}, ${other}`]
  }
  const keys = new Set([...Object.keys(one), ...Object.keys(other)])
  return [...keys].flatMap(key =>
    alike((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key], `${at}/${key}`),
  )
}
