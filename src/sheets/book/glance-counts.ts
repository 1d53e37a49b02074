import { type Block, flow, setLines, words } from '../flow.ts'
import { lettered } from '../lettered.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import type { Book } from './book.ts'
import { columnAt, grid, live } from './page.ts'
import { level } from './page-parts.ts'
import { black, rule, type } from './type.ts'

/** Six counts of a station, each reckoned from the rig; what the text does not say has a dash. */
export function glanceCounts(book: Book, y: number): Block {
  const { ruler } = book.setting
  const cells = counts(book).map(([count, told], index): Mark => {
    const x = columnAt(index)
    const figure = lettered(
      ruler,
      { x, y: y + 8.9 },
      count === undefined ? '–' : String(count),
      type.count,
      black,
    )
    const label = setLines(
      flow([words(told, type.note)], grid.column + 2.6, ruler),
      { x, y: y + 13.4 },
      3.7,
      ruler,
    )
    return tagged('P', [figure, ...label.marks], {
      actual: `${count === undefined ? 'Not said' : count}: ${told}. `,
    })
  })
  const bottom = y + 19.4
  return {
    marks: [level(0, live.width, y, rule.box), ...cells, level(0, live.width, bottom, rule.table)],
    bottom,
    lines: 1,
  }
}

function counts({ rig, station, lines }: Book): readonly (readonly [number | undefined, string])[] {
  const places = station.rails.flatMap(code => rig.railAt.get(code)?.places ?? [])
  const hands = lines.own.flatMap(line => line.hands ?? [])
  return [
    [lines.own.length, 'your lines'],
    [lines.othersHere.length, 'others’ lines on your rails'],
    [places.filter(place => place.lines.length === 0).length, 'pins free'],
    [hands.length === 0 ? undefined : Math.max(...hands), 'hands on the heaviest haul'],
    [station.handsInAll, 'of you at all hands'],
    [station.handsInWatch, 'of you in a watch'],
  ]
}
