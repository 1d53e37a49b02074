import type { Svg } from '@svgdotjs/svg.js'
import type { Sheet } from '../../sheets/index.ts'
import type { Fonts } from '../fonts/index.ts'
import { hex } from '../ink.ts'
import { round } from '../round.ts'
import { printable } from '../words.ts'
import { drawMark } from './draw-mark.ts'
import { drawingDocument } from './drawing-document.ts'
import { fontFaces } from './font-faces.ts'
import { identify } from './identify.ts'

/** A sheet as a whole SVG file: real millimetres, title and description, its fonts, its marks in their order. */
export async function toSvg(
  sheet: Sheet,
  fonts: Fonts,
  { language = 'en' }: { readonly language?: string } = {},
): Promise<string> {
  const faces = await fontFaces(sheet.marks, fonts)
  const { registerWindow, SVG } = await import('@svgdotjs/svg.js')
  const { window, document } = await drawingDocument()
  // svg.js keeps one window for all; nothing is awaited between here and the end, so no other drawing comes in.
  registerWindow(window, document)
  const svg = SVG(document.documentElement as never) as unknown as Svg
  begin(svg, sheet, language)
  if (faces !== '') svg.element('style').words(faces)
  if (sheet.ground) drawGround(svg, sheet, sheet.ground)
  const drawing = { fonts, identify: identify() }
  for (const mark of sheet.marks) drawMark(svg, mark, drawing)
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg.node.outerHTML}\n`
}

function begin(svg: Svg, sheet: Sheet, language: string): void {
  const [width, height] = [round(sheet.width), round(sheet.height)]
  svg.attr({
    width: `${width}mm`,
    height: `${height}mm`,
    viewBox: `0 0 ${width} ${height}`,
    role: 'graphics-document',
    lang: printable(language),
    'xml:lang': printable(language),
    // Kerning and ligatures at every size. "geometricPrecision" sounds better and is worse: Chromium then adds up
    // advances cut to 1/64 of a unit, and a unit here is a millimetre.
    'text-rendering': 'optimizeLegibility',
  })
  svg.element('title').words(printable(sheet.title))
  svg.element('desc').words(printable(sheet.description))
}

function drawGround(svg: Svg, { width, height }: Sheet, ground: string): void {
  svg.element('rect').attr({ width: `${round(width)}`, height: `${round(height)}`, fill: hex(ground) })
}
