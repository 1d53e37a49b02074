import { OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { elementsOf, type XmlElement } from './xml.ts'

/** Something drawn, in millimetres from the upper left corner of the page. */
export type Drawn =
  /** Its corners, and the handles of its curves; of a circle its four ends. */
  | { readonly kind: 'shape'; readonly points: readonly Place[] }
  /** Where the words begin, the way they run (a unit vector), and how wide they are. */
  | {
      readonly kind: 'words'
      readonly words: string
      readonly from: Place
      readonly along: Place
      readonly width: number
    }

type Place = readonly [number, number]
type Matrix = readonly [number, number, number, number, number, number]

/** What an SVG of ours draws, but for clips and the copies that make a halo. */
export function drawnInSvg(svg: string): readonly Drawn[] {
  const moves = new Map<string, Place>()
  return elementsOf(svg).flatMap(element => {
    if (element.attributes['aria-hidden'] || element.path.includes('clipPath')) return []
    if (element.name === 'g') moves.set(element.path, moveOf(element))
    const [right, down] = moves.get(element.path.replace(/\/[^/]*$/, '')) ?? [0, 0]
    return drawnElement(element).map(drawn => shifted(drawn, ([x, y]) => [x + right, y + down]))
  })
}

function moveOf({ attributes }: XmlElement): Place {
  const [x = 0, y = 0] = numbers(attributes.transform ?? '')
  return [x, y]
}

function drawnElement({ name, attributes, text }: XmlElement): readonly Drawn[] {
  const number = (key: string) => Number(attributes[key])
  switch (name) {
    case 'polygon':
    case 'polyline':
      return [{ kind: 'shape', points: places(numbers(attributes.points ?? '')) }]
    case 'path':
      return [{ kind: 'shape', points: places(numbers(attributes.d ?? '')) }]
    case 'circle': {
      const [x, y, r] = [number('cx'), number('cy'), number('r')]
      return [
        {
          kind: 'shape',
          points: [
            [x - r, y],
            [x, y - r],
            [x + r, y],
            [x, y + r],
          ],
        },
      ]
    }
    case 'text': {
      const [turn = 0] = numbers(attributes.transform ?? '')
      const angle = (turn * Math.PI) / 180
      const along: Place = [Math.cos(angle), Math.sin(angle)]
      return [
        { kind: 'words', words: text, from: [number('x'), number('y')], along, width: number('textLength') },
      ]
    }
    default:
      return []
  }
}

/** What a page of a PDF draws, but for clips and the spaces between words, as pdf.js reads its operators. */
export async function drawnInPdf(page: PDFPageProxy): Promise<readonly Drawn[]> {
  const { fnArray, argsArray } = await page.getOperatorList()
  const drawn: Drawn[] = []
  const state = { matrix: identity, spacing: 0, size: 0, text: identity, clips: false }
  const stack: (typeof state)[] = []
  const toPage = ([x, y]: Place) => onPaper(page, apply(state.matrix, [x, y]))
  fnArray.forEach((operator, index) => {
    const args = argsArray[index] as readonly unknown[]
    if (operator === OPS.save) stack.push({ ...state })
    else if (operator === OPS.restore) Object.assign(state, stack.pop())
    else if (operator === OPS.transform) state.matrix = times(state.matrix, args as unknown as Matrix)
    else if (operator === OPS.clip) state.clips = true
    else if (operator === OPS.setFont) state.size = args[1] as number
    else if (operator === OPS.setCharSpacing) state.spacing = args[0] as number
    else if (operator === OPS.setTextMatrix)
      state.text = Array.from(args[0] as Iterable<number>) as unknown as Matrix
    else if (operator === OPS.constructPath) {
      if (!state.clips)
        drawn.push({ kind: 'shape', points: pathPoints(args[1] as readonly Iterable<number>[]).map(toPage) })
      state.clips = false
    } else if (operator === OPS.showText) {
      const { words, width } = shown(args[0] as unknown as readonly Shown[], state)
      if (words === ' ') return
      const from = toPage(apply(state.text, [0, 0]))
      const end = toPage(apply(state.text, [1, 0]))
      const length = Math.hypot(end[0] - from[0], end[1] - from[1])
      const along: Place = [(end[0] - from[0]) / length, (end[1] - from[1]) / length]
      drawn.push({ kind: 'words', words, from, along, width: width * length })
    }
  })
  return drawn
}

type Shown = number | { readonly unicode: string; readonly width: number }

function shown(
  glyphs: readonly Shown[],
  { size, spacing }: { readonly size: number; readonly spacing: number },
) {
  let [words, width] = ['', 0]
  for (const glyph of glyphs) {
    if (typeof glyph === 'number') width -= (glyph * size) / 1000
    else {
      words += glyph.unicode
      width += (glyph.width * size) / 1000 + spacing
    }
  }
  return { words, width }
}

// pdf.js keeps a path as numbers: a letter for the step, then its places.
function pathPoints([path]: readonly Iterable<number>[]): readonly Place[] {
  const flat = Array.from(path as Iterable<number>)
  const points: Place[] = []
  for (let at = 0; at < flat.length; ) {
    const length = [2, 2, 6, 4, 0][flat[at] as number] as number
    points.push(...places(flat.slice(at + 1, at + 1 + length)))
    at += 1 + length
  }
  // A circle in four curves: its ends without the handles, and without the return to the first.
  if (points.length === 13) return [0, 3, 6, 9].map(index => points[index] as Place)
  return points
}

const identity: Matrix = [1, 0, 0, 1, 0, 0]

function times([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f]
}

function apply([a, b, c, d, e, f]: Matrix, [x, y]: Place): Place {
  return [a * x + c * y + e, b * x + d * y + f]
}

function onPaper({ view }: PDFPageProxy, [x, y]: Place): Place {
  return [(x * 25.4) / 72, (((view[3] as number) - y) * 25.4) / 72]
}

function shifted(drawn: Drawn, move: (place: Place) => Place): Drawn {
  return drawn.kind === 'shape'
    ? { ...drawn, points: drawn.points.map(move) }
    : { ...drawn, from: move(drawn.from) }
}

function numbers(text: string): readonly number[] {
  return Array.from(text.matchAll(/-?\d+(\.\d+)?/g), ([number]) => Number(number))
}

function places(flat: readonly number[]): readonly Place[] {
  return flat.flatMap((x, index) => (index % 2 === 0 ? [[x, flat[index + 1] as number] as const] : []))
}
