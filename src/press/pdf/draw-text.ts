import { millimetresPerPoint, type TextMark } from '../../sheets/index.ts'
import { featuresOf } from '../fonts/index.ts'
import { round } from '../round.ts'
import { checkWidth, textStart } from '../text-start.ts'
import { printable } from '../words.ts'
import { finely } from './finely.ts'
import type { Press, SetFace } from './press.ts'
import { tracedPath } from './trace.ts'

/** Words on their baseline, over their halo. */
export function drawText(press: Press, mark: TextMark): void {
  const words = printable(mark.words)
  if (words === '') return
  checkWidth(mark, press.fonts.ruler)
  if (mark.halo) press.tags.ground(() => drawHalo(press, mark))
  press.tags.words(() => setWords(press, mark, words))
}

function drawHalo({ pdf, pdfFonts, ink }: Press, mark: TextMark): void {
  const { words, type, halo } = mark
  if (!halo) return
  const { cos, sin, x, y } = placed(mark)
  pdf.addContent(`q ${cos} ${-sin} ${sin} ${cos} ${x} ${y} cm
${ink(halo.ink)} RG ${round(halo.width)} w 1 j
${tracedPath(pdfFonts.outlines(words, type))}
S Q`)
}

// Not by pdfkit's text(), which shapes and encodes words anew each time that they are set.
function setWords({ pdf, faces, runningOn, ink }: Press, mark: TextMark, words: string): void {
  const { face, size, tracking = 0 } = mark.type
  const { font, set } = faces.get(face) as SetFace
  pdf.page.fonts[font.id] ??= font.ref()
  const height = round(size * millimetresPerPoint)
  const spacing = round(tracking * size * millimetresPerPoint)
  const show = (some: string) =>
    set(some, featuresOf(mark.type))
      .pieces.map(
        ({ up, glyphs }) => `${up ? `${finely(up * height)} Ts ` : ''}[${glyphs}] TJ${up ? ' 0 Ts' : ''}`,
      )
      .join('\n')
  const { cos, sin, x, y } = placed(mark)
  pdf.addContent(`BT ${ink(mark.ink)} rg /${font.id} ${height} Tf${spacing ? ` ${spacing} Tc` : ''}
${cos} ${-sin} ${-sin} ${-cos} ${x} ${y} Tm`)
  // Where boxes stand for characters that the face lacks, whoever listens or copies gets the characters.
  const { hasStandIns } = set(words, featuresOf(mark.type))
  if (hasStandIns) pdf.markContent('Span', { actual: words })
  pdf.addContent(show(words))
  if (hasStandIns) pdf.endMarkedContent()
  // Words that stand apart are read as one, unless there is a space between them.
  if (!words.endsWith(' ') && !runningOn.has(mark)) pdf.addContent(show(' '))
  pdf.addContent(spacing ? '0 Tc ET' : 'ET')
}

/** Where the first letter's origin stands, and how the words are turned. */
function placed(mark: TextMark) {
  const { x, y } = textStart(mark)
  const angle = (round(mark.turn ?? 0) * Math.PI) / 180
  return { cos: finely(Math.cos(angle)), sin: finely(Math.sin(angle)), x: round(x), y: round(y) }
}
