import type { Finding, Found } from '../../findings/index.ts'
import type { Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { ink } from '../ink.ts'
import { lettered } from '../lettered.ts'
import type { Setting } from '../setting.ts'
import type { Group, Mark, Sheet } from '../sheet.ts'
import { styleOf } from '../style.ts'
import { chartPapers } from './chart-paper.ts'
import { deckNames, type Named } from './deck-names.ts'
import { deckRails } from './deck-rails.ts'
import { hullMarks, thingMarks } from './draw-hull.ts'
import { listMarks } from './draw-lists.ts'
import { mastMarks, railMarks } from './draw-rails.ts'
import { frameMarks, headMarks, keyOfMarks, titleColumn } from './furniture.ts'
import { type ChartLayout, chartLayout } from './layout.ts'
import { crossings, leaderMark, leadersOf } from './leaders.ts'
import { chartType } from './type.ts'

/**
 * The chart of all belaying places: the deck from above with every rail and pin to scale, and beside it the list
 * of each rail, with a leader from every pin at the side to its number. A larger sheet is taken before any type
 * falls under 8 pt.
 */
export function deckChart(rig: Rig, _figures: Figures, setting: Setting): Found<Sheet> {
  const { ruler } = setting
  const layout = chartLayout(rig, setting.paper, ruler, styleOf(setting).enlarged)
  const rails = deckRails(rig, layout)
  const names = deckNames(rig, rails, layout, ruler)
  const leaders = leadersOf(layout)
  const marks: readonly Mark[] = [
    frameMarks(layout),
    ...headMarks(rig, layout, setting),
    {
      kind: 'group',
      id: 'deck',
      title: 'Deck from above',
      tag: { role: 'Figure', alt: describe(rig) },
      marks: [
        ...hullMarks(rig, layout),
        ...(layout.hull ? rig.deck.flatMap(thing => thingMarks(thing, layout)) : []),
        ...leaders.map(leaderMark),
        ...mastMarks(rig, layout),
        ...rails.map(rail => railMarks(rail, rig)),
        ...names.marks,
      ],
    },
    ...(rails.length === 0 ? [noPlan(layout, ruler)] : []),
    ...[...layout.lists].map(list => listMarks(list, ruler)),
    keyOfMarks(rig, layout, setting),
    titleColumn(rig, layout, setting),
  ]
  const sheet: Sheet = {
    id: 'pin-chart',
    title: `${rig.vessel.name}: deck chart`,
    description: describe(rig),
    width: layout.paper.width,
    height: layout.paper.height,
    ground: ink.paper,
    marks,
  }
  return {
    value: sheet,
    findings: [
      ...largerSheet(rig, layout, setting),
      ...homeless(names.homeless),
      ...crossed(rig, crossings(leaders)),
    ],
  }
}

function noPlan({ paper }: ChartLayout, ruler: Setting['ruler']): Group {
  const at = { x: paper.width / 2, y: 60 }
  const words = 'The text gives no places for the rails: the deck is not drawn.'
  return {
    kind: 'group',
    tag: { role: 'P' },
    marks: [lettered(ruler, at, words, chartType.note, ink.rig, { anchor: 'middle' })],
  }
}

const describe = (rig: Rig): string =>
  `The deck of ${rig.vessel.name} from above, bow up, with ${rig.rails.length} rails and where each of ${rig.lines.length} lines belays; the same is listed beside it, rail by rail.`

/** A chart that outgrows its usual sheet says so, with what would bring it back. */
function largerSheet(rig: Rig, { paper }: ChartLayout, setting: Setting): readonly Finding[] {
  const [usual] = chartPapers(setting.paper, paper.enlarged)
  if (paper.name === usual.name) return []
  return [
    {
      rule: 'sheet/larger-paper',
      severity: 'note',
      at: rig.vessel.span,
      message: `The lists of ${rig.lines.length} lines do not fit ${usual.name} at 8 pt; the deck chart is drawn on ${paper.name}.`,
      remedy: `Print it on ${paper.name}, or use the strips, one rail a sheet.`,
      related: [],
    },
  ]
}

const homeless = (names: readonly Named[]): readonly Finding[] =>
  names.map(({ label, span }) => ({
    rule: 'sheet/no-room-for-name',
    severity: 'note',
    at: span,
    message: `On the deck chart there is no room for "${label}"; it is left out.`,
    remedy: 'Check whether what stands there lies over something else.',
    related: [],
  }))

function crossed(rig: Rig, count: number): readonly Finding[] {
  if (count === 0) return []
  return [
    {
      rule: 'sheet/leaders-cross',
      severity: 'warning',
      at: rig.vessel.span,
      message: `On the deck chart ${count === 1 ? 'a pair' : `${count} pairs`} of leaders cross.`,
      remedy: 'Pins at the side lie over one another: check where their rail begins and ends.',
      related: [],
    },
  ]
}
