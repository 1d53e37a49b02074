import type { Place as BelayingPlace, Rail } from '../../rig/index.ts'
import { hullPlan } from '../hull-plan.ts'
import { lettered } from '../lettered.ts'
import { boundsOf, grown, type Rect, rectsMeet } from '../plane.ts'
import { middleOf } from '../rail-view.ts'
import type { Mark, Point } from '../sheet.ts'
import { figure } from '../tagged.ts'
import type { Ruler, Typeface } from '../typeface.ts'
import type { Book } from './book.ts'
import type { GlanceSection } from './glance-page.ts'
import { live } from './page.ts'
import { black, points, rule, type, white } from './type.ts'

type Place = (x: number, y: number) => Point

const ends = 10

// A slip of the pen (a foot a million metres aft) is left off, so that the rest can still be drawn.
const isSober = (metres: number): boolean => Number.isFinite(metres) && Math.abs(metres) < 1000

/** The deck seen from above, bow right, the station's own rails heavy; undefined where the text gives no geometry. */
export function deckPlan(book: Book): GlanceSection | undefined {
  const { rig, station, setting } = book
  const plan = hullPlan(rig)
  const own = station.rails.flatMap(code => rig.railAt.get(code) ?? [])
  if (!plan || !own.some(rail => middleOf(rail))) return undefined
  if (![plan.stem, plan.taffrail, plan.halfBeam].every(isSober) || plan.halfBeam <= 0) return undefined
  const metre = Math.min((live.width - 2 * ends) / (plan.taffrail - plan.stem), 11 / plan.halfBeam)
  const half = plan.halfBeam * metre
  const height = 2 * half + 11.6
  const draw = (top: number): readonly Mark[] => {
    const centre = top + 6 + half
    const spare = live.width - (plan.taffrail - plan.stem) * metre
    const at: Place = (x, y) => ({
      x: live.width - spare / 2 - (x - plan.stem) * metre,
      y: centre + y * metre,
    })
    const edge = plan.edge.map(([x, y]) => at(x, y))
    const across = plan.edge.toReversed().map(([x, y]) => at(x, -y))
    const hull: Mark = {
      kind: 'line',
      points: [...edge, ...across],
      closed: true,
      fill: { ink: white },
      pen: { ink: black, width: points(0.9), join: 'round' },
    }
    const marks = [
      hull,
      ...things(book, at),
      ...rails(book, at),
      ...labels(book, own, at, centre, half, setting.ruler),
    ]
    return [
      figure(
        `Seen from above, bow right. Your rails, drawn heavy: ${own.map(rail => rail.code).join(', ')}.`,
        marks,
      ),
    ]
  }
  return { heading: 'Where you stand', parts: [{ height, draw }] }
}

function things({ rig }: Book, at: Place): readonly Mark[] {
  const decks = rig.deck.filter(
    thing => thing.kind !== 'raised deck' && [thing.x0, thing.x1, thing.y0, thing.y1].every(isSober),
  )
  const masts = rig.masts.flatMap(({ foot }) =>
    foot && isSober(foot.x) && isSober(foot.y) ? [at(foot.x, foot.y)] : [],
  )
  return [
    ...decks.map(
      ({ x0, x1, y0, y1 }): Mark => ({
        kind: 'line',
        points: [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)],
        closed: true,
        pen: { ink: black, width: rule.tableRow },
      }),
    ),
    ...masts.map(
      (mast): Mark => ({
        kind: 'circle',
        at: mast,
        radius: 0.8,
        fill: { ink: white },
        pen: { ink: black, width: rule.frame },
      }),
    ),
  ]
}

function rails({ rig, station }: Book, at: Place): readonly Mark[] {
  return rig.rails.flatMap((rail): readonly Mark[] => {
    const known = rail.places.flatMap(place => pinAt(place, at))
    const [first] = known
    const last = known.at(-1)
    if (!first || !last) return []
    const isOwn = rail.station === station.name
    const pen = { ink: black, width: isOwn ? 1.1 : 0.35 }
    if (known.length > 1) return [{ kind: 'line', points: [first, last], pen }]
    return [{ kind: 'circle', at: first, radius: isOwn ? 0.75 : 0.3, fill: { ink: black } }]
  })
}

const pinAt = ({ at: pin }: BelayingPlace, at: Place): readonly Point[] =>
  pin && isSober(pin.x) && isSober(pin.y) ? [at(pin.x, pin.y)] : []

interface Label {
  readonly words: string
  readonly x: number
  readonly width: number
}

function labels(
  book: Book,
  own: readonly Rail[],
  at: Place,
  centre: number,
  half: number,
  ruler: Ruler,
): readonly Mark[] {
  const face = type.noteStrong
  const outside = own.filter(rail => isOutside(rail, at, centre, half))
  const row = (rails: readonly Rail[], y: number) =>
    apart(rails.flatMap(rail => labelOf(rail, at, face, ruler))).map(({ words, x }) =>
      lettered(ruler, { x, y }, words, face, black, { anchor: 'middle' }),
    )
  const inside = own.filter(rail => !outside.includes(rail))
  const port = [...outside.filter(rail => rail.lie === 'port')]
  const starboard = outside.filter(rail => rail.lie !== 'port')
  return [
    ...row(port, centre - half - 2.6),
    ...row(starboard, centre + half + 5.4),
    ...insideLabels(book, inside, at, ruler),
    lettered(ruler, { x: 0, y: centre + 1 }, 'stern', type.noteItalic, black),
    lettered(ruler, { x: live.width, y: centre + 1 }, 'bow', type.noteItalic, black, { anchor: 'end' }),
  ]
}

function isOutside(rail: Rail, at: Place, centre: number, half: number): boolean {
  const middle = middleOf(rail)
  return middle !== undefined && Math.abs(at(middle.x, middle.y).y - centre) > half * 0.5
}

function labelOf(rail: Rail, at: Place, face: Typeface, ruler: Ruler): readonly Label[] {
  const middle = middleOf(rail)
  if (!middle) return []
  return [{ words: rail.code, x: at(middle.x, middle.y).x, width: ruler(rail.code, face) }]
}

// Side by side in the order of their rails, pushed apart where they would touch; those that fit no more are left
// to the strips below, which name every rail.
function apart(labels: readonly Label[]): readonly Label[] {
  const gap = 2
  const kept: Label[] = []
  for (const label of labels.toSorted((a, b) => a.x - b.x)) {
    const last = kept.at(-1)
    const from = last ? last.x + last.width / 2 + gap + label.width / 2 : label.width / 2
    const x = Math.max(label.x, from)
    if (x + label.width / 2 <= live.width) kept.push({ ...label, x })
  }
  return kept
}

// Amidships a name stands by its rails where there is clear deck, before or abaft, or to either side; else nowhere.
function insideLabels({ rig }: Book, inside: readonly Rail[], at: Place, ruler: Ruler): readonly Mark[] {
  const face = type.noteStrong
  const plan = hullPlan(rig)
  const taken: Rect[] = [
    ...[plan?.stem, plan?.taffrail].map(x => x !== undefined && boundsOf([at(x, 0), at(x, 0)])),
    ...rig.deck
      .filter(thing => thing.kind !== 'raised deck')
      .map(({ x0, x1, y0, y1 }) => boundsOf([at(x0, y0), at(x1, y1)])),
    ...rig.rails.map(rail => boundsOf(rail.places.flatMap(place => pinAt(place, at)))),
    ...rig.masts.map(({ foot }) =>
      foot && isSober(foot.x) && isSober(foot.y)
        ? grown(boundsOf([at(foot.x, foot.y)]) as Rect, 1)
        : undefined,
    ),
  ].filter(box => !!box)
  const marks: Mark[] = []
  for (const mark of [...new Set(inside.map(rail => rail.mark))]) {
    const places = inside
      .filter(rail => rail.mark === mark)
      .flatMap(rail => rail.places.flatMap(place => pinAt(place, at)))
    const around = boundsOf(places)
    if (!around) continue
    const width = ruler(mark, face)
    const y = (around.top + around.bottom) / 2 + 1.1
    const middle = (around.left + around.right - width) / 2
    const tries: readonly Point[] = [
      { x: around.right + 1.6, y },
      { x: around.left - 1.6 - width, y },
      { x: middle, y: around.top - 1.8 },
      { x: middle, y: around.bottom + 4 },
    ]
    const boxOf = ({ x, y }: Point): Rect => ({
      left: x - 0.5,
      right: x + width + 0.5,
      top: y - 2.9,
      bottom: y + 0.8,
    })
    const free = tries.find(place => !taken.some(box => rectsMeet(box, boxOf(place))))
    if (!free) continue
    taken.push(boxOf(free))
    marks.push(lettered(ruler, free, mark, face, black))
  }
  return marks
}
