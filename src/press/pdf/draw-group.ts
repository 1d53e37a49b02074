import type { Group, Mark, Tag } from '../../sheets/index.ts'
import { boundsOf } from '../bounds.ts'
import { round } from '../round.ts'
import { printable } from '../words.ts'
import { drawMark, type Press, tracePath } from './draw-mark.ts'
import type { PageBox } from './element.ts'
import { pointsPerMillimetre } from './page-scale.ts'
import { translucent } from './translucent.ts'

/** Draws a group: its tag around its link around its place, its window and its own opacity. */
export function drawGroup(press: Press, group: Group): void {
  const { tag, goTo } = group
  const destination = goTo === undefined ? undefined : press.destinations.get(goTo)
  if (destination === undefined || tag?.role === 'Artifact' || (!tag && press.tags.isArtifact())) {
    // A link that leads nowhere is no link.
    tagged(press, group, tag?.role === 'Link' ? { ...tag, role: 'Span' } : tag, () =>
      drawPlaced(press, group),
    )
    return
  }
  const isLink = tag?.role === 'Link'
  const link: Tag = { role: 'Link', ...(isLink ? tag : {}), alt: (isLink && tag.alt) || wordsOf(group.marks) }
  const linked = () => tagged(press, group, link, () => drawLinked(press, group, link, destination))
  if (isLink) linked()
  else tagged(press, group, tag, linked)
}

function drawLinked(press: Press, group: Group, link: Tag, destination: string): void {
  const { pdf, tags } = press
  drawPlaced(press, group)
  const box = boundsOf([group])
  const structParent = tags.current()
  if (!box || !structParent) return
  tags.pause()
  const [width, height] = [round(box.right - box.left), round(box.bottom - box.top)]
  pdf.goTo(round(box.left), round(box.top), width, height, destination, {
    structParent,
    Contents: new String(printable(link.alt ?? '')),
  })
}

function tagged(press: Press, group: Group, tag: Tag | undefined, inside: () => void): void {
  if (tag) press.tags.within(tag, () => pageBox(press, group), inside)
  else inside()
}

function drawPlaced(press: Press, group: Group): void {
  const { pdf, tags, origin } = press
  const { offset, clip } = group
  if (!offset && !clip) {
    drawMarks(press, group)
    return
  }
  tags.pause()
  pdf.save()
  if (offset) pdf.transform(1, 0, 0, 1, round(offset.x), round(offset.y))
  if (clip) {
    tracePath(pdf, clip)
    pdf.clip()
  }
  const moved = offset ? { x: origin.x + offset.x, y: origin.y + offset.y } : origin
  drawMarks({ ...press, origin: moved }, group)
  tags.pause()
  pdf.restore()
}

function drawMarks(press: Press, { marks, opacity = 1 }: Group): void {
  const draw = () => {
    for (const mark of marks) drawMark(press, mark)
  }
  const box = opacity === 1 ? undefined : boundsOf(marks)
  if (box) press.tags.words(() => translucent(press.pdf, round(opacity), box, draw))
  else draw()
}

function pageBox({ origin }: Press, group: Group): PageBox | undefined {
  const box = boundsOf([group])
  if (!box) return undefined
  const across = (x: number) => round((origin.x + x) * pointsPerMillimetre)
  const down = (y: number) => round((origin.y + y) * pointsPerMillimetre)
  return [across(box.left), down(box.top), across(box.right), down(box.bottom)]
}

function wordsOf(marks: readonly Mark[]): string {
  const words = marks.map(mark => {
    if (mark.kind === 'text') return mark.words.trim()
    return mark.kind === 'group' ? wordsOf(mark.marks) : ''
  })
  return words.filter(text => text !== '').join(' ')
}
