import type { Found } from '../../findings/index.ts'
import type { Line, LineFunction } from '../../rig/index.ts'
import { type Block, type Piece, words } from '../flow.ts'
import { functionMark, functionsInOrder } from '../function-mark.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import { capHeight, type Ruler } from '../typeface.ts'
import { actionBlock, actWord, type MarkedAct } from './action-mark.ts'
import { addressesOf, addressInFull, addressMarks, addressWords, type PinAddress } from './address.ts'
import type { Book } from './book.ts'
import { live, type PageBody } from './page.ts'
import { pageKey } from './page-key.ts'
import { pageTitle, paragraph, sectionHead } from './page-parts.ts'
import { type SideMark, sideMark } from './side-mark.ts'
import { inPairs } from './station-lines.ts'
import { black, leading, type } from './type.ts'

const title = 'How to use this book'

/** The page that says how the book is read: actions, deeds, sides, addresses, orders. Always one page. */
export function howToUsePages(book: Book): Found<readonly PageBody[]> {
  const { ruler } = book.setting
  const head = pageTitle(title, ruler)
  const opening = paragraph(openingWords, head.bottom + 7.3, ruler)
  const actions = actionSection(opening.bottom + 8.1, ruler)
  const deeds = deedSection(actions.bottom + 8.4, ruler)
  const sides = sideSection(deeds.bottom + 7, ruler)
  const pins = pinSection(book, sides.bottom + 7)
  const orders = orderSection(book, pins.bottom + 7.6)
  const marks = [head, opening, actions, deeds, sides, pins, orders].flatMap(block => block.marks)
  return { value: [{ ...pageBody, marks }], findings: [] }
}

const pageBody = {
  key: pageKey.use,
  title,
  section: title,
  description:
    'The five actions, the eight deeds, the marks of the sides, how a pin is written and how orders run.',
  bookmarks: [{ level: 1, title }],
  leaf: 'verso',
} as const

const openingWords: readonly Piece[] = [
  words(
    'Where each of your lines is, what it does, and which line must give way when it is hauled. ',
    type.text,
  ),
  words('It is made for a wet hand and a poor light: ', type.text),
  words('find the sail, find the phase, find the pin.', type.textStrong),
]

const actionMeanings: readonly (readonly [MarkedAct, string])[] = [
  ['haul', 'Pull in, on the word.'],
  ['ease', 'Pay out under control, a turn on the pin.'],
  ['let go', 'Cast off and see it run.'],
  ['hold', 'Keep still: do not give, do not take.'],
  ['tend', 'Keep in hand: take or give as it asks.'],
]

function actionSection(y: number, ruler: Ruler): Block {
  const head = sectionHead('What to do with a line', y, ruler)
  const pitch = 6.1
  const rows = actionMeanings.map(([act, meaning], index) => {
    const top = head.bottom + 2.6 + index * pitch
    const block = actionBlock(act, { x: 0, y: top }, { width: 25.2, height: 5 }, type.actionWord, ruler)
    const told = lettered(ruler, { x: 29.2, y: top + 3.5 }, meaning, type.text, black)
    return tagged('LI', [tagged('Lbl', block, { actual: `${actWord[act]}: ` }), tagged('LBody', [told])])
  })
  const bottom = head.bottom + 2.6 + actionMeanings.length * pitch - (pitch - 5)
  return { marks: [...head.marks, tagged('L', rows)], bottom, lines: 1 }
}

const deedWords: Readonly<Record<LineFunction, string>> = {
  hoists: 'hoists',
  extends: 'extends',
  lowers: 'lowers',
  clews: 'clews up',
  gathers: 'gathers',
  reefs: 'reefs',
  turns: 'turns',
  keeps: 'keeps',
}

function deedSection(y: number, ruler: Ruler): Block {
  const head = sectionHead('What a line does', y, ruler)
  const at = (index: number) => ({
    x: (index % 4) * 29.6,
    y: head.bottom + 5.6 + Math.floor(index / 4) * 5.4,
  })
  const cells = functionsInOrder.map((deed, index) => {
    const { x, y: base } = at(index)
    const mark = functionMark(deed, { x: x + 1.9, y: base - capHeight(type.text) / 2 }, 1.55, black)
    const told = lettered(ruler, { x: x + 5.6, y: base }, deedWords[deed], type.text, black)
    return tagged('LI', [tagged('LBody', [tagged('Artifact', mark), told])])
  })
  return { marks: [...head.marks, tagged('L', cells)], bottom: head.bottom + 11, lines: 2 }
}

const sideMeanings: readonly (readonly [SideMark, string, string])[] = [
  ['P', 'P', 'port, always on her left'],
  ['W', 'W', 'weather, the wind’s side'],
  ['S', 'S', 'starboard, always on her right'],
  ['L', 'L', 'lee, the side away from it'],
]

function sideSection(y: number, ruler: Ruler): Block {
  const head = sectionHead('Whose side', y, ruler)
  const cells = sideMeanings.map(([side, letter, meaning], index) => {
    const x = index % 2 === 0 ? 0 : 59
    const base = head.bottom + 5.8 + Math.floor(index / 2) * 6
    const told = lettered(ruler, { x: x + 7.4, y: base }, meaning, type.text, black)
    return tagged('LI', [
      tagged('Lbl', sideMark(side, { x, y: base }, 11.5, ruler), { actual: `${letter}: ` }),
      tagged('LBody', [told]),
    ])
  })
  const note = paragraph(
    [words('P and S never change. W and L change sides when she goes about.', type.textItalic)],
    head.bottom + 17.4,
    ruler,
  )
  return { marks: [...head.marks, tagged('L', cells), ...note.marks], bottom: note.bottom, lines: 3 }
}

interface Example {
  readonly address: PinAddress
  readonly meaning: string
}

function pinSection(book: Book, y: number): Block {
  const { ruler } = book.setting
  const examples = pinExamples(book)
  if (examples.length === 0) return { marks: [], bottom: y - 7, lines: 0 }
  const head = sectionHead('How a pin is written', y, ruler)
  const marks: Mark[] = [...head.marks]
  const rows: Mark[] = []
  let bottom = head.bottom
  for (const { address, meaning } of examples) {
    const base = bottom + 6.2
    const told = paragraph([words(meaning, type.text)], base, ruler, {
      x: 27,
      measure: live.width - 27,
      led: 4.3,
    })
    const face = { ...type.registerStrong, size: 13 }
    const label = tagged('Lbl', addressMarks(address, { x: 0, y: base }, face, ruler), {
      actual: `${addressWords(address)}: `,
    })
    rows.push(tagged('LI', [label, tagged('LBody', told.marks)]))
    bottom = told.bottom
  }
  return { marks: [...marks, tagged('L', rows)], bottom, lines: examples.length }
}

// Taken from the station's own lines, so that the first addresses a trainee reads are ones to stand before.
function pinExamples(book: Book): readonly Example[] {
  const own = inPairs([...book.lines.own, ...book.lines.lent]).map(pair => addressesOf(pair, book.rig))
  const all = own.length > 0 ? own : inPairs(book.rig.lines).map(pair => addressesOf(pair, book.rig))
  const single = all.find(([first, more]) => first?.sides.length === 1 && !more)?.[0]
  const pair = all.find(([first]) => first?.sides.length === 2)?.[0]
  const brace = braceAddress([...book.lines.lent, ...book.lines.own], book) ?? pair
  const plain = all.find(([first]) => first?.sides.length === 0)?.[0]
  return [
    single && { address: single, meaning: `${addressInFull(single)}. Pin 1 is the foremost; count aft.` },
    pair && { address: pair, meaning: 'the same place on both sides: one line of a pair on each.' },
    brace && {
      address: { ...brace, sides: ['L'] as const },
      meaning: `${brace.railName}, lee side${brace.pins === undefined ? '' : `, pin ${brace.pins}`}, whichever side that is.`,
    },
    plain && !(single && pair && brace) && { address: plain, meaning: `${addressInFull(plain)}.` },
  ].filter(example => example !== undefined && example !== false)
}

function braceAddress(lines: readonly Line[], book: Book): PinAddress | undefined {
  return inPairs(lines.filter(line => line.function === 'turns'))
    .map(pair => addressesOf(pair, book.rig))
    .find(([first]) => first?.sides.length === 2)?.[0]
}

function orderSection(book: Book, y: number): Block {
  const { ruler } = book.setting
  const head = sectionHead('Orders, and learning them', y, ruler)
  const learning =
    book.station.rails.length > 0 ? ' To learn the pins, fill the blank chart on days 1, 3, 7 and 28.' : ''
  const text = paragraph(
    [
      words('An order stands “thus.” The leader of the station ', type.text),
      words('answers', type.textItalic),
      words(' it, the hands act, and the leader ', type.text),
      words('reports', type.textItalic),
      words(
        ' when “done when” is met. No phase begins before that report. Anyone may call “Hold.” ',
        type.text,
      ),
      words('A station’s name in ', type.text),
      words('italics', type.textItalic),
      words(` after a line: that station works it.${learning}`, type.text),
    ],
    head.bottom + 4.9,
    ruler,
    { led: leading.text },
  )
  return { marks: [...head.marks, ...text.marks], bottom: text.bottom, lines: text.lines }
}
