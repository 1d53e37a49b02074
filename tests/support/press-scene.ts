import type { Fonts } from '../../src/press/fonts/index.ts'
import type {
  Group,
  Mark,
  PaperDocument,
  Point,
  Sheet,
  Tag,
  TextMark,
  Typeface,
} from '../../src/sheets/index.ts'

export const ink = '#1B1F24'

/** Words laid out with the fonts' own ruler. */
export function words(
  { ruler }: Pick<Fonts, 'ruler'>,
  text: string,
  at: Point,
  rest: Partial<TextMark> = {},
): TextMark {
  const type: Typeface = rest.type ?? { face: 'Fira Sans Condensed', size: 9 }
  return { kind: 'text', at, words: text, ink, ...rest, type, width: ruler(text, type) }
}

export function tagged(tag: Tag, ...marks: readonly Mark[]): Group {
  return { kind: 'group', tag, marks }
}

/** An A6 sheet with every kind of mark, and every way each can be drawn. */
export function everyMark(fonts: Fonts): Sheet {
  return {
    id: 'every-mark',
    title: 'Every mark & every pen',
    description: 'A frame, a sail, lines and names in all the ways they can be drawn.',
    width: 148,
    height: 105,
    ground: '#FCFAF5',
    marks: [frame, sail, ring, chevron, ghosts, ...lettering(fonts)],
  }
}

const frame: Mark = {
  kind: 'line',
  id: 'frame',
  points: [
    { x: 7, y: 7 },
    { x: 141, y: 7 },
    { x: 141, y: 98 },
    { x: 7, y: 98 },
  ],
  closed: true,
  pen: { ink, width: 0.5 },
}

const sail: Group = {
  kind: 'group',
  id: 'sail.fore-upper-topsail',
  title: 'fore upper topsail',
  marks: [
    {
      kind: 'path',
      steps: [['M', 20, 20], ['C', 30, 14.123456, 40, 25, 50, 20], ['L', 50, 40], ['Z']],
      pen: { ink: '#0B5688', width: 0.35, dash: [1.6, 0.55] },
      fill: { ink: '#F5ECD8', opacity: 0.66 },
    },
  ],
}

const ring: Mark = {
  kind: 'circle',
  id: 'pin.FR-P.21',
  at: { x: 62, y: 30 },
  radius: 5,
  pen: { ink: '#A34A0A', width: 0.7 },
  fill: { ink: '#DCE4E6' },
}

const chevron: Mark = {
  kind: 'line',
  id: 'line.fore.course.tack.port',
  points: [
    { x: 115, y: 20 },
    { x: 130, y: 30 },
    { x: 118, y: 40 },
  ],
  pen: { ink, width: 2, cap: 'round', join: 'round', opacity: 0.4 },
}

// Two discs moved, cut at a window, and translucent as one: neither shows through the other.
const ghosts: Group = {
  kind: 'group',
  id: 'ghosts',
  offset: { x: 5, y: 3 },
  clip: [['M', 60, 74], ['L', 92, 74], ['L', 92, 84], ['L', 60, 84], ['Z']],
  opacity: 0.5,
  marks: [
    { kind: 'circle', at: { x: 70, y: 82 }, radius: 9, fill: { ink: '#8A4B2A' } },
    { kind: 'circle', at: { x: 79, y: 82 }, radius: 9, fill: { ink: '#0B5688' } },
  ],
}

function lettering(fonts: Fonts): readonly Mark[] {
  return [
    words(
      fonts,
      'Harrow Tansy',
      { x: 74, y: 56 },
      { type: { face: 'Spectral SC Medium', size: 27, tracking: 0.09 }, anchor: 'middle' },
    ),
    words(
      fonts,
      'Office waffle, AVATAR & <To> 41′ 6″ ½',
      { x: 14, y: 66 },
      { type: { face: 'Spectral Italic', size: 12 } },
    ),
    words(
      fonts,
      'at the end',
      { x: 134, y: 66 },
      { type: { face: 'Spectral Medium Italic', size: 12 }, anchor: 'end' },
    ),
    words(
      fonts,
      '0123456789 11:11',
      { x: 14, y: 76 },
      { type: { face: 'Fira Sans Condensed SemiBold', size: 12, tabular: true } },
    ),
    words(
      fonts,
      'Fore upper topsail',
      { x: 112, y: 92 },
      { id: 'name.upright', turn: 90, halo: { width: 0.9, ink: '#FCFAF5' } },
    ),
    words(fonts, 'slanted, end', { x: 134, y: 76 }, { turn: 30, anchor: 'end' }),
  ]
}

/** Two pages of a book: a heading, a table that goes on overleaf, a list, a figure and a link. */
export function taggedBook(fonts: Fonts): PaperDocument {
  const at = (x: number, y: number): Point => ({ x, y })
  const cell = (role: 'TH' | 'TD', text: string, x: number, y: number, rest: Partial<Tag> = {}) =>
    tagged({ role, ...rest }, words(fonts, text, at(x, y)))
  const row = (line: string, pin: string, y: number) =>
    tagged({ role: 'TR' }, cell('TH', pin, 15, y, { scope: 'Row' }), cell('TD', line, 40, y))
  const rule: Mark = { kind: 'line', points: [at(15, 51), at(130, 51)], pen: { ink, width: 0.18 } }
  const first: Sheet = {
    id: 'page-1',
    title: 'Line register',
    description: 'The first page of the register.',
    width: 148,
    height: 210,
    ground: undefined,
    marks: [
      words(fonts, 'running head', at(15, 10)),
      tagged({ role: 'H1' }, words(fonts, 'Line register', at(15, 28))),
      tagged(
        { role: 'P' },
        words(fonts, 'Pin ', at(15, 38)),
        tagged(
          { role: 'Span', actual: 'FR-P 21', expansion: 'fore rail, port, pin 21' },
          words(fonts, 'FR[P]21', at(22, 38)),
        ),
        words(fonts, ' is free.', at(40, 38)),
      ),
      tagged(
        { role: 'Table', key: 'register' },
        tagged(
          { role: 'THead', key: 'register head' },
          tagged(
            { role: 'TR' },
            cell('TH', 'where', 15, 50, { scope: 'Column' }),
            cell('TH', 'line and what it does', 40, 50, { scope: 'Column', columns: 2 }),
          ),
        ),
        rule,
        tagged({ role: 'TBody', key: 'register body' }, row('clewline', 'FR-P 1', 56)),
      ),
      { kind: 'group', tag: { role: 'P' }, marks: [] },
      { kind: 'group', tag: { role: 'P' }, goTo: 'page-2', marks: [words(fonts, 'page ii', at(15, 70))] },
    ],
  }
  const second: Sheet = {
    ...first,
    id: 'page-2',
    title: 'Line register, continued',
    description: 'The second page of the register.',
    marks: [
      tagged({ role: 'Artifact' }, tagged({ role: 'P' }, words(fonts, 'where line', at(15, 20)))),
      tagged(
        { role: 'Table', key: 'register' },
        tagged({ role: 'TBody', key: 'register body' }, row('buntline', 'FR-P 2', 26)),
      ),
      {
        kind: 'group',
        offset: at(10, 40),
        marks: [
          tagged(
            { role: 'Figure', alt: 'Fore rail, port: two pins.' },
            { kind: 'circle', at: at(10, 10), radius: 2, fill: { ink } },
            words(fonts, '1', at(20, 10), { halo: { width: 0.9, ink: '#FFFFFF' } }),
          ),
        ],
      },
      tagged(
        { role: 'L' },
        tagged(
          { role: 'LI' },
          tagged({ role: 'Lbl' }, words(fonts, '1 ', at(15, 80))),
          tagged({ role: 'LBody' }, words(fonts, 'Haul away.', at(20, 80))),
        ),
      ),
      {
        kind: 'group',
        tag: { role: 'Link', alt: 'Back to the register' },
        goTo: 'page-1',
        marks: [words(fonts, 'page i', at(15, 90))],
      },
    ],
  }
  return {
    id: 'book',
    title: 'Register & <rules>',
    language: 'en',
    subject: 'A table over two pages',
    pages: [first, second],
    pageLabels: ['i', 'ii'],
    outline: [
      { title: 'Line register', page: 0, children: [{ title: 'Overleaf', page: 1, children: [] }] },
      { title: 'The rail', page: 1, children: [] },
    ],
    date: { year: 2027, month: 3, day: 14 },
  }
}

/** One sheet as a document. */
export function alone(sheet: Sheet): PaperDocument {
  return {
    id: sheet.id,
    title: sheet.title,
    language: 'en',
    subject: sheet.description,
    pages: [sheet],
    pageLabels: undefined,
    outline: [],
    date: { year: 2027, month: 3, day: 14 },
  }
}
