import type { Bounds } from '../bounds.ts'
import { round } from '../round.ts'
import type { Pdf } from './pdfkit.ts'

/**
 * Draws marks as one translucent thing, so that they hide one another and only together let through what
 * lies behind. PDF knows that as a transparency group; pdfkit doesn't, so what it draws is led into a form
 * of our own for as long as it takes.
 */
export function translucent(pdf: Pdf, opacity: number, box: Bounds, draw: () => void): void {
  const { page } = pdf
  const outer = page.content
  const form = pdf.ref({
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [box.left, box.top, box.right, box.bottom].map(round),
    Group: { Type: 'Group', S: 'Transparency' },
    Resources: page.resources,
  })
  page.content = form
  draw()
  page.content = outer
  form.end()
  const name = `T${form.id}`
  page.xobjects[name] = form
  pdf.save().fillOpacity(opacity).strokeOpacity(opacity).addContent(`/${name} Do`).restore()
}
