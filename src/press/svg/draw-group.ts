import type { Container } from '@svgdotjs/svg.js'
import type { Group, PathStep } from '../../sheets/index.ts'
import { round } from '../round.ts'
import { printable } from '../words.ts'
import type { Drawing } from './drawing.ts'
import { pathData } from './path-data.ts'

/**
 * Draws a group: the address of its thing for an id, and its name for a title that is shown and read out.
 * Drawing the marks inside is left to whoever calls.
 */
export function drawGroup(
  parent: Container,
  group: Group,
  drawing: Drawing,
  drawInside: (g: Container) => void,
): void {
  const { id, title, tag, offset, opacity, clip } = group
  const g = parent.group()
  if (id !== undefined) g.attr({ id: drawing.identify(id) })
  if (title !== undefined) {
    g.attr({ role: 'graphics-object' })
    g.element('title').words(printable(title))
  }
  if (tag?.role === 'Figure' && tag.alt !== undefined) g.element('desc').words(printable(tag.alt))
  if (offset) g.attr({ transform: `translate(${round(offset.x)} ${round(offset.y)})` })
  if (opacity !== undefined && opacity !== 1) g.attr({ opacity: `${round(opacity)}` })
  if (clip) cut(g, clip, drawing)
  drawInside(g)
}

// The shape stands inside the group it cuts, so it moves with the group's offset.
function cut(g: Container, steps: readonly PathStep[], { identify }: Drawing): void {
  const id = identify('_clip')
  g.element('clipPath')
    .attr({ id })
    .element('path')
    .attr({ d: pathData(steps) })
  g.attr({ 'clip-path': `url(#${id})` })
}
