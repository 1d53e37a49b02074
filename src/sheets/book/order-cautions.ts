import { cautionAt, type OrderPhase } from '../../evolve/index.ts'
import { atMost, flow, setLines, words } from '../flow.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import { numberedCaution, numberedCautionWidth } from './caution-mark.ts'
import type { OrderSetting } from './order-layout.ts'
import { curled } from './order-names.ts'
import { type } from './type.ts'

/** A caution, or what the text says to mind, from the left end of its first baseline. */
export interface Warning {
  readonly kind: 'caution' | 'mind'
  readonly width: number
  readonly lines: number
  readonly draw: (x: number, y: number) => readonly Mark[]
}

/** How a caution is told: in words, or by its sign and number where the page has told it before. */
export type Telling = 'in words' | 'by number'

/** From one line of a box to the next, and how wide such a line may be. */
export const warningLeading = 4.15
export const warningMeasure = 104.6

/** Cautions in the order of the phase, each as `telling` has it. */
export function cautionsOf(
  phase: OrderPhase,
  telling: (number: number) => Telling,
  set: OrderSetting,
): readonly Warning[] {
  return phase.cautions.flatMap(number => {
    const caution = cautionAt(number)
    return caution ? [numbered(number, telling(number) === 'in words' ? caution[set.cautions] : '', set)] : []
  })
}

function numbered(number: number, text: string, { book }: OrderSetting): Warning {
  const { ruler } = book.setting
  const face = type.cautionShort
  const sign = numberedCautionWidth(number, face.size, ruler)
  const lead = sign + 1.5
  const lines = flow([words(`${text} `, face)], warningMeasure - lead, ruler)
  return {
    kind: 'caution',
    width: text === '' ? sign : lead + ruler(text, face),
    lines: 1,
    draw: (x, y) => [
      tagged('Span', numberedCaution(number, { x, y }, face.size, ruler), { actual: `Caution ${number}. ` }),
      ...(text === '' ? [] : setLines(lines, { x: x + lead, y }, warningLeading, ruler).marks),
    ],
  }
}

/** Lighter than the cautions it stands beside. */
const mindType = { ...type.cautionFull, size: type.cautionShort.size }

/** What the bosun wrote beside the numbered cautions stands with them, without the sign. */
export function mindsOf(phase: OrderPhase, { book, mostLines }: OrderSetting): readonly Warning[] {
  const { ruler } = book.setting
  return phase.minds.map(mind => {
    const pieces = [words('Mind: ', type.cautionShort), words(`${curled(mind)} `, mindType)]
    const lines = atMost(mostLines, flow(pieces, warningMeasure, ruler), warningMeasure, ruler)
    return {
      kind: 'mind',
      width: Math.max(0, ...lines.map(({ width }) => width)),
      lines: lines.length,
      draw: (x, y) => setLines(lines, { x, y }, warningLeading, ruler).marks,
    }
  })
}
