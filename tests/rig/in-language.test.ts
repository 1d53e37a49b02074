import { describe, expect, it, test } from 'vitest'
import { inLanguage, type Rig } from '../../src/rig/index.ts'
import { compiledRig, compiledText } from '../support/compiled.ts'

const barque = (() => {
  const { rig } = compiledText(`bring in standard gear
bring in German glossary
vessel Grey Plover
masts
  fore mast
    topmast to 22.00 m up
spars
  fore yard, 11.60 m long, fixed 11.50 m up
  fore lower topsail yard, 9.00 m long, fixed 14.50 m up
sails
  fore lower topsail, square lower topsail on fore lower topsail yard, sheeted to fore yard
    gear lower topsail
`).value
  return rig
})()

const german = (rig: Rig) => {
  const spoken = inLanguage(rig, 'German')
  if (!spoken) throw new Error('no German')
  return spoken
}
const orders = (rig: Rig) =>
  rig.sails.flatMap(({ toSet, toDouse }) =>
    [toSet, toDouse].flatMap(
      order => order?.phases.flatMap(one => [one.order, one.answer, one.report]) ?? [],
    ),
  )

describe('a rig in another language', () => {
  it('has every order, answer and report of its gear in it, each marked as from memory', () => {
    const { value, findings } = german(barque)
    expect(findings).toEqual([])
    expect(orders(value).filter(said => said !== undefined && !said.endsWith('°'))).toEqual([])
  })

  it('has an order of several sentences put together from them, and marked once', () =>
    expect(orders(german(barque).value)).toContain('Überholen! An die Schoten!°'))

  it('has a line where room is short by the short form of its sail', () => {
    const line = german(barque).value.lineAt.get('fore.lower-topsail.clewline.port')
    expect([line?.label, line?.short]).toEqual(['Voruntermarssegel, Geitau°', 'Voruntermars, Geitau°'])
  })

  it('calls a line by its word wherever it is named alone, and keeps its capital', () => {
    const line = german(barque).value.lineAt.get('fore.lower-topsail.clewline.port')
    expect([line?.kind, line?.foreign]).toEqual(['Geitau°', true])
    expect(german(barque).value.sailAt.get('fore lower topsail')?.foreign).toBe(true)
  })

  it('keeps an order whole in its own words where one sentence of it is missing, and tells of that alone', () => {
    const { value, findings } = inLanguage(
      compiledText(`glossary in German
  "Belay." "Belegen!" from "a word book"
vessel Grey Plover
stays
  jib stay
gear small jib
  halyard single
  to set
    "Belay. Away with it."
      haul halyard
    "Belay."
      hold halyard
sails
  jib, headsail on jib stay
    gear small jib
`).value.rig,
      'german',
    ) ?? { value: barque, findings: [] }
    expect(orders(value).filter(Boolean)).toEqual(['Belay. Away with it.', 'Belegen!'])
    expect(findings.map(({ message }) => message).join()).toContain('"Away with it."')
    expect(findings.map(({ message }) => message).join()).not.toContain('"Belay')
  })
})

test.each(['German', 'Dutch', 'French', 'Spanish', 'Swedish', 'English'])(
  '%s has what is spoken of most square gear of the barquentine',
  language => {
    const { rig } = compiledRig('barquentine-otter-fennel').value
    const spoken = orders(inLanguage(rig, language)?.value ?? rig)
    const own = new Set(orders(rig))
    const kept = spoken.filter(said => said !== undefined && own.has(said))
    expect(kept.length / spoken.length).toBeLessThan(language === 'English' ? 1.01 : 0.1)
  },
)
