import { it } from 'vitest'
import { check } from './check.ts'

it('a vessel that measures in feet is told in feet', () =>
  check(`vessel Mole
# ^ error belay/no-place: The rig has no rails, and its 8 lines are belayed nowhere.
  sloop
  measure in ft and in

masts
  fore mast, stepped 24 ft aft 5 ft up
    lower mast to 46 ft up

spars
  fore yard, 20 ft long, fixed 38 ft up

gear small course
  brace pair
    swings yard against other brace
  sheet pair
    spreads clew against clewline and buntline
  clewline pair
    raises clew against sheet
  buntline pair
    gathers foot against sheet

sails
  fore course, square sail on fore yard
# ^ error yard/shorter-than-head: Fore course is 21 ft 6 in wide at the head, and the fore yard is 20 ft long.
    head 21 ft 6 in wide 37 ft up
    foot 22 ft wide 16 ft up
    gear small course
`))
