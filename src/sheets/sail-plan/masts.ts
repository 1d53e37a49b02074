import type { Mast, Platform } from '../../rig/index.ts'
import { dash, ink, weight } from '../ink.ts'
import { type Rect, rect } from '../plane.ts'
import type { Mark, Pen, Point } from '../sheet.ts'
import { type SectionShape, sectionShapes } from './mast-shape.ts'
import { isSober } from './sober.ts'
import { addressOf, block, curveTo, disc, figure, lineTo, moveTo, run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** A mast from the deck to its truck: sections with their doublings, caps, tops and crosstrees. */
export function mastMarks(mast: Mast, view: View): readonly Mark[] {
  const sections = sectionShapes(mast)
  const last = sections[sections.length - 1]
  if (!last) return []
  const pen: Pen = {
    ink: ink.ink,
    width: weight.c,
    join: 'round',
    ...(mast.conjectural ? { dash: dash.conjectural } : {}),
  }
  const marks = [
    ...mast.platforms.flatMap(platform => bracketMarks(platform, sections, view)),
    ...sections.map((section, i) => sectionMark(section, i < sections.length - 1, pen, view)),
    ...sections.slice(1).flatMap((upper, i) => doubling(sections[i] ?? upper, upper, view)),
    ...mast.platforms.flatMap(platform => floorMarks(platform, sections, view)),
    truck(last, view),
  ]
  return [thing(addressOf('mast', mast.name), mast.label, marks)]
}

/** Both sides of every section of a mast, from foot to head. */
export function mastOutlines(mast: Mast, view: View): readonly (readonly Point[])[] {
  const sections = sectionShapes(mast)
  return sections.flatMap((section, i) => sectionSides(section, i < sections.length - 1, view))
}

/** A section tapers little where another stands on it, and to half its thickness where it is the last. */
function sectionSides(
  { foot, head, thickness }: SectionShape,
  isDoubled: boolean,
  { at }: View,
): readonly [readonly Point[], readonly Point[]] {
  const half = { foot: thickness / 2, head: thickness * (isDoubled ? 0.42 : 0.26) }
  const side = (way: 1 | -1) => [at(foot.x + way * half.foot, foot.z), at(head.x + way * half.head, head.z)]
  return [side(-1), side(1)]
}

function sectionMark(section: SectionShape, isDoubled: boolean, pen: Pen, view: View): Mark {
  const [fore, aft] = sectionSides(section, isDoubled, view)
  return figure([...fore, ...aft.toReversed()], { ink: ink.paper }, pen)
}

const capHeight = 0.28

/** The cap over the lower head, and the hoops that show between the two spars below it. */
function doubling(lower: SectionShape, upper: SectionShape, { at }: View): readonly Mark[] {
  const lean = (upper.head.x - upper.foot.x) / (upper.head.z - upper.foot.z)
  const z = lower.head.z
  const before = upper.foot.x + lean * (z - upper.foot.z) - 0.62 * upper.thickness
  const behind = lower.head.x + 0.55 * lower.thickness
  const hoops = upper.doubling > 1 ? [0.35, 0.68].map(share => upper.foot.z + share * upper.doubling) : []
  const top = at(behind, z + 0.06)
  const bottom = at(before, z - capHeight + 0.06)
  return [
    ...hoops.map(height =>
      run([at(behind - (z - height) * lean, height), at(before - (z - height) * lean, height)], {
        ink: ink.rig,
        width: weight.b,
      }),
    ),
    block(rect(top.x, top.y, bottom.x, bottom.y), { ink: ink.ink }),
  ]
}

/** The rooms of a mast's tops and crosstrees on paper. */
export function platformRooms(mast: Mast, { at }: View): readonly Rect[] {
  const sections = sectionShapes(mast)
  return mast.platforms.flatMap(({ kind, width, height }) => {
    const x = isSober(height) && isSober(width) ? middleAt(height, sections) : undefined
    if (x === undefined) return []
    const [a, b] = [at(x + width / 2, height + 0.2), at(x - width / 2, height - bracketDrop[kind])]
    return [rect(a.x, a.y, b.x, b.y)]
  })
}

const bracketDrop = { top: 0.5, crosstrees: 0.26 } as const

/** The floor of a top, or the thinner bar of crosstrees: it runs past the mast on the near side. */
function floorMarks(
  { kind, width, height }: Platform,
  sections: readonly SectionShape[],
  { at, metre }: View,
): readonly Mark[] {
  const x = isSober(height) && isSober(width) ? middleAt(height, sections) : undefined
  if (x === undefined || width <= 0) return []
  const thick = (kind === 'top' ? 0.2 : 0.13) * metre
  const [left, right] = [at(x + width / 2, height), at(x - width / 2, height)]
  return [block(rect(left.x, left.y - thick, right.x, right.y), { ink: ink.ink })]
}

/** The hollow bracket under a top or crosstrees. */
function bracketMarks(
  { kind, width, height }: Platform,
  sections: readonly SectionShape[],
  { at }: View,
): readonly Mark[] {
  const x = isSober(height) && isSober(width) ? middleAt(height, sections) : undefined
  if (x === undefined || width <= 0) return []
  const drop = bracketDrop[kind]
  const inner = kind === 'top' ? 0.3 : 0.34
  const under = (share: number, down: number) => at(x + (width / 2) * share, height - down)
  return [
    {
      kind: 'path',
      steps: [
        moveTo(under(0.86, 0)),
        curveTo(under(0.62, 0.3 * drop), under(inner, 0.45 * drop), under(inner, drop)),
        lineTo(under(-inner, drop)),
        curveTo(under(-inner, 0.45 * drop), under(-0.62, 0.3 * drop), under(-0.86, 0)),
        ['Z'],
      ],
      fill: { ink: ink.paper },
      pen: { ink: ink.ink, width: weight.b },
    },
  ]
}

/** Middle of what stands at a height: of both spars where they double. */
export function middleAt(height: number, sections: readonly SectionShape[]): number | undefined {
  const near = sections.filter(({ foot, head }) => height >= foot.z - 0.6 && height <= head.z + 0.6)
  if (near.length === 0) return undefined
  const xs = near.map(
    ({ foot, head }) => foot.x + ((head.x - foot.x) * (height - foot.z)) / (head.z - foot.z),
  )
  return xs.reduce((a, b) => a + b, 0) / xs.length
}

function truck({ head }: SectionShape, { at, metre }: View): Mark {
  const radius = Math.min(0.85, Math.max(0.5, 0.16 * metre))
  return disc(at(head.x, head.z), radius, { ink: ink.ink })
}
