import type { Container, Element } from '@svgdotjs/svg.js'
import { millimetresPerPoint, type TextMark } from '../../sheets/index.ts'
import { faceFiles } from '../fonts/index.ts'
import { hex } from '../ink.ts'
import { round } from '../round.ts'
import { checkWidth, textStart } from '../text-start.ts'
import type { Drawing } from './drawing.ts'
import { families } from './families.ts'

/** Words on their baseline; under them, where they have a halo, a stroked copy that nobody reads aloud. */
export function drawText(parent: Container, mark: TextMark, { fonts, identify }: Drawing): void {
  const words = fonts.spelled(mark.words, mark.type.face)
  if (words === '') return
  checkWidth(mark, fonts.ruler)
  // A copy and not a stroke painted first: not every program knows the order of painting.
  if (mark.halo) {
    place(parent, mark, words).attr({
      'aria-hidden': 'true',
      fill: 'none',
      stroke: hex(mark.halo.ink),
      'stroke-width': `${round(mark.halo.width)}`,
      'stroke-linejoin': 'round',
    })
  }
  const text = place(parent, mark, words).attr({ fill: hex(mark.ink) })
  if (mark.id !== undefined) text.attr({ id: identify(mark.id) })
}

function place(parent: Container, mark: TextMark, words: string): Element {
  const { size, tracking, tabular } = mark.type
  const { x, y } = textStart(mark)
  const text = parent.plain(words).attr({
    x: `${round(x)}`,
    y: `${round(y)}`,
    ...faceAttributes(mark),
    'font-size': `${round(size * millimetresPerPoint)}`,
    // A fallback font must not push words over their neighbours.
    textLength: `${round(mark.width)}`,
    lengthAdjust: 'spacing',
  })
  if (tabular) text.attr({ 'font-variant': 'lining-nums tabular-nums' })
  if (tracking) text.attr({ 'letter-spacing': `${round(tracking * size * millimetresPerPoint)}` })
  if (/^ | {2}| $/.test(words)) text.attr({ 'xml:space': 'preserve' })
  if (mark.turn) text.attr({ transform: `rotate(${round(-mark.turn)} ${round(x)} ${round(y)})` })
  return text
}

function faceAttributes({ type }: TextMark): object {
  const { family, weight, style } = faceFiles[type.face]
  return {
    'font-family': families[family],
    ...(weight === 400 ? {} : { 'font-weight': `${weight}` }),
    ...(style === 'italic' ? { 'font-style': style } : {}),
  }
}
