import type { Mast, Place, Rail, Rig } from '../rig/index.ts'
import { hullPlan } from './hull-plan.ts'

/** How a rail is seen by the person who works at it. */
export interface RailView {
  /** On which hand the bow lies, or undefined where the rail runs across the ship or round a mast. */
  readonly bow: 'left' | 'right' | undefined
  /** Words at the two ends: 'bow' and 'stern', 'port' and 'starboard'; empty for a band. */
  readonly leftEnd: string
  readonly rightEnd: string
  /** The places as they follow one another before the eye. */
  readonly leftToRight: readonly Place[]
  /** Where the eye stands: 'seen facing the rail from the deck'. */
  readonly sentence: string
}

/**
 * The way a rail is faced. A rail at the side is faced from the deck: to starboard the bow is on the left hand,
 * to port on the right. An arm inboard of the deck's middle is faced from outboard, so the hands change. A beam is seen from abaft,
 * port on the left; a band is unrolled from forward round by starboard.
 */
export function railView(rail: Rail, rig: Rig): RailView {
  switch (rail.lie) {
    case 'port':
    case 'starboard':
      return alongside(rail, rig)
    case 'athwart':
      return across(rail, 'seen from abaft')
    case 'centre':
      return rail.places.length > 1
        ? foreAndAft(rail, 'left', 'seen from port, facing it')
        : across(rail, 'seen from abaft')
    case 'round':
      return {
        bow: undefined,
        leftEnd: '',
        rightEnd: '',
        leftToRight: rail.places,
        sentence: 'the band unrolled: from forward, round by starboard',
      }
  }
}

/** Whether a rail stands inboard: a fife rail's arm, a rack at the bowsprit's heel, a band or bitts at a mast. */
export function isInboard(rail: Rail, rig: Rig): boolean {
  const kindSaysSo = /fife|rack|band|bitt|bollard|mast/.test(rail.kind)
  const middle = middleOf(rail)
  const half = middle && hullPlan(rig)?.halfBreadth(middle.x)
  if (!middle || half === undefined || half <= 0) return kindSaysSo
  const share = Math.abs(middle.y) / half
  return share < 0.45 || (share < 0.75 && kindSaysSo)
}

/** The mast a band lies round: the one its name tells of, or the only one there is. */
export function mastWithin(rail: Rail, rig: Rig): Mast | undefined {
  const named = rig.masts.find(mast => rail.name.split(/[ -]/).includes(mast.word))
  return named ?? (rig.masts.length === 1 ? rig.masts[0] : undefined)
}

/** The middle of a rail in plan; undefined where its places are not known. */
export function middleOf(rail: Rail): { readonly x: number; readonly y: number } | undefined {
  const known = rail.places.flatMap(place => place.at ?? [])
  const [first] = known
  const last = known.at(-1)
  return first && last && { x: (first.x + last.x) / 2, y: (first.y + last.y) / 2 }
}

function alongside(rail: Rail, rig: Rig): RailView {
  const isPort = rail.lie === 'port'
  if (!isInboard(rail, rig)) {
    const it = rail.places.length > 1 ? 'the rail' : 'it'
    return foreAndAft(rail, isPort ? 'right' : 'left', `seen facing ${it} from the deck`)
  }
  const facing = mastBeside(rail, rig) ? 'facing the mast' : 'facing inboard'
  return foreAndAft(rail, isPort ? 'left' : 'right', `seen from outboard, ${facing}`)
}

/** Whether a mast stands so near that who faces the rail faces the mast: within three metres fore and aft. */
function mastBeside(rail: Rail, rig: Rig): boolean {
  const middle = middleOf(rail)
  if (!middle) return rig.masts.some(mast => rail.name.split(' ').includes(mast.word))
  return rig.masts.some(({ foot }) => foot !== undefined && Math.abs(foot.x - middle.x) < 3)
}

function foreAndAft(rail: Rail, bow: 'left' | 'right', sentence: string): RailView {
  const forward = inOrder(rail.places, place => place.at?.x)
  return {
    bow,
    leftEnd: bow === 'left' ? 'bow' : 'stern',
    rightEnd: bow === 'left' ? 'stern' : 'bow',
    leftToRight: bow === 'left' ? forward : [...forward].reverse(),
    sentence,
  }
}

function across(rail: Rail, sentence: string): RailView {
  const leftToRight = inOrder(rail.places, place => place.at?.y)
  return { bow: undefined, leftEnd: 'port', rightEnd: 'starboard', leftToRight, sentence }
}

/** Places by where they stand, or by number where that is not known. */
function inOrder(places: readonly Place[], along: (place: Place) => number | undefined): readonly Place[] {
  return [...places].sort((a, b) => (along(a) ?? 0) - (along(b) ?? 0) || a.number - b.number)
}
