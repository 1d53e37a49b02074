import { metres } from '../../measure/index.ts'
import { nameKey, type Statement } from '../../syntax/index.ts'
import type { DeckThing } from '../deck.ts'
import { clause, clausesOf } from './clauses.ts'
import { coordinates } from './place.ts'
import { capitalised, finding, type Say } from './say.ts'

/** The things an entry of the deck declares: two where it stands port and starboard. */
export function buildDeckThings(entry: Statement, say: Say): readonly DeckThing[] {
  if (!entry.name) return []
  const along = clausesOf(entry, 'extent').find(one => one.axis === 'aft')
  if (!along) {
    say(
      finding(
        'deck/extent-missing',
        entry.name.span,
        `It isn't said where on deck the ${entry.name.words} stands.`,
        {
          remedy:
            'Say from where to where, as in "from 9.40 m to 10.60 m aft, 0.70 m each side, top 2.30 m up".',
        },
      ),
    )
    return []
  }
  const name = nameKey(entry.name.words)
  const said = clause(entry, 'class')
  const thing = {
    name,
    label: clause(entry, 'called')?.label.text ?? capitalised(entry.name.words),
    kind: said ? nameKey(said.name.words) : (name.split(' ').at(-1) ?? name),
    x0: metres(along.from.value * (along.fromForward ? -1 : 1)),
    x1: metres(along.to.value),
    top: metres(
      coordinates(
        [...(clause(entry, 'top') ? [clause(entry, 'top')?.step] : [])].flatMap(step => step ?? []),
        0,
      ).z ?? 0,
    ),
    span: entry.name.span,
  }
  return breadths(entry).map(([y0, y1]) => ({ ...thing, y0: metres(y0), y1: metres(y1) }))
}

/** From where to where athwart: [y0, y1] for each of the things, port first. */
function breadths(entry: Statement): readonly (readonly [number, number])[] {
  const each = clause(entry, 'eachSide')?.measure.value
  if (each !== undefined) return [[-each, each]]
  const out = clausesOf(entry, 'extent').find(one => one.axis === 'out')
  if (!out) return [[0, 0]]
  const inner = out.from.value
  const outer = out.to.value
  if (clause(entry, 'sides'))
    return [
      [-outer, -inner],
      [inner, outer],
    ]
  return out.side === 'port' ? [[-outer, -inner]] : [[inner, outer]]
}
