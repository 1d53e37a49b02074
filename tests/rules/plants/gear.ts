import { lineOf, withLineBelow } from '../notebook.ts'
import { at, has, type Plants, perSail, saying, square, stayed, without } from './plant.ts'

const hasClewline =
  (...classes: readonly string[]) =>
  (sail: Parameters<typeof stayed>[0], book: Parameters<typeof has>[0]) =>
    square(...classes)(sail) && has(book, sail, 'clewline', 'sheet', 'buntline')

/** Faults of what lines a sail has, and of what is said of them. */
export const gear: Plants = {
  'a jib without halyard': without('sail/nothing-sets-it', 'halyard', stayed, 'sail'),
  'a jib without downhaul': without('sail/nothing-gets-it-in', 'downhaul', stayed, 'sail'),
  'a jib without sheets': without('sail/no-sheet', 'sheet', stayed, 'sail'),
  'a jib with one sheet': saying(
    'sail/sheet-one-side',
    'sheet single',
    (sail, { rig }) =>
      stayed(sail) &&
      rig.lines.some(line => line.host?.name === sail.name && line.kind === 'sheet' && line.pair),
  ),
  'a yard without halyard': without(
    'yard/no-halyard',
    'halyard',
    square('topsail', 'upper topsail', 'topgallant', 'upper topgallant', 'royal', 'skysail'),
    'yard',
  ),
  'a topgallant without clewlines': without(
    'yard/nothing-gets-it-down',
    'clewline',
    square('topsail', 'topgallant', 'royal', 'skysail'),
    'yard',
  ),
  'an upper topsail without downhauls': without(
    'yard/nothing-gets-it-down',
    'downhaul',
    square('upper topsail', 'upper topgallant'),
    'yard',
  ),
  'a lower topsail without clewlines': without(
    'sail/nothing-gets-it-in',
    'clewline',
    square('lower topsail', 'lower topgallant'),
    'sail',
  ),
  'a square sail without sheets': without('sail/no-sheet', 'sheet', square(), 'sail'),
  'a course without tacks': without('sail/no-tack', 'tack', square('course'), 'sail'),
  'a yard without braces': without('sail/no-brace', 'brace', square(), 'yard'),
  'a topgallant without buntlines': without(
    'sail/no-buntline',
    'buntline',
    square('topsail', 'topgallant'),
    'sail',
  ),
  'a brace for one yardarm': saying(
    'pair/one-missing',
    'brace single',
    (sail, book) => square()(sail) && has(book, sail, 'brace'),
  ),
  'a gaff sail without throat halyard': without(
    'sail/nothing-sets-it',
    'throat halyard',
    sail => sail.class === 'gaff sail',
    'sail',
  ),
  'a gaff topsail without clewline': without(
    'sail/nothing-gets-it-in',
    'clewline',
    sail => sail.class === 'gaff topsail',
    'sail',
  ),
  'a spanker without brails': without(
    'sail/nothing-gets-it-in',
    'peak brail and throat brail and foot brail',
    sail => sail.class === 'gaff sail',
    'sail',
  ),
  'a boom without topping lift': perSail((book, { thing, gear: below }) => {
    if (thing.kind !== 'fore-and-aft' || !has(book, thing, 'topping lift')) return undefined
    const boom = thing.on.map(name => book.rig.sparAt.get(name)).find(spar => spar?.kind === 'boom')
    const line = lineOf(book, boom?.span)
    return line === undefined
      ? undefined
      : at(line, 'boom/no-topping-lift', withLineBelow(book, below, '      without topping lift'))
  }),
  'a fixed yard with a halyard': saying(
    'yard/fixed-has-halyard',
    'with halyard single, hoists yard, answered by the weight of the yard',
    (sail, { rig }) => {
      const yard = sail.kind === 'square' ? rig.sparAt.get(sail.yard) : undefined
      return yard?.kind === 'yard' && !yard.hoists
    },
  ),
  'shackled clews and a running sheet': saying(
    'sail/sheeted-and-shackled',
    'with sheet pair, spreads clew against buntline',
    sail => square()(sail) && sail.shackled.some(({ part }) => part.startsWith('clew')),
  ),
  'a halyard that hoists nothing there is': saying(
    'line/acts-on-nothing',
    'halyard hoists haed',
    (sail, book) => stayed(sail) && has(book, sail, 'halyard'),
  ),
  'a halyard that nothing answers': saying(
    'line/nothing-answers',
    'halyard not against downhaul',
    (sail, book) => stayed(sail) && has(book, sail, 'halyard', 'downhaul'),
  ),
  'a sheet not said to ease its clewline': saying(
    'line/counterpart-one-way',
    'sheet not against clewline',
    hasClewline('topsail', 'topgallant', 'royal', 'lower topsail', 'lower topgallant'),
  ),
  'sheet and clewline neither said to ease the other': saying(
    'line/counterpart-omitted',
    'sheet not against clewline\nclewline not against sheet\nclewline also against buntline',
    hasClewline('topsail', 'topgallant', 'royal', 'lower topsail', 'lower topgallant'),
  ),
  'thin rope for a party': saying(
    'line/rope-too-thin',
    'halyard 8 mm, 6 hands',
    (sail, book) => stayed(sail) && has(book, sail, 'halyard'),
  ),
  'a long lower yard braced single': saying(
    'line/brace-without-purchase',
    'brace rove single',
    (sail, { rig }) => {
      const yard = sail.kind === 'square' && sail.class === 'course' ? rig.sparAt.get(sail.yard) : undefined
      return (yard?.length ?? 0) > 12
    },
  ),
}
