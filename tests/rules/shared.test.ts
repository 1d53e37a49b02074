import { describe, it } from 'vitest'
import { check } from './check.ts'

const course = `masts
  main mast

spars
  main yard

gear small course
  tack pair
    draws clew forward against clewgarnet
  sheet pair
    draws clew aft against clewgarnet
  clewgarnet pair
    raises clew against tack and sheet

sails
  main course, square course on main yard
    gear small course

rails
  main rail, port and starboard, 3 pins, marked MR
  main kevel, port and starboard at 9.00 m aft 3.00 m out 2.00 m up, marked MK

belay on main rail
  1  main course clewgarnet
`

describe('tack and sheet of a course', () => {
  it('are not on one kevel by chance', () =>
    check(`${course}
belay main course tack to main kevel
belay main course sheet to main kevel
#      ^ error belay/two-on-a-pin
`))

  it('nor on one pin on purpose', () =>
    check(`${course}  3  shared by main course tack and main course sheet because there is no room
#                                     ^ error belay/never-shared: Main rail, port, pin 3 is shared by main course tack, port and main course sheet, port, and the one comes under load as the other is let go.
#                                     ^ error belay/never-shared
`))
})
