import type { Sheet } from '../sheet.ts'
import { pageId } from '../tagged.ts'
import type { Book } from './book.ts'
import { runningFoot, runningHead } from './furniture.ts'
import { formats, leafOf, liveLeft, type PageBody } from './page.ts'

/** A page body on its paper, with head and foot, once its number is known. */
export function bound(body: PageBody, page: number, of: number, book: Book): Sheet {
  const format = formats[book.setting.paper]
  const leaf = leafOf(page)
  const furniture =
    body.section === undefined
      ? []
      : [...runningHead(book, body.section, leaf), ...runningFoot(book, page, of, leaf)]
  const offset = { x: liveLeft(format, leaf), y: format.drop }
  return {
    id: pageId(page),
    title: body.title,
    description: body.description,
    width: format.width,
    height: format.height,
    ground: undefined,
    marks: [{ kind: 'group', marks: [...furniture, ...body.marks], offset }],
  }
}
