import { atMost, type Block, fitted, flow, type Piece, setLines, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { type Tagging, tagged } from '../tagged.ts'
import type { Ruler, Typeface } from '../typeface.ts'
import { live } from './page.ts'
import { black, leading, points, rule, type } from './type.ts'

/** The page's title, its H2, on the baseline of all titles; a longer one is set smaller, and cut only at the last. */
export function pageTitle(title: string, ruler: Ruler, baseline: number = live.titleBaseline): Block {
  const fit = fitted(
    title,
    [type.title, type.titleLong, { ...type.title, size: 16 }, { ...type.title, size: 13 }],
    live.width,
    ruler,
  )
  const mark = lettered(ruler, { x: 0, y: baseline }, fit.words, fit.type, black)
  return { marks: [tagged('H2', [mark], fit.isCut ? { actual: title } : {})], bottom: baseline, lines: 1 }
}

/** 'Line register, continued': the title of a page that goes on. It is no heading of its own. */
export function continuedTitle(title: string, ruler: Ruler): Block {
  const baseline = live.titleBaseline - 4
  const fit = fitted(`${title}, continued`, [type.titleContinued, type.subtitle], live.width, ruler)
  const mark = lettered(ruler, { x: 0, y: baseline }, fit.words, fit.type, black)
  return { marks: [tagged('Artifact', [mark])], bottom: baseline, lines: 1 }
}

/** A section's heading, an H3 in small capitals, over a rule. `y` is its baseline. */
export function sectionHead(
  heading: string,
  y: number,
  ruler: Ruler,
  { x = 0, width = live.width as number, type: face = type.section as Typeface } = {},
): Block {
  const fit = fitted(heading, [face, { ...face, size: 9.5 }, { ...face, size: 8, tracking: 0 }], width, ruler)
  const mark = lettered(ruler, { x, y }, fit.words, fit.type, black)
  const below = y + points(3.4)
  return {
    marks: [
      tagged('H3', [mark], fit.isCut ? { actual: heading } : {}),
      level(x, x + width, below, rule.section),
    ],
    bottom: below,
    lines: 1,
  }
}

/** A paragraph of running text, ragged right: one P. `y` is its first baseline. */
export function paragraph(
  pieces: readonly Piece[],
  y: number,
  ruler: Ruler,
  {
    x = 0,
    measure = live.width as number,
    led = leading.text as number,
    most = Number.POSITIVE_INFINITY,
    tagging = {} as Tagging,
  } = {},
): Block {
  const lines = atMost(most, flow(pieces, measure, ruler), measure, ruler)
  const set = setLines(lines, { x, y }, led, ruler)
  return { ...set, marks: set.lines === 0 ? [] : [tagged('P', set.marks, tagging)] }
}

/** The line or two in italics under a title. */
export function subtitle(text: string, y: number, ruler: Ruler, face: Typeface = type.subtitle): Block {
  return paragraph([words(text, face)], y, ruler, { led: leading.subtitle })
}

/** A level rule. */
export function level(from: number, to: number, y: number, width: number): Mark {
  return {
    kind: 'line',
    points: [
      { x: from, y },
      { x: to, y },
    ],
    pen: { ink: black, width },
  }
}

/** An upright rule. */
export function upright(x: number, from: number, to: number, width: number): Mark {
  return {
    kind: 'line',
    points: [
      { x, y: from },
      { x, y: to },
    ],
    pen: { ink: black, width },
  }
}

/** A solid block. */
export function box(x: number, y: number, width: number, height: number): Mark {
  return {
    kind: 'line',
    points: [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ],
    closed: true,
    fill: { ink: black },
  }
}
