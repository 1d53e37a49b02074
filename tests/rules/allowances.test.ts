import { describe, it } from 'vitest'
import { check } from './check.ts'

const jibs = `bring in standard gear

stays
  jib stay
  outer jib stay

sails
  jib, headsail on jib stay
    gear jib
  outer jib, headsail on outer jib stay
    gear jib

rails
  fore rail, port and starboard, 9 pins, marked FR

belay on fore rail
`

describe('an allowance', () => {
  it('lowers a warning to a note, and says why', () =>
    check(`${jibs}  1  port jib sheet
  2  starboard jib sheet
#              ^ note pair/not-mirrored: Jib sheet comes to the fore rail, port, pin 1 and the fore rail, starboard, pin 2, which are not opposite each other. Allowed because a ventilator stands at pin 1.

allow pair/not-mirrored for jib sheet because a ventilator stands at pin 1
`))

  it('lowers an error as well', () =>
    check(`${jibs}  1  port jib halyard, port outer jib halyard
#                               ^ note belay/two-on-a-pin: Fore rail, port, pin 1 has two lines: jib halyard and outer jib halyard. Allowed because the outer jib is never set with the jib.

allow belay/two-on-a-pin for outer jib halyard because the outer jib is never set with the jib
`))

  it('holds for a whole rail', () =>
    check(`${jibs}  5  port jib halyard
#         ^ note belay/halyard-not-at-end
  6  port outer jib halyard
#         ^ note belay/halyard-not-at-end

allow belay/halyard-not-at-end for fore rail because she has no other gear there
`))

  it('holds for the whole rig where it names nothing', () =>
    check(`${jibs}  5  port jib halyard
#         ^ note belay/halyard-not-at-end: Jib halyard is at the fore rail, port, pin 5 of 9, more than 3 from either end. Allowed because she has no other gear there.

allow belay/halyard-not-at-end because she has no other gear there
`))

  it('leaves what it does not name', () =>
    check(`${jibs}  1  port jib sheet
  2  starboard jib sheet
#              ^ note pair/not-mirrored
  3  port outer jib sheet
  4  starboard outer jib sheet
#              ^ warning pair/not-mirrored

allow pair/not-mirrored for jib sheet because a ventilator stands at pin 1
`))

  it('that nothing needs is told, thing by thing', () =>
    check(`${jibs}  5  port jib halyard
#         ^ note belay/halyard-not-at-end
  9  port outer jib halyard

allow belay/halyard-not-at-end for jib halyard and outer jib halyard because she has no other gear there
# ^ note allow/matches-nothing: Nothing is found by belay/halyard-not-at-end for the outer jib halyard, and nothing need be allowed.
`))

  it('of a check that there is not is told', () =>
    check(`${jibs}  9  port outer jib halyard

allow belay/halyard-not-at-ends for jib halyard because she has no other gear there
# ^ note allow/matches-nothing
`))

  it('does not make a fault of the text good', () =>
    check(`${jibs}  9  port jib halyrd
#         ^ error name/unknown

allow name/unknown because we know it
# ^ note allow/matches-nothing: A fault of the text can't be allowed: name/unknown has to be mended.
`))
})

describe('leave beside the thing it concerns', () => {
  it('is set in under a line of a gear, or said in one breath with it', () =>
    check(`${jibs.replaceAll('gear jib', 'gear jib\n      halyard, allow belay/halyard-not-at-end because the sheets have the ends')}  5  port jib halyard
#         ^ note belay/halyard-not-at-end: Jib halyard is at the fore rail, port, pin 5 of 9, more than 3 from either end. Allowed because the sheets have the ends.
  6  port outer jib halyard
#         ^ note belay/halyard-not-at-end
`))

  it('is set in under a pin, with its reason on a line of its own', () =>
    check(`${jibs}  1  port jib halyard, port outer jib halyard
#                               ^ note belay/two-on-a-pin: Fore rail, port, pin 1 has two lines: jib halyard and outer jib halyard. Allowed because the two are never worked together.
    allow belay/two-on-a-pin
      because the two are never worked together
`))

  it('is set in under a rail, and holds for that rail alone', () =>
    check(`${jibs.replace('marked FR', 'marked FR\n    allow belay/halyard-not-at-end because all of it is clear deck')}  5  port jib halyard
#         ^ note belay/halyard-not-at-end
belay on main rail
  5  port outer jib halyard
#         ^ note belay/halyard-not-at-end: Outer jib halyard is at the main rail, port, pin 5 of 9, more than 3 from either end.
rails
  main rail, port and starboard, 9 pins, marked MR
`))

  it('of a gear holds for every sail that carries it, and one that needs it is enough', () =>
    check(`bring in standard gear

gear tall jib like jib
  halyard
    allow belay/halyard-not-at-end because it is hauled hand over hand
${jibs.replace('bring in standard gear', '').replaceAll('gear jib', 'gear tall jib')}  5  port jib halyard
#         ^ note belay/halyard-not-at-end
  9  port outer jib halyard
`))

  it('of one order holds for that order', () =>
    check(`bring in standard gear

gear tall jib like jib
  to set
    "Hoist away."
#    ^ note order/hauled-against: Phase 1 of setting the jib ("Hoist away.") hauls the jib halyard while the jib downhaul is held fast. Allowed because the downhaul is unbent in summer.
      haul halyard, hold downhaul
      allow order/hauled-against because the downhaul is unbent in summer
${jibs.replace('bring in standard gear', '').replace('gear jib', 'gear tall jib')}  1  jib sheet
`))

  it('that lowers nothing is told, where it stands', () =>
    check(`${jibs.replace('gear jib', 'gear jib\n      allow line/no-such-check because we know it\n#     ^ note allow/matches-nothing: Nothing is found by line/no-such-check here, and nothing need be allowed.')}  9  port jib halyard
`))

  it('wants a reason', () =>
    check(`${jibs}  5  port jib halyard
#         ^ note belay/halyard-not-at-end
    allow belay/halyard-not-at-end
#   ^ error allow/no-reason
`))

  it('is not said of a page as a whole', () =>
    check(`rails
  allow belay/halyard-not-at-end because there is room
# ^ error syntax/clause-misplaced: "allow" isn't said of this page as a whole.
  fore rail, port and starboard, 9 pins, marked FR
`))
})
