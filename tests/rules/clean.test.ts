import { describe, expect, it } from 'vitest'
import { compiledRig, exampleRigs } from '../support/compiled.ts'

const told = (rig: string) =>
  compiledRig(rig).findings.map(({ severity, rule, message }) => `${severity} ${rule}: ${message}`)

describe.each(exampleRigs)('%s', rig => {
  it('has neither error nor warning', { timeout: 60_000 }, () =>
    expect(told(rig).filter(one => !one.startsWith('note '))).toEqual([]),
  )
})

describe('notes', () => {
  it('the barque has none', () => expect(told('barque-harrow-tansy')).toEqual([]))

  it('the schooner has two halyards away from the ends of their rail, and says why', () => {
    const reason = 'Allowed because the fore braces have the forward pins and must stay together.'
    const notes = told('schooner-pellow-finch')
    expect(notes.map(note => note.split(': ')[0])).toEqual(Array(2).fill('note belay/halyard-not-at-end'))
    for (const note of notes) expect(note).toContain(reason)
  })
})
