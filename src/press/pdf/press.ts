import type { Face, Point, TextMark } from '../../sheets/index.ts'
import type { EmbeddedFace, Fonts, PdfFonts } from '../fonts/index.ts'
import type { Font, Pdf } from './pdfkit.ts'
import type { Structure } from './structure.ts'

/** What every mark is drawn with. */
export interface Press {
  readonly pdf: Pdf
  readonly fonts: Fonts
  readonly pdfFonts: PdfFonts
  readonly faces: ReadonlyMap<Face, SetFace>
  readonly tags: Structure
  /** The name of each page's destination, by the page's id. */
  readonly destinations: ReadonlyMap<string, string>
  /** Texts of the page that the next follows without a gap. */
  readonly runningOn: ReadonlySet<TextMark>
  /** The ink as it is printed, red, green and blue from nought to one: that of the paper is left bare. */
  readonly ink: (ink: string) => string
  /** How far the groups around have moved what is drawn, in millimetres. */
  readonly origin: Point
}

/** A face of the document, and how words are set in it. */
export interface SetFace {
  readonly font: Font
  readonly set: EmbeddedFace['set']
}
