import { dash, ink, weight } from '../ink.ts'
import type { KeyEntry } from '../key.ts'
import { between, type Rect } from '../plane.ts'
import type { Mark, Pen, Point } from '../sheet.ts'
import { halfDisc } from './centre-marks.ts'
import { foreAndAftGround, squareGround } from './ground.ts'
import { block, figure, run } from './strokes.ts'

/** What stands on the plan, so that the key explains that and nothing else. */
export interface OnPlan {
  readonly squares: boolean
  readonly foreAndAft: boolean
  readonly reefs: boolean
  readonly standing: boolean
  readonly byRule: boolean
  readonly hullByRule: boolean
  readonly hidden: boolean
  readonly conjectural: boolean
  /** What the areas and the centre of effort are of: 'all sail'. */
  readonly sum: string
  readonly effort: boolean
  readonly lateral: boolean
}

/** The key's entries for what is on the plan. */
export function keyEntries(on: OnPlan): readonly KeyEntry[] {
  const ruled = on.byRule && on.hullByRule ? 'hull and rigging drawn by rule' : undefined
  const entry = (isOn: boolean, words: string, sample: KeyEntry['sample']): readonly KeyEntry[] =>
    isOn ? [{ words, sample }] : []
  return [
    ...entry(on.squares, 'square sail: upright cloths', squareSample),
    ...entry(on.foreAndAft, 'fore-and-aft: cloths along the leech', foreAndAftSample),
    ...entry(on.reefs, 'reef band with points', reefSample),
    ...entry(on.standing, 'stay or shroud, as recorded', lineSample({ ink: ink.rig, width: weight.c })),
    ...entry(
      on.byRule || on.hullByRule,
      ruled ?? (on.hullByRule ? 'hull drawn by rule' : 'shroud, backstay, bobstay, by rule'),
      lineSample({ ink: ink.rig, width: weight.b, dash: dash.byRule }),
    ),
    ...entry(
      on.hidden,
      'edge hidden by a nearer sail',
      lineSample({ ink: ink.rig, width: weight.b, dash: dash.hidden }),
    ),
    ...entry(
      on.conjectural,
      'conjectural, named with a "?"',
      lineSample({ ink: ink.ink, width: weight.c, dash: dash.conjectural }),
    ),
    ...entry(on.effort, `CE  centre of effort, ${on.sum}`, centreSample('upper')),
    ...entry(on.lateral, 'CLR  centre of lateral resistance', centreSample('lower')),
  ]
}

const rope: Pen = { ink: ink.ink, width: weight.d, join: 'round' }

function squareSample(box: Rect): readonly Mark[] {
  const cloths = 5
  return [
    block(box, squareGround, rope),
    ...Array.from({ length: cloths - 1 }, (_, i) => {
      const x = box.left + ((box.right - box.left) * (i + 1)) / cloths
      return run(
        [
          { x, y: box.top + 0.3 },
          { x, y: box.bottom - 0.3 },
        ],
        { ink: ink.squareCloth, width: weight.a },
      )
    }),
  ]
}

function foreAndAftSample({ left, right, top, bottom }: Rect): readonly Mark[] {
  const [clew, tack, head]: [Point, Point, Point] = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: left + 0.66 * (right - left), y: top },
  ]
  const seam = (share: number) => {
    const foot = between(clew, tack, share)
    const luff = between(head, tack, share)
    return run([between(foot, luff, 0.08), between(foot, luff, 0.92)], {
      ink: ink.foreAndAftCloth,
      width: weight.a,
    })
  }
  return [figure([clew, head, tack], foreAndAftGround, rope), ...[0.2, 0.4, 0.6].map(seam)]
}

function reefSample(box: Rect): readonly Mark[] {
  const y = (box.top + box.bottom) / 2 - 0.45
  const level = (at: number) =>
    run(
      [
        { x: box.left, y: at },
        { x: box.right, y: at },
      ],
      { ink: ink.rig, width: weight.a },
    )
  const points = Array.from({ length: 5 }, (_, i) => {
    const x = box.left + ((box.right - box.left) * (i + 0.5)) / 5
    return run(
      [
        { x, y: y - 1 },
        { x, y: y + 1.9 },
      ],
      { ink: ink.ink, width: weight.b },
    )
  })
  return [level(y), level(y + 0.9), ...points]
}

const lineSample =
  (pen: Pen) =>
  ({ left, right, top, bottom }: Rect): readonly Mark[] => [
    run(
      [
        { x: left, y: (top + bottom) / 2 },
        { x: right, y: (top + bottom) / 2 },
      ],
      pen,
    ),
  ]

const centreSample =
  (half: 'upper' | 'lower') =>
  ({ left, right, top, bottom }: Rect): readonly Mark[] =>
    halfDisc({ x: (left + right) / 2, y: (top + bottom) / 2 }, 1.75, half)
