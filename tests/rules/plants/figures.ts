import { braceLimit } from '../../../src/reckon/index.ts'
import type { Sail, Spar } from '../../../src/rig/index.ts'
import { type Notebook, sparsIn, withLine } from '../notebook.ts'
import {
  anywhere,
  at,
  edited,
  has,
  isLifted,
  type Plant,
  type Plants,
  perSail,
  saying,
  square,
  stayed,
} from './plant.ts'

const hoisting = (sail: Sail, book: Notebook) => {
  const yard = sail.kind === 'square' ? book.rig.sparAt.get(sail.yard) : undefined
  return square()(sail) && has(book, sail, 'halyard') && yard?.mass !== undefined && !isLifted(sail, book)
}
const withHalyard = (sail: Sail, book: Notebook) => stayed(sail) && has(book, sail, 'halyard')

/** The rule of `saying` wherever the finding stands. */
const said =
  (rule: string, words: string, fits: Parameters<typeof saying>[2]): Plant =>
  book =>
    saying(rule, words, fits)(book).map(one => ({ ...one, lines: [] }))

const lateralCentreMoved: Plant = book => {
  const line = book.lines.findIndex(words => words.startsWith('  lateral centre')) + 1
  const text = line > 0 ? edited(book, line, /[\d.]+ m (aft|forward)/, '0.50 m aft') : undefined
  return text ? [anywhere('balance/lead-out-of-range', text)] : []
}

/** The order of setting the other way about, mast by mast: the aftermost sails first. */
const setFromAft: Plant = book => {
  const { rig } = book
  const isSquare = rig.masts.filter(mast =>
    rig.sails.some(sail => sail.kind === 'square' && sail.mast === mast.name),
  )
  const from = book.lines.findIndex(words => words.startsWith('set '))
  if (from < 0 || isSquare.length < 2) return []
  const to = book.lines.findIndex((words, index) => index > from && !words.startsWith('  '))
  const rank = (name: string) => rig.masts.findIndex(({ name: mast }) => mast === rig.sailAt.get(name)?.mast)
  const order = rig.order.toSorted((a, b) => rank(b) - rank(a))
  const lines = book.lines.toSpliced(from, to - from, `set ${order.join('\n  then ')}`)
  return [anywhere('balance/lead-while-setting', lines.join('\n'))]
}

const boomTooLong: Plant = book =>
  sparsIn(book).flatMap(({ thing, entry }) => {
    const own = book.rig.mastAt.get(thing.mast ?? '')?.foot
    const next = book.rig.masts.find(({ foot }) => foot && own && foot.x > own.x)?.foot
    if (thing.kind !== 'boom' || !next) return []
    const text = edited(book, entry, / to +[\d.]+ m aft/, ` to ${(next.x + 3).toFixed(2)} m aft`)
    return text ? [anywhere('boom/meets-next-mast', text)] : []
  })

/** The end of a line that has no remark behind it. */
const unremarked = /(?<=^[^#]*[^# ])$/

/** What is said of every spar that fits, at the end of its line. */
const saidOfSpar =
  (rule: string, words: string, fits: (spar: Spar, book: Notebook) => boolean): Plant =>
  book =>
    sparsIn(book).flatMap(({ thing, entry }) => {
      const text = fits(thing, book) ? edited(book, entry, unremarked, words) : undefined
      return text ? [at(entry, rule, text)] : []
    })

const stoppedByBackstays = (spar: Spar, { rig }: Notebook): boolean => {
  const limit = spar.kind === 'yard' ? braceLimit(spar, rig) : undefined
  return limit?.known === true && limit.value.angle > (26 * Math.PI) / 180
}

const canvasOf = (rule: string, words: string): Plant =>
  perSail((book, { entry }) => {
    const text = edited(book, entry, unremarked, words)
    return text ? at(entry, rule, text) : undefined
  })

const oneHandAboard: Plant = book => {
  const line = book.lines.findIndex(words => /^ {2}hands \d+ in all/.test(words)) + 1
  const isHeavy = book.rig.spars.some(spar => spar.kind === 'yard' && spar.hoists && spar.mass !== undefined)
  return line > 0 && isHeavy ? [anywhere('line/hands-short', withLine(book, line, '  hands 1 in all'))] : []
}

/** A line of the rig judged in a survey, by a page of its own at the foot. */
const surveyed =
  (rule: string, judgement: string): Plant =>
  ({ lines, rig }) =>
    rig.lines
      .filter(({ lifted }) => lifted === undefined)
      .map(line =>
        anywhere(
          rule,
          [...lines, '', 'survey 14 October 2026, by "the bosun"', `  ${line.words}, ${judgement}`, ''].join(
            '\n',
          ),
        ),
      )

/** Faults that only figures show, or a survey. */
export const figures: Plants = {
  'a halyard of thread': said('line/rope-too-weak', 'halyard 3 mm', hoisting),
  'a halyard of no known rope': said('line/material-unknown', 'halyard 16 mm moonbeam', withHalyard),
  'one hand for all her yards': oneHandAboard,
  'a yard braced beyond its backstays': saidOfSpar(
    'yard/braced-too-sharp',
    ', braces to 24 deg',
    stoppedByBackstays,
  ),
  'a spar without thickness': saidOfSpar('measure/of-nothing', ', 0 mm thick', () => true),
  'a rope without thickness': said('measure/of-nothing', 'halyard 0 mm manila', withHalyard),
  'a spar of moonbeams': saidOfSpar('spar/material-unknown', ', moonbeam', () => true),
  'canvas of no list': canvasOf('sail/canvas-unknown', ', number 3 moonbeam'),
  'a line condemned': surveyed('line/condemned', 'condemned, "rotten"'),
  'a survey past its day': surveyed('line/survey-overdue', 'worn, due 1 November 2026'),
  'a lateral centre far forward': lateralCentreMoved,
  'sail set from aft': setFromAft,
  'a boom as long as to the next mast': boomTooLong,
}
