import type { Spar } from '../../rig/index.ts'
import { dash, ink, weight } from '../ink.ts'
import { between } from '../plane.ts'
import type { Mark, Pen } from '../sheet.ts'
import { type SparShape, sparShape } from './spar-shape.ts'
import { addressOf, disc, figure, run, thing } from './strokes.ts'
import type { View } from './view.ts'

/** A spar; nothing where its geometry is not known. */
export function sparMarks(spar: Spar, view: View): readonly Mark[] {
  const shape = sparShape(spar, view)
  if (!shape) return []
  const body = figure(shape.outline, { ink: ink.paper }, sparPen(spar))
  const fittings = spar.kind === 'yard' ? slings(shape) : boomFittings(spar, shape)
  return [thing(addressOf('spar', spar.name), spar.label, [body, ...fittings])]
}

const sparPen = ({ conjectural }: Spar): Pen => ({
  ink: ink.ink,
  width: weight.c,
  join: 'round',
  ...(conjectural ? { dash: dash.conjectural } : {}),
})

/** The two bands about the slings. */
function slings({ axis, thickness }: SparShape): readonly Mark[] {
  const middle = between(axis[0], axis[1], 0.5)
  const apart = Math.min(1.1, 1.3 * thickness)
  return [-apart, apart].map(off =>
    run(
      [
        { x: middle.x + off, y: middle.y - thickness / 2 },
        { x: middle.x + off, y: middle.y + thickness / 2 },
      ],
      { ink: ink.ink, width: weight.b },
    ),
  )
}

function boomFittings(
  spar: Exclude<Spar, { kind: 'yard' }>,
  { axis, thickness, outline }: SparShape,
): readonly Mark[] {
  switch (spar.kind) {
    case 'boom':
    case 'gaff':
      return [disc(axis[0], Math.max(0.4, 0.42 * thickness), { ink: ink.ink })]
    case 'bowsprit':
      // Bands where the heel is held and where the stays set up; a fid hole for each reef.
      return [
        ...[0.45, 0.72].flatMap(share => bandAcross(axis, outline, share)),
        ...(spar.length === undefined ? [] : spar.reefs.slice(0, 6)).map(reef =>
          disc(between(axis[0], axis[1], Math.min(1, reef / (spar.length ?? reef))), 0.3, { ink: ink.ink }),
        ),
      ]
    case 'slung yard':
    case 'spar':
    case 'studdingsail boom':
      return []
  }
}

function bandAcross(axis: SparShape['axis'], outline: SparShape['outline'], share: number): readonly Mark[] {
  const half = outline.length / 2
  const along = (points: SparShape['outline']) => {
    const shares = [0, 0.35, 0.7, 1]
    const i = shares.findIndex(s => s >= share)
    const [from, to] = [points[i - 1], points[i]]
    const [low = 0, high = 1] = [shares[i - 1], shares[i]]
    return from && to ? between(from, to, (share - low) / (high - low)) : between(axis[0], axis[1], share)
  }
  const near = along(outline.slice(0, half))
  const far = along([...outline.slice(half)].reverse())
  return [run([near, far], { ink: ink.ink, width: weight.b })]
}
