import type { Mast, Place, Rail, Rig } from '../../rig/index.ts'
import { isHalyard } from '../deeds.ts'
import { aboutLine, aboutRail, listed, railName, sentence } from '../naming.ts'
import { orderOf, outOfOrder } from '../out-of-order.ts'
import type { BelayedLine } from '../pairs.ts'
import type { Draft, Rule } from '../rule.ts'
import { gearWord } from './gear-word.ts'

/** The same gear in another order along the rail on two neighbouring masts. Halyards, at the ends, don't count. */
export const orderDiffers: Rule = {
  slug: 'mast/order-differs',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const rows = rig.masts.map(mast => rig.rails.flatMap(rail => rowAlong(rig, rail, mast)))
    const found = rows.flatMap((models, index) =>
      (rows[index + 1] ?? []).flatMap(row => disorderOf(row, models)),
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

/** A mast's own gear along a rail, from forward. */
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

/** Halyards are left out, and words that two lines answer to. Nothing where fewer than two are left. */
function rowAlong(rig: Rig, rail: Rail, mast: Mast): readonly Row[] {
  const gear = rail.places.flatMap(place =>
    place.lines.flatMap(address => {
      const line = rig.lineAt.get(address)
      if (!line?.belay || line.mast !== mast.name || isHalyard(line)) return []
      return [{ word: gearWord(rig, mast, line), line: { ...line, belay: line.belay }, place }]
    }),
  )
  const counts = new Map<string, number>()
  for (const { word } of gear) counts.set(word, (counts.get(word) ?? 0) + 1)
  const single = gear.filter(({ word }) => counts.get(word) === 1)
  return single.length > 1 ? [{ rail, gear: single }] : []
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
  const some = lines.slice(0, 3).map(({ line, place }) => `the ${line.words} at pin ${place.number}`)
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
