import type { PaperFamily } from '../imprint.ts'
import { paper } from '../imprint.ts'

/** The fixed places of a strip's sheet, landscape, in millimetres. */
export interface StripFrame {
  readonly width: number
  readonly height: number
  readonly left: number
  readonly right: number
  readonly top: number
  readonly foot: number
  /** Under the title. */
  readonly headRule: number
  /** Under the words bow and stern; all that hangs on the rail is measured from here. */
  readonly endsRule: number
  /** Above the imprint. */
  readonly footRule: number
  /** Between these stand the columns of the pins; before them the names of the rows. */
  readonly columnsLeft: number
  readonly columnsRight: number
}

const margin = 7

/** The frame for a family of paper: A4 or Letter, lying. */
export function stripFrame(family: PaperFamily): StripFrame {
  const { width: height, height: width } = paper[family]
  return {
    width,
    height,
    left: margin,
    right: width - margin,
    top: margin,
    foot: height - margin,
    headRule: 25.4,
    endsRule: 34.3,
    footRule: height - 11.2,
    columnsLeft: margin + 10.5,
    columnsRight: width - margin - 2.2,
  }
}
