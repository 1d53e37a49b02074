export type { Imprint, PaperFamily } from './imprint.ts'
export { paper } from './imprint.ts'
export type {
  Fill,
  Group,
  Mark,
  OutlineEntry,
  PaperDocument,
  PathStep,
  Pen,
  Point,
  Sheet,
  Tag,
  TextMark,
} from './sheet.ts'
export type { StyleName } from './style.ts'
export type { Coverage, Face, Ruler, Typeface } from './typeface.ts'
export { capHeight, millimetresPerPoint } from './typeface.ts'
