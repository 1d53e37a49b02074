import { ink, weight } from '../ink.ts'
import { lettered } from '../lettered.ts'
import { turned } from '../plane.ts'
import type { Mark, Point } from '../sheet.ts'
import { capHeight, type Ruler } from '../typeface.ts'
import { groundOf } from './ground.ts'
import type { NameLine } from './name-forms.ts'
import type { PlacedName } from './placed-name.ts'
import { addressOf, figure, run } from './strokes.ts'

/** A sail's name and area, lettered in a gap of the sail's own ground, or in the sky on a leader. */
export function nameMarks(name: PlacedName, ruler: Ruler): Mark {
  const { drawn, form, leader } = name
  const ground = leader ? ink.paper : groundOf(drawn.sail.kind !== 'fore-and-aft')
  const marks = form.lines.flatMap(line => lineMarks(line, name, ground, ruler))
  const patches = marks.filter(mark => mark.kind === 'line')
  const words = marks.filter(mark => mark.kind !== 'line')
  return {
    kind: 'group',
    id: addressOf('name', drawn.sail.name),
    marks: [...(leader ? [run(leader, { ink: ink.rig, width: weight.a })] : patches), ...words],
  }
}

function lineMarks(line: NameLine, { box, form }: PlacedName, ground: string, ruler: Ruler): readonly Mark[] {
  // From the label's own corner to the paper: along its lines and down across them.
  const at = (x: number, y: number): Point => {
    const off = turned({ x: x - form.width / 2, y: y - form.height / 2 }, box.angle)
    return { x: box.middle.x + off.x, y: box.middle.y + off.y }
  }
  const left = (form.width - line.width) / 2
  let x = left
  const words = line.pieces.map(piece => {
    x += piece.gap
    const mark = lettered(ruler, at(x, line.baseline), piece.words, piece.type, ink.ink, {
      ...(box.angle === 0 ? {} : { turn: (-box.angle * 180) / Math.PI }),
    })
    x += piece.width
    return mark
  })
  const rise = Math.max(...line.pieces.map(({ type }) => capHeight(type)))
  const patch = figure(
    [
      at(left - 0.7, line.baseline - rise - 0.35),
      at(left + line.width + 0.7, line.baseline - rise - 0.35),
      at(left + line.width + 0.7, line.baseline + 0.45),
      at(left - 0.7, line.baseline + 0.45),
    ],
    { ink: ground },
  )
  return [patch, ...words]
}
