import type { PaperDocument } from '../../sheets/index.ts'
import { printable } from '../words.ts'

/** What the file says of itself in XMP. pdfkit would write the same, but doesn't escape a title's "&". */
export function metadata({ title, subject, date, language }: PaperDocument): string {
  const created = new Date(date ? Date.UTC(date.year, date.month - 1, date.day) : 0).toISOString()
  return `
<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<xmp:CreateDate>${created.slice(0, 19)}Z</xmp:CreateDate>
<xmp:CreatorTool>Crosstree</xmp:CreatorTool>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escaped(title)}</rdf:li></rdf:Alt></dc:title>
<dc:description><rdf:Alt><rdf:li xml:lang="x-default">${escaped(subject)}</rdf:li></rdf:Alt></dc:description>
<dc:language><rdf:Bag><rdf:li>${escaped(language)}</rdf:li></rdf:Bag></dc:language>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
<pdf:Producer>Crosstree</pdf:Producer>
</rdf:Description>
`
}

function escaped(words: string): string {
  const names: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' }
  return printable(words).replace(/[&<>]/g, character => names[character] as string)
}
