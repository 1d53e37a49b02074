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
