import type { Mark, Sheet, Tag, TextMark } from '../../src/sheets/index.ts'
import { capHeight } from '../../src/sheets/index.ts'

/** A text mark at its place on the page, with the tags it stands in, outermost first. */
export interface PlacedText {
  readonly words: string
  readonly size: number
  readonly box: {
    readonly left: number
    readonly top: number
    readonly right: number
    readonly bottom: number
  }
  readonly turned: boolean
  readonly tags: readonly Tag[]
}

/** Every text of a page, in drawing order. */
export function placedTexts({ marks }: Sheet): readonly PlacedText[] {
  return gather(marks, { x: 0, y: 0 }, [])
}

function gather(
  marks: readonly Mark[],
  by: { readonly x: number; readonly y: number },
  tags: readonly Tag[],
): readonly PlacedText[] {
  return marks.flatMap(mark => {
    if (mark.kind === 'text') return [placed(mark, by, tags)]
    if (mark.kind !== 'group') return []
    const offset = mark.offset ?? { x: 0, y: 0 }
    return gather(
      mark.marks,
      { x: by.x + offset.x, y: by.y + offset.y },
      mark.tag ? [...tags, mark.tag] : tags,
    )
  })
}

// The box of the letters: as wide as the ruler says less a space at the end, as high as capitals.
function placed(
  mark: TextMark,
  by: { readonly x: number; readonly y: number },
  tags: readonly Tag[],
): PlacedText {
  const isTurned = mark.turn === 90
  const trailing = mark.words.endsWith(' ') ? mark.type.size * 0.07 : 0
  const width = Math.max(0, mark.width - trailing)
  const height = capHeight(mark.type)
  const start = mark.anchor === 'middle' ? -mark.width / 2 : mark.anchor === 'end' ? -mark.width : 0
  const x = by.x + mark.at.x
  const y = by.y + mark.at.y
  const box = isTurned
    ? { left: x - height, right: x, top: y - start - width, bottom: y - start }
    : { left: x + start, right: x + start + width, top: y - height, bottom: y }
  return { words: mark.words, size: mark.type.size, box, turned: isTurned, tags }
}

/** Pairs of texts whose letters meet. */
export function meetingTexts(texts: readonly PlacedText[]): readonly string[] {
  const slack = 0.15
  return texts.flatMap((a, index) =>
    texts
      .slice(index + 1)
      .filter(
        b =>
          a.box.left < b.box.right - slack &&
          b.box.left < a.box.right - slack &&
          a.box.top < b.box.bottom - slack &&
          b.box.top < a.box.bottom - slack,
      )
      .map(b => `"${a.words}" on "${b.words}"`),
  )
}
