import type { Group, Mark, Tag } from '../../sheets/index.ts'
import { boundsOf } from '../bounds.ts'
import { round } from '../round.ts'
import { printable } from '../words.ts'
import type { PageBox } from './element.ts'
import { pointsPerMillimetre } from './page-scale.ts'
import type { Press } from './press.ts'
import { tracedPath } from './trace.ts'
import { translucent } from './translucent.ts'

/** Draws the marks of a group; the press is passed on because the group may have moved them. */
type Inside = (press: Press) => void

/** Draws a group: its tag around its link around its place, its window, its opacity and the marks inside. */
export function drawGroup(press: Press, group: Group, inside: Inside): void {
  const { tag, goTo } = group
  const destination = goTo === undefined ? undefined : press.destinations.get(goTo)
  const draw = () => drawPlaced(press, group, inside)
  if (destination === undefined || press.tags.isArtifact(tag)) {
    // A link that leads nowhere is no link.
    tagged(press, group, tag?.role === 'Link' ? { ...tag, role: 'Span' } : tag, draw)
    return
  }
  const own = tag?.role === 'Link' ? tag : undefined
  const link: Tag = { ...own, role: 'Link', alt: own?.alt || wordsOf(group.marks) }
  const drawLink = () =>
    tagged(press, group, link, () => {
      draw()
      annotate(press, group, link, destination)
    })
  if (own) drawLink()
  else tagged(press, group, tag, drawLink)
}

function tagged(press: Press, group: Group, tag: Tag | undefined, inside: () => void): void {
  if (tag) press.tags.within(tag, () => pageBox(press, group), inside)
  else inside()
}

function annotate({ pdf, tags }: Press, group: Group, { alt = '' }: Tag, destination: string): void {
  const box = boundsOf([group])
  const structParent = tags.current()
  if (!box || !structParent) return
  tags.pause()
  const [width, height] = [round(box.right - box.left), round(box.bottom - box.top)]
  const Contents = new String(printable(alt))
  pdf.goTo(round(box.left), round(box.top), width, height, destination, { structParent, Contents })
}

function drawPlaced(press: Press, group: Group, inside: Inside): void {
  const { pdf, tags, origin } = press
  const { offset, clip } = group
  if (!offset && !clip) {
    drawSeen(press, group, inside)
    return
  }
  tags.pause()
  pdf.save()
  if (offset) pdf.transform(1, 0, 0, 1, round(offset.x), round(offset.y))
  if (clip) {
    pdf.addContent(`${tracedPath(clip)}\nW n`)
  }
  const moved = offset ? { x: origin.x + offset.x, y: origin.y + offset.y } : origin
  drawSeen({ ...press, origin: moved }, group, inside)
  tags.pause()
  pdf.restore()
}

function drawSeen(press: Press, { marks, opacity = 1 }: Group, inside: Inside): void {
  const box = opacity === 1 ? undefined : boundsOf(marks)
  if (box) press.tags.words(() => translucent(press.pdf, round(opacity), box, () => inside(press)))
  else inside(press)
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
