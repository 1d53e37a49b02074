import type { DeckThing } from '../../rig/index.ts'
import { dash, ink, weight } from '../ink.ts'
import { rect } from '../plane.ts'
import type { Mark, Pen } from '../sheet.ts'
import { capAt, type HullLines } from './hull-lines.ts'
import { forecastleEdge } from './hull-shape.ts'
import { isSober } from './sober.ts'
import { addressOf, block, curveStep, disc, moveTo, run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** What shows of the deck above the cap rail: houses, boats, the wheel, the forecastle's open rail. */
export function deckWorks(deck: readonly DeckThing[], lines: HullLines, view: View): readonly Mark[] {
  const seen = deck.filter(thing => shows(thing, lines) && !isFarTwin(thing, deck))
  return [...seen.map(thing => deckThing(thing, lines, view)), ...openRail(lines, view)]
}

function shows({ x0, x1, top, kind }: DeckThing, lines: HullLines): boolean {
  return (
    [x0, x1, top].every(isSober) && x1 > x0 && kind !== 'raised deck' && top > capAt(lines, (x0 + x1) / 2)
  )
}

/** The port one of a mirrored pair is hidden exactly by the starboard one. */
const isFarTwin = (far: DeckThing, deck: readonly DeckThing[]): boolean =>
  far.y1 < 0 &&
  deck.some(near => near.y0 > 0 && near.name === far.name && near.x0 === far.x0 && near.x1 === far.x1)

const edge: Pen = { ink: ink.ink, width: weight.c, join: 'round' }

function deckThing(works: DeckThing, lines: HullLines, view: View): Mark {
  const id = `${addressOf('deck', works.name)}.${Math.round(works.x0 * 100)}`
  const marks = works.kind === 'boat' ? boat(works, lines, view) : house(works, lines, view)
  return thing(id, works.label, marks)
}

function house({ x0, x1, top, kind }: DeckThing, lines: HullLines, { at, metre }: View): readonly Mark[] {
  const roof = at(x1, top)
  const foot = at(x0, Math.min(capAt(lines, x0), capAt(lines, x1)) - 0.3)
  const visible = top - capAt(lines, (x0 + x1) / 2)
  const ports = kind === 'house' && visible > 0.35 ? Math.min(30, Math.floor((x1 - x0) / 1.35)) : 0
  const radius = Math.max(0.32, Math.min(0.14 * metre, 0.28 * visible * metre))
  return [
    block(rect(roof.x, roof.y, foot.x, foot.y), { ink: ink.house }, { ink: ink.ink, width: weight.a }),
    run([at(x1 + 0.12, top), at(x0 - 0.12, top)], { ink: ink.ink, width: weight.d }),
    ...Array.from({ length: ports }, (_, i) =>
      disc(
        at(x0 + ((i + 0.5) * (x1 - x0)) / ports, top - 0.5 * visible),
        radius,
        { ink: ink.paper },
        { ink: ink.ink, width: weight.a },
      ),
    ),
  ]
}

function boat({ x0, x1, top }: DeckThing, lines: HullLines, { at }: View): readonly Mark[] {
  const length = x1 - x0
  const keel = capAt(lines, (x0 + x1) / 2) - 0.4
  const dip = Math.min(0.3 * (top - keel), 0.12 * length)
  return [
    {
      kind: 'path',
      steps: [
        moveTo(at(x0, top)),
        curveStep([
          at(x0, top),
          at(x0 + 0.3 * length, top - 1.33 * dip),
          at(x1 - 0.3 * length, top - 1.33 * dip),
          at(x1, top),
        ]),
        curveStep([
          at(x1, top),
          at(x1 - 0.02 * length, top - 0.5),
          at(x1 - 0.1 * length, keel),
          at(x1 - 0.14 * length, keel),
        ]),
        ['L', at(x0 + 0.16 * length, keel).x, at(x0, keel).y],
        curveStep([
          at(x0, keel),
          at(x0 + 0.1 * length, keel),
          at(x0 + 0.04 * length, top - 0.5),
          at(x0, top),
        ]),
        ['Z'],
      ],
      fill: { ink: ink.paper },
      pen: { ...edge, width: weight.b },
    },
  ]
}

/** The open rail of the forecastle: stanchions and a rail, as recorded. */
function openRail(lines: HullLines, { at }: View): readonly Mark[] {
  const { forecastle, isRecorded } = lines
  const height = forecastle?.rail
  if (!forecastle || height === undefined || height <= 0) return []
  const onEdge = forecastleEdge(lines, forecastle.deck, forecastle.to)
  const edgeAt = (x: number) =>
    onEdge.reduce((near, point) => (Math.abs(point.x - x) < Math.abs(near.x - x) ? point : near)).z
  const count = Math.max(2, Math.min(40, Math.round((forecastle.to - forecastle.from) / 1.45)))
  const posts = Array.from({ length: count + 1 }, (_, i) => {
    const x = forecastle.to - ((forecastle.to - forecastle.from) * i) / count
    return { x, z: edgeAt(x) }
  })
  const pen: Pen = { ink: ink.rig, width: weight.a, ...(isRecorded ? {} : { dash: dash.byRule }) }
  return [
    run(
      posts.map(({ x, z }) => at(x, z + height)),
      { ...pen, width: weight.b },
    ),
    ...posts.map(({ x, z }) => run([at(x, z), at(x, z + height)], pen)),
  ]
}
