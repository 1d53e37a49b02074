import { millimetresPerPoint, type TextMark } from '../../sheets/index.ts'
import { featuresOf } from '../fonts/index.ts'
import { round } from '../round.ts'
import { textStart } from '../text-start.ts'
import { printable } from '../words.ts'
import { type Press, tracePath } from './draw-mark.ts'

/** Words on their baseline, over their halo. */
export function drawText(press: Press, mark: TextMark): void {
  const { pdf, tags, fonts } = press
  const words = printable(mark.words)
  if (words.trim() === '') return
  tags.draw(() => {
    pdf.save()
    place(press, mark)
    if (mark.halo) {
      pdf
        .strokeColor(mark.halo.ink)
        .fillColor(mark.halo.ink)
        .lineWidth(round(mark.halo.width))
        .lineJoin('round')
      tracePath(pdf, fonts.outlines(words, mark.type))
      pdf.fillAndStroke()
    }
    const { face, size, tracking = 0 } = mark.type
    pdf
      .registerFont(face, fonts.parsed(face))
      .font(face)
      .fontSize(round(size * millimetresPerPoint))
    pdf.fillColor(mark.ink).text(words, 0, 0, {
      lineBreak: false,
      baseline: 'alphabetic',
      characterSpacing: round(tracking * size * millimetresPerPoint),
      features: featuresOf(mark.type),
    })
    pdf.restore()
  })
}

// Moves the page to the first letter's origin, turned as the words are.
function place({ pdf }: Press, mark: TextMark): void {
  const { x, y } = textStart(mark)
  const angle = (-(mark.turn ?? 0) * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  pdf.transform(cos, sin, -sin, cos, round(x), round(y))
}
