import type { Place, Rail, Rig } from '../../rig/index.ts'
import { isHalyard } from '../deeds.ts'
import { put } from '../gear.ts'
import { aboutLine, aboutRail, listed, railName, sentence } from '../naming.ts'
import { orderOf, outOfOrder } from '../out-of-order.ts'
import { type BelayedLine, isBelayed } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'
import { gearWord } from './gear-word.ts'

/** The same gear in another order along the rail on two neighbouring masts. Halyards, at the ends, don't count. */
export const orderDiffers: Rule = {
  slug: 'mast/order-differs',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const rows = rowsOf(rig)
    const found = rig.masts.flatMap((mast, index) =>
      (rows.get(rig.masts[index + 1]?.name ?? '') ?? []).flatMap(row =>
        disorderOf(row, rows.get(mast.name) ?? []),
      ),
    )
    // The same disorder on both sides of the deck is one, told for the side that the text has first.
    for (const disorder of found) {
      const alike = found.filter(other => other.key === disorder.key)
      if (alike[0] === disorder) yield* told(disorder, alike.length > 1)
    }
  },
}

interface Disorder {
  readonly key: string
  readonly row: Row
  readonly model: Row
  readonly strayed: readonly string[]
}

function disorderOf(row: Row, models: readonly Row[]): readonly Disorder[] {
  const model = mostAlike(row, models)
  const strayed = model ? outOfOrder(wordsOf(model), wordsOf(row)) : []
  if (!model || strayed.length === 0) return []
  return [{ key: `${row.rail.mark} ${model.rail.mark} ${strayed.join()}`, row, model, strayed }]
}

/** A mast's own gear along a rail, from forward, two or more. Words that two lines answer to are left out. */
interface Row {
  readonly rail: Rail
  readonly gear: readonly Berthed[]
}

interface Berthed {
  readonly word: string
  readonly line: BelayedLine
  readonly place: Place
}

const wordsOf = ({ gear }: Row) => gear.map(({ word }) => word)

/** The rows of each mast, by its name, in the order of the rails. */
function rowsOf(rig: Rig): ReadonlyMap<string, readonly Row[]> {
  const rows = new Map<string, Row[]>()
  for (const rail of rig.rails) {
    for (const [mast, gear] of gearAlong(rig, rail)) {
      const single = gear.filter(({ word }) => gear.filter(other => other.word === word).length === 1)
      if (single.length > 1) put(rows, mast, { rail, gear: single })
    }
  }
  return rows
}

/** What is belayed along a rail, from forward, by the mast whose gear it is. Halyards are left out. */
function gearAlong(rig: Rig, rail: Rail): ReadonlyMap<string, readonly Berthed[]> {
  const gear = new Map<string, Berthed[]>()
  for (const place of rail.places) {
    for (const address of place.lines) {
      const line = rig.lineAt.get(address)
      const mast = rig.mastAt.get(line?.mast ?? '')
      if (!line || !isBelayed(line) || !mast || isHalyard(line)) continue
      put(gear, mast.name, { word: gearWord(rig, mast, line), line, place })
    }
  }
  return gear
}

/** The row of the other mast, on the same side, with the most gear in common; undefined where none has two. */
function mostAlike(row: Row, models: readonly Row[]): Row | undefined {
  const words = new Set(wordsOf(row))
  let best: Row | undefined
  let most = 1
  for (const model of models) {
    const inCommon = model.gear.filter(({ word }) => words.has(word)).length
    if (model.rail.lie !== row.rail.lie || inCommon <= most) continue
    best = model
    most = inCommon
  }
  return best
}

function* told({ row, model, strayed }: Disorder, onBothSides: boolean): Iterable<Draft> {
  const lines = row.gear.filter(({ word }) => strayed.includes(word))
  const [first] = lines
  if (!first) return
  const some = lines.slice(0, 3).map(({ line, place }) => `the ${line.words} at pin ${place.pin}`)
  const more = lines.length > 3 ? [`${lines.length - 3} more`] : []
  const fellow = model.gear.find(({ word }) => word === first.word)
  const where = onBothSides ? `${row.rail.name}, port and starboard` : railName(row.rail)
  yield {
    at: first.line.belaySpan ?? first.line.span,
    message: `${sentence(where)}, breaks the order of the ${model.rail.name}: out of place ${lines.length > 1 ? 'are' : 'is'} ${listed([...some, ...more])}.`,
    aboard:
      'A hand who knows one mast knows all of them by the order of the pins, and where it differs hauls the wrong line at night.',
    remedy: `${neighbourhood(model, first.word)} Put both masts in one order, or allow it and say why.`,
    related: fellow
      ? [
          {
            at: fellow.line.belaySpan ?? fellow.line.span,
            message: `the ${fellow.line.words} is belayed here`,
          },
        ]
      : [],
    about: [...aboutRail(row.rail), ...lines.flatMap(({ line }) => aboutLine(line))],
    explains: lines.map(({ line }) => orderOf(line)),
  }
}

/** Where the other mast has it. */
function neighbourhood({ rail, gear }: Row, word: string): string {
  const at = gear.findIndex(one => one.word === word)
  const before = gear[at - 1]
  const after = gear[at + 1]
  const beside = [
    ...(before ? [`after the ${before.line.words}`] : []),
    ...(after ? [`before the ${after.line.words}`] : []),
  ]
  return `On the ${rail.name} its like comes ${beside.join(' and ')}.`
}
