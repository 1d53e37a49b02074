import { type Block, type DrawnPiece, flow, type Piece, setLine, words } from '../flow.ts'
import type { Mark } from '../sheet.ts'
import { tagged } from '../tagged.ts'
import type { Ruler } from '../typeface.ts'
import { live } from './page.ts'
import { level } from './page-parts.ts'
import { type SideMark, sideMark, sideMarkWidth } from './side-mark.ts'
import { rule, type } from './type.ts'

/** 'Wind from starboard W = S, L = P', and the other tack, between two rules: printed wherever weather and lee are. */
export function tackKey(y: number, ruler: Ruler): Block {
  const baseline = y + 3.75
  const bottom = baseline + 1.75
  const half = (x: number, from: string, weather: SideMark, lee: SideMark): Mark => {
    const pieces: readonly Piece[] = [
      words(`Wind from ${from} `, type.workingAddress),
      side('W', ruler),
      words(' = ', type.working),
      side(weather, ruler),
      words('  ', type.working),
      side('L', ruler),
      words(' = ', type.working),
      side(lee, ruler),
    ]
    const [line] = flow(pieces, 60, ruler)
    const sides = `Wind from ${from}: weather is ${sideWord[weather]}, lee is ${sideWord[lee]}.`
    return tagged('P', line ? setLine(line, { x, y: baseline }, ruler) : [], { actual: sides })
  }
  return {
    marks: [
      level(0, live.width, y, rule.furniture),
      half(0, 'starboard', 'S', 'P'),
      half(62.5, 'port', 'P', 'S'),
      level(0, live.width, bottom, rule.table),
    ],
    bottom,
    lines: 1,
  }
}

const sideWord: Readonly<Record<SideMark, string>> = { P: 'port', S: 'starboard', W: 'weather', L: 'lee' }

const side = (mark: SideMark, ruler: Ruler): DrawnPiece => ({
  kind: 'drawn',
  width: sideMarkWidth(mark, type.working.size) + 0.3,
  marks: at => sideMark(mark, at, type.working.size, ruler),
})
