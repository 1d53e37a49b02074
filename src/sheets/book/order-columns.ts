import type { Freed, OrderPhase } from '../../evolve/index.ts'
import type { Mark } from '../sheet.ts'
import type { Book } from './book.ts'
import { type Block, flow, setLines, words } from './flow.ts'
import { across, type OrderSetting } from './order-layout.ts'
import { entriesSet, type ListColumn, lineList } from './order-lines.ts'
import { callPhrase, lineInOrder } from './order-names.ts'
import { upright } from './page-parts.ts'
import { tagged } from './tagged.ts'
import { leading, rule, type } from './type.ts'

const haulColumn: ListColumn = {
  mark: across.haul.mark,
  address: across.haul.address,
  name: across.haul.name,
  right: across.haul.right,
  showsHands: true,
}
const easeColumn: ListColumn = {
  mark: across.ease.mark,
  address: across.ease.address,
  name: across.ease.name,
  right: across.ease.right,
  showsHands: false,
}
const standingColumn: ListColumn = { ...haulColumn, mark: undefined, showsHands: false }

/** What the two columns of a phase hold, and whether the lines stood by found room in the left one. */
export interface Columns extends Block {
  readonly holdsStandBy: boolean
}

/**
 * Haul to the left, ease or let go to the right, with what was freed before; an empty side says so. Lines to
 * stand by fill the left side where nothing is hauled and there is room. `y` is the first baseline; a phase
 * that neither hauls nor eases has no columns.
 */
export function orderColumns(phase: OrderPhase, y: number, set: OrderSetting): Columns {
  if (phase.haul.length === 0 && phase.ease.length === 0)
    return { marks: [], bottom: y, lines: 0, holdsStandBy: false }
  const right = easeSide(phase, y, set)
  const left = haulSide(phase, y, right.lines, set)
  const lines = Math.max(left.lines, right.lines)
  const bottom = y + (lines - 1) * leading.working
  const divider = upright(across.gutter, y - 2.9, bottom + 1, rule.frame)
  return { marks: [...left.marks, divider, ...right.marks], bottom, lines, holdsStandBy: left.holdsStandBy }
}

function haulSide(phase: OrderPhase, y: number, room: number, set: OrderSetting): Columns {
  if (phase.haul.length > 0) {
    return { ...lineList(entriesSet(phase.haul, set), haulColumn, y, set), holdsStandBy: false }
  }
  const none = remark('no haul in this phase', across.haul.address, across.haul.right, y, set.book)
  const standing = entriesSet(phase.standBy, set)
  const label = y + (none.lines + 0.3) * leading.working
  const list = lineList(standing, standingColumn, label + leading.working, set)
  const lines = none.lines + 1.3 + list.lines
  if (standing.length === 0 || lines > room + 0.2) return { ...none, holdsStandBy: false }
  const { ruler } = set.book.setting
  const heading = setLines(
    flow([words('stand by, manned ', type.workingAddress)], 60, ruler),
    { x: across.haul.address, y: label },
    0,
    ruler,
  )
  return {
    marks: [...none.marks, tagged('P', heading.marks), ...list.marks],
    bottom: list.bottom,
    lines,
    holdsStandBy: true,
  }
}

function easeSide(phase: OrderPhase, y: number, set: OrderSetting): Block {
  const list = lineList(entriesSet(phase.ease, set), easeColumn, y, set)
  const notes = remarks(phase, set)
  let lines = list.lines
  const marks: Mark[] = [...list.marks]
  for (const note of notes) {
    const block = remark(note, across.ease.address, across.ease.right, y + lines * leading.working, set.book)
    marks.push(...block.marks)
    lines += block.lines
  }
  return { marks, bottom: y + Math.max(0, lines - 1) * leading.working, lines }
}

/** 'halyard: eased in 2, now belayed', or why there is nothing to ease. */
function remarks(phase: OrderPhase, set: OrderSetting): readonly string[] {
  const freed = freedWords(phase.freed, set)
  if (freed.length > 0 || phase.ease.length > 0) return freed
  const pulls = phase.answers.length === 0 ? phase.answeredBy : []
  return pulls.length > 0 ? pulls.map(pull => `${pull} answers`) : ['nothing to ease']
}

function freedWords(freed: readonly Freed[], set: OrderSetting): readonly string[] {
  const groups = new Map<string, Freed[]>()
  for (const one of freed) {
    const how = `${one.act === 'ease' ? 'eased' : 'let go'} in ${one.phase}${one.belayed ? ', now belayed' : ''}`
    groups.set(how, [...(groups.get(how) ?? []), one])
  }
  return [...groups].map(([how, group]) => `${freedNames(group, set).join(', ')}: ${how}`)
}

// Inner and outer buntlines freed alike are the buntlines.
function freedNames(freed: readonly Freed[], { book, sail }: OrderSetting): readonly string[] {
  const kinds = new Map<
    string,
    {
      readonly name: string
      readonly kind: string
      readonly reach: Freed['reach']
      count: number
      pair: boolean
    }
  >()
  for (const { pairKey, reach } of freed) {
    const line = book.rig.pairAt.get(pairKey)?.[0]
    if (!line) continue
    const key = `${line.host?.name ?? ''} ${line.kind} ${reach}`
    const known = kinds.get(key)
    if (known) known.count++
    else
      kinds.set(key, {
        name: lineInOrder(line, sail, book),
        kind: line.kind,
        reach,
        count: 1,
        pair: line.side !== undefined,
      })
  }
  return [...kinds.values()].map(({ name, kind, reach, count, pair }) => {
    const several = count > 1 || (pair && reach === 'all')
    const noun = count > 1 ? kind : name
    return callPhrase({ name: noun, several, reach, after: false, when: undefined })
  })
}

function remark(text: string, x: number, right: number, y: number, { setting }: Book): Block {
  const lines = flow([words(`${text} `, type.workingOthers)], right - x, setting.ruler)
  const set = setLines(lines, { x, y }, leading.working, setting.ruler)
  return { ...set, marks: [tagged('P', set.marks)] }
}
