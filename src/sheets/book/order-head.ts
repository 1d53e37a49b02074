import type { Order } from '../../evolve/index.ts'
import type { Block } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark, Point } from '../sheet.ts'
import { artifact } from '../tagged.ts'
import { capHeight, type Ruler } from '../typeface.ts'
import { actionBlock, actionMark } from './action-mark.ts'
import { across, type OrderSetting } from './order-layout.ts'
import { pageTitle, paragraph } from './page-parts.ts'
import { briefStateWords, stateWords } from './state-words.ts'
import { tackKey } from './tack-key.ts'
import { black, type, white } from './type.ts'

/**
 * The head of a working order: its title, the state and the hands, the key for both tacks, and the two bars. A
 * page that goes on with an order has no state to tell again.
 */
export function orderHead(order: Order | undefined, title: string, set: OrderSetting): Block {
  const { ruler } = set.book.setting
  const { title: baseline, key: room } = set.pace
  const heading = pageTitle(title, ruler, baseline)
  const state = stateAt(baseline + 5.6, order, set)
  const top = (state.lines === 0 ? baseline : state.bottom) + room
  const key = tackKey(top, ruler)
  const bars = barsAt(key.bottom + room - 0.6, ruler)
  return {
    marks: [...heading.marks, ...state.marks, ...key.marks, ...bars.marks],
    bottom: bars.bottom,
    lines: 1,
  }
}

function stateAt(y: number, order: Order | undefined, set: OrderSetting): Block {
  const { ruler } = set.book.setting
  const words = order ? (set.isCondensed ? briefStateWords : stateWords)(order, set.book) : []
  return paragraph(words, y, ruler, { most: set.mostLines })
}

// The bars head the two columns for the eye; every list says its action to those who listen.
function barsAt(y: number, ruler: Ruler): Block {
  const height = 4.65
  const size = { width: 52, height }
  const baseline = y + height / 2 + capHeight(type.working) / 2
  const word = (
    x: number,
    text: string,
    ink: string,
    anchor: 'start' | 'end',
    face = type.working as typeof type.working | typeof type.workingOthers,
  ) => lettered(ruler, { x, y: baseline }, text, face, ink, { anchor })
  const marks = [
    ...actionBlock('haul', { x: across.text, y }, size, type.actionWord, ruler),
    word(across.haul.right, 'hands', white, 'end'),
    ...actionBlock('ease', { x: 66, y }, size, type.actionWord, ruler),
    ...orLetGo({ x: across.right - 1.5, y: y + height / 2 }, ruler),
  ]
  return { marks: [artifact(marks)], bottom: y + height, lines: 1 }
}

function orLetGo(right: Point, ruler: Ruler): readonly Mark[] {
  const baseline = right.y + capHeight(type.actionWord) / 2
  const word = lettered(ruler, { x: right.x, y: baseline }, 'LET GO', type.actionWord, black, {
    anchor: 'end',
  })
  const mark = { x: right.x - word.width - 2.1, y: right.y }
  return [
    lettered(ruler, { x: mark.x - 2.2, y: baseline }, 'or', type.workingOthers, black, { anchor: 'end' }),
    ...actionMark('let go', mark, 1.25),
    word,
  ]
}
