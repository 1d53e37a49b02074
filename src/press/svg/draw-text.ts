import type { Container, Element } from '@svgdotjs/svg.js'
import { millimetresPerPoint, type TextMark } from '../../sheets/index.ts'
import { faceFiles } from '../fonts/index.ts'
import { round } from '../round.ts'
import { textStart } from '../text-start.ts'
import { printable } from '../words.ts'
import type { Identify } from './identify.ts'

/** Words on their baseline; under them, where they have a halo, a stroked copy that nobody reads aloud. */
export function drawText(parent: Container, mark: TextMark, identify: Identify): void {
  const words = printable(mark.words)
  if (words.trim() === '') return
  if (mark.halo) {
    place(parent, mark, words).attr({
      'aria-hidden': 'true',
      fill: mark.halo.ink,
      stroke: mark.halo.ink,
      'stroke-width': `${round(mark.halo.width)}`,
      'stroke-linejoin': 'round',
    })
  }
  const text = place(parent, mark, words).attr({ fill: mark.ink })
  if (mark.id !== undefined) text.attr({ id: identify(mark.id) })
}

function place(parent: Container, mark: TextMark, words: string): Element {
  const { face, size, tracking } = mark.type
  const { family, weight, style } = faceFiles[face]
  const start = textStart(mark)
  const text = parent.plain(words).attr({
    x: `${round(start.x)}`,
    y: `${round(start.y)}`,
    'font-family': fallbacks[family],
    'font-size': `${round(size * millimetresPerPoint)}`,
    'font-weight': `${weight}`,
    // A face that isn't there must not push words over their neighbours.
    textLength: `${round(mark.width)}`,
    lengthAdjust: 'spacing',
  })
  if (style === 'italic') text.attr({ 'font-style': style })
  if (tracking) text.attr({ 'letter-spacing': `${round(tracking * size * millimetresPerPoint)}` })
  if (/^ | {2}| $/.test(words)) text.attr({ 'xml:space': 'preserve' })
  if (mark.turn) {
    text.attr({ transform: `rotate(${round(-mark.turn)} ${round(start.x)} ${round(start.y)})` })
  }
  return text
}

const fallbacks = {
  Spectral: 'Spectral, Georgia, serif',
  'Spectral SC': 'Spectral SC, Georgia, serif',
  'Fira Sans Condensed': 'Fira Sans Condensed, Arial Narrow, sans-serif',
} as const
