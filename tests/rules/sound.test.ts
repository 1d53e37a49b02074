import { describe, it } from 'vitest'
import { check } from './check.ts'

// Rigs that are right as they stand, though a rule taken by its letter might object.
describe('nothing is said against', () => {
  it('a lugger: her yard comes down by its weight, and is not braced', () =>
    check(`vessel Mole
  lugger

masts
  main mast

spars
  main yard, hoists from 1.50 m to 6.00 m up

sails
  mainsail, lugsail on main yard
    gear dipping lug

gear dipping lug
  halyard single
    hoists main yard, answered by the weight of the yard
  sheet pair
    draws clew aft against other sheet

rails
  gunwale, port and starboard, 3 pins, marked G

belay on gunwale
  1  mainsail sheet
  3  port mainsail halyard
`))

  it('a staysail whose one sheet runs on a horse', () =>
    check(`vessel Mole
  ketch

stays
  fore stay

sails
  fore staysail, staysail on fore stay
    gear boomed staysail

gear boomed staysail
  halyard single
    hoists head against downhaul
  downhaul single
    lowers head against halyard
  sheet single
    draws clew aft

rails
  fore rail, port and starboard, marked FR
    4 pins from 2.00 m aft 1.50 m out to 2.90 m aft 1.50 m out, 1.80 m up
  horse cleat at 3.60 m aft 1.20 m up, marked HC

belay on fore rail
  1  port fore staysail halyard, starboard fore staysail downhaul

belay fore staysail sheet to horse cleat
`))

  it('lazy jacks in the place of topping lifts, and pins on a band round the mast', () =>
    check(`vessel Mole
  sloop

masts
  main mast, stepped 4.00 m aft 1.00 m up
    lower mast to 11.00 m up

spars
  mainsail gaff, from 4.20 m aft 8.00 m up to 7.00 m aft 10.40 m up, hoists from 2.60 m up
  mainsail boom, from 4.20 m aft 2.00 m up to 9.00 m aft 2.20 m up

sails
  mainsail, gaff sail on mainsail gaff and mainsail boom
    gear small mainsail

gear small mainsail
  throat halyard single
    hoists throat against downhaul
  peak halyard single
    hoists peak against downhaul
  downhaul single
    lowers gaff against throat halyard and peak halyard
  sheet single
    draws boom in
  lazy jack pair
    tops boom

rails
  mast band round main mast, 6 pins, 2.00 m up, marked MB
  sheet cleat at 9.00 m aft 1.20 m up, marked SC

belay on mast band
  1  mainsail throat halyard
  2  mainsail.lazy-jack.starboard
  3  mainsail peak halyard
  5  mainsail downhaul
  6  mainsail.lazy-jack.port

belay mainsail sheet to sheet cleat
`))

  it('an upper topsail yard hoisted into the doubling of the topmast', () =>
    check(`masts
  fore mast, stepped 12.50 m aft 2.70 m up
    lower mast       to 15.90 m up
    topmast          to 23.60 m up, doubled 2.50 m
    topgallant mast  to 32.10 m up, doubled 2.00 m

spars
  fore lower topsail yard,  16.60 m long, fixed 16.15 m up
  fore upper topsail yard,  15.44 m long, hoists from 17.35 m to 22.40 m up
`))

  it('flag halyards, and two of them on one pin', () =>
    check(`vessel Mole
  yawl

masts
  main mast

spars
  main yard
    gear bare yard

gear bare yard
  brace pair
    swings yard against other brace

lines
  ensign halyard single
    hoists ensign on main yard
  signal halyard single
    hoists signal on main yard

rails
  main rail, port and starboard, 9 pins, marked MR

belay on main rail
  1  main yard brace
  5  port shared by ensign halyard and signal halyard because both are light
`))

  it('a rig with no line yet, and only its masts and spars', () =>
    check(`vessel Mole
  cutter

masts
  main mast

stays
  fore stay
`))
})
