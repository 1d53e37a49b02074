// Writes files with nothing but pdfkit: so many documents, pages and texts, in two faces, untagged, and no layout at
// all. What is left of the time for papers is ours. Run in a process of its own.
import { readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { create } from 'fontkit'
import PDFDocument from 'pdfkit'

const [into, ...counts] = process.argv.slice(2)
const [documents, pages, texts] = counts.map(Number)
const require = createRequire(import.meta.url)
const faces = ['spectral/500Medium/Spectral_500Medium', 'fira-sans-condensed/400Regular/FiraSansCondensed_400Regular']
const fonts = faces.map(face => create(readFileSync(require.resolve(`@expo-google-fonts/${face}.ttf`))))
const words = ['Fore upper topsail clewline', 'lee sheet', 'FR', '21', 'done when the yard is in its lifts', 'hands']
const shareOf = (whole, index, of) => Math.floor((whole * (index + 1)) / of) - Math.floor((whole * index) / of)
let set = 0
for (let document = 0; document < documents; document++) {
  const pdf = new PDFDocument({ font: null, autoFirstPage: false })
  const chunks = []
  pdf.on('data', chunk => chunks.push(chunk))
  const done = new Promise(resolve => pdf.on('end', resolve))
  fonts.forEach((font, index) => pdf.registerFont(`face ${index}`, font))
  for (let page = shareOf(pages, document, documents); page > 0; page--) {
    pdf.addPage({ size: 'A5', margin: 0 })
    for (let text = shareOf(texts, set++, pages); text > 0; text--) {
      pdf.font(`face ${text % 2}`).fontSize(10)
      pdf.text(words[text % words.length], 20 + (text % 3) * 120, 20 + (text % 50) * 11, { lineBreak: false })
    }
  }
  pdf.end()
  await done
  writeFileSync(join(into, `${document}.pdf`), Buffer.concat(chunks))
}
