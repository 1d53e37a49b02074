import { describe, expect, it } from 'vitest'
import { compile } from '../../src/compile.ts'
import { rules } from '../../src/rules/index.ts'
import { entryName, filesOf, readPage } from './page.ts'

// Rules that tell of one thing by itself: a want, a figure, a rope. All others tell of two that don't go together.
const ofOneThing = [
  'balance/lead-out-of-range',
  'balance/lead-while-setting',
  'belay/no-place',
  'belay/pins-too-close',
  'boom/no-topping-lift',
  'lead/no-walk-away',
  'lead/to-be-given',
  'lead/too-many-turns',
  'lead/turns-sharply',
  'line/acts-on-nothing',
  'line/condemned',
  'line/cut-long',
  'line/cut-short',
  'line/hands-short',
  'line/material-unknown',
  'line/nothing-answers',
  'line/rope-too-thin',
  'line/rope-too-weak',
  'line/survey-overdue',
  'mast/part-without-height',
  'measure/of-nothing',
  'pair/one-missing',
  'pair/wrong-side',
  'sail/canvas-unknown',
  'sail/corner-missing',
  'sail/edges-crossed',
  'sail/foot-above-head',
  'sail/no-brace',
  'sail/no-buntline',
  'sail/no-sheet',
  'sail/no-tack',
  'sail/nothing-gets-it-in',
  'sail/nothing-sets-it',
  'sail/sheet-one-side',
  'spar/material-unknown',
  'yard/no-halyard',
]

describe.each(rules.filter(({ slug }) => !ofOneThing.includes(slug)))('$slug', ({ slug }) => {
  it('points at both ends', () => {
    const { fails } = readPage(slug)
    if (!fails) throw new Error('its page has no failing example')
    const { findings } = compile(filesOf(fails), { name: entryName, text: fails.entry })
    const own = findings.filter(({ rule }) => rule === slug)
    expect(own).not.toEqual([])
    for (const { at, related } of own) {
      const elsewhere = related.filter(one => one.at.source !== at.source || one.at.start !== at.start)
      expect(elsewhere).not.toEqual([])
    }
  })
})
