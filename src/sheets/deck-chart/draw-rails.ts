import type { Rig } from '../../rig/index.ts'
import { ink, weight } from '../ink.ts'
import type { Group, Mark } from '../sheet.ts'
import { mastRadius } from './deck-names.ts'
import type { DeckRail } from './deck-rails.ts'
import type { ChartLayout } from './layout.ts'

/** A rail with its pins: solid in use, open free. */
export function railMarks({ rail, plank, pins }: DeckRail, rig: Rig): Group {
  const pen = { ink: ink.ink, width: weight.c, join: 'miter' as const }
  const wood: Mark =
    plank.kind === 'plank'
      ? { kind: 'line', points: plank.corners, closed: true, fill: { ink: ink.paper }, pen }
      : { kind: 'circle', at: plank.at, radius: plank.radius, pen: { ink: ink.ink, width: weight.c } }
  return {
    kind: 'group',
    id: `rail.${rail.code}`,
    title: `${rail.code} ${rail.label}`,
    marks: [
      wood,
      ...pins.map(({ place, at, radius }): Mark => {
        const names = place.lines.flatMap(address => rig.lineAt.get(address)?.label ?? [])
        const look =
          names.length > 0
            ? { fill: { ink: ink.ink } }
            : { fill: { ink: ink.paper }, pen: { ink: ink.ink, width: weight.b } }
        return {
          kind: 'group',
          id: place.address,
          title: `${rail.code} ${place.pin}: ${names.join(', ') || 'free'}`,
          marks: [{ kind: 'circle', at, radius: names.length > 0 ? radius : radius - weight.b / 2, ...look }],
        }
      }),
    ],
  }
}

/** Masts as discs in their partners. */
export function mastMarks(rig: Rig, { onSheet, scale }: ChartLayout): readonly Mark[] {
  return rig.masts.flatMap((mast): readonly Mark[] => {
    if (!mast.foot || scale === undefined) return []
    const at = onSheet(mast.foot.x, mast.foot.y)
    const radius = mastRadius(mast, scale)
    return [
      {
        kind: 'circle',
        at,
        radius: radius + 0.55,
        fill: { ink: ink.paper },
        pen: { ink: ink.ink, width: weight.c },
      },
      { kind: 'circle', at, radius, fill: { ink: ink.ink } },
    ]
  })
}
