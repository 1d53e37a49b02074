import { millimetresPerPoint, type TextMark } from '../../sheets/index.ts'
import { featuresOf } from '../fonts/index.ts'
import { round } from '../round.ts'
import { checkWidth, textStart } from '../text-start.ts'
import { printable } from '../words.ts'
import type { Press } from './press.ts'
import { tracePath } from './trace.ts'

/** Words on their baseline, over their halo. */
export function drawText(press: Press, mark: TextMark): void {
  const words = printable(mark.words)
  if (words === '') return
  checkWidth(mark, press.fonts.ruler)
  if (mark.halo) press.tags.ground(() => placed(press, mark, () => drawHalo(press, mark)))
  press.tags.words(() => placed(press, mark, () => setWords(press, mark, words)))
}

function drawHalo({ pdf, pdfFonts, ink }: Press, { words, type, halo }: TextMark): void {
  if (!halo) return
  pdf.strokeColor(ink(halo.ink)).lineWidth(round(halo.width)).lineJoin('round')
  tracePath(pdf, pdfFonts.outlines(words, type))
  pdf.stroke()
}

function setWords({ pdf, fonts, runningOn, ink }: Press, mark: TextMark, words: string): void {
  const { face, size, tracking = 0 } = mark.type
  pdf
    .font(face)
    .fontSize(round(size * millimetresPerPoint))
    .fillColor(ink(mark.ink))
  // Where boxes stand for characters that the face lacks, whoever listens or copies gets the characters.
  const hasStandIns = fonts.settable(words, face) !== words
  if (hasStandIns) pdf.markContent('Span', { actual: words })
  // Not by text(), which shapes the words once more to learn where others might follow.
  const set = (some: string, x: number) =>
    pdf._fragment(some, x, 0, {
      baseline: 'alphabetic',
      characterSpacing: round(tracking * size * millimetresPerPoint),
      features: featuresOf(mark.type),
      // Known already, and asked for only where words are stretched or underlined.
      textWidth: mark.width,
      wordCount: 1,
    })
  set(words, 0)
  if (hasStandIns) pdf.endMarkedContent()
  // Words that stand apart are read as one, unless there is a space between them.
  if (!words.endsWith(' ') && !runningOn.has(mark)) set(' ', round(mark.width))
}

// Moves the page to the first letter's origin, turned as the words are.
function placed({ pdf }: Press, mark: TextMark, draw: () => void): void {
  const { x, y } = textStart(mark)
  const angle = (-round(mark.turn ?? 0) * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  pdf.save().transform(cos, sin, -sin, cos, round(x), round(y))
  draw()
  pdf.restore()
}
