import type { Container, Svg } from '@svgdotjs/svg.js'
import type { Sheet } from '../../sheets/index.ts'
import type { Fonts } from '../fonts/index.ts'
import { round } from '../round.ts'
import { printable } from '../words.ts'
import { drawMark } from './draw-mark.ts'
import { identify } from './identify.ts'

/** A sheet as a whole SVG file: real millimetres, its title and description, its marks in their order. */
export async function toSvg(sheet: Sheet, _fonts: Fonts): Promise<string> {
  const [{ registerWindow, SVG }, { createSVGWindow }] = await Promise.all([
    import('@svgdotjs/svg.js'),
    import('svgdom'),
  ])
  const window = createSVGWindow()
  registerWindow(window, window.document)
  const svg = SVG(window.document.documentElement) as Svg
  const [width, height] = [round(sheet.width), round(sheet.height)]
  svg.attr({
    width: `${width}mm`,
    height: `${height}mm`,
    viewBox: `0 0 ${width} ${height}`,
    role: 'graphics-document',
  })
  svg.element('title').words(printable(sheet.title))
  svg.element('desc').words(printable(sheet.description))
  if (sheet.ground) {
    svg.element('rect').attr({ width: `${width}`, height: `${height}`, fill: sheet.ground })
  }
  const give = identify()
  for (const mark of sheet.marks) drawMark(svg as unknown as Container, mark, give)
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg.node.outerHTML}\n`
}
