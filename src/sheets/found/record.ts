import { type Found, namesOf } from '../../assist/index.ts'
import type { BelayingPoint, Line, Rig } from '../../rig/index.ts'
import type { Plain, ReckoningRecord } from '../reckoning/plain.ts'
import { surveyWords } from '../survey-words.ts'
import { easedWith, haulWords } from './about-line.ts'

/** What was found as plain data; what isn't known or said of a line is left out. */
export const foundRecord = (rig: Rig, asked: string, { lines, free }: Found): ReckoningRecord => ({
  vessel: rig.vessel.name,
  asked,
  lines: lines.flatMap(({ pair, by }) => {
    const [line] = pair
    if (!line) return []
    const found: ReckoningRecord = { words: by.words, kind: by.kind, ...said({ language: by.language }) }
    return [{ ...lineRecord(line, pair, rig), found_as: found }]
  }),
  free: free.map(({ rail, pin, side }) => ({ rail, pin, side })),
})

function lineRecord(line: Line, pair: readonly Line[], rig: Rig): ReckoningRecord {
  return {
    name: line.words,
    label: line.label,
    nicknames: line.nicknames,
    other_languages: namesOf(line, rig).flatMap(({ words, language }) =>
      language ? [{ language, words }] : [],
    ),
    belayed: pair.flatMap(one => placesOf(one, rig)),
    eased: easedWith(pair, rig).map(lines => ({
      name: lines[0]?.words ?? '',
      belayed: lines.flatMap(one => placesOf(one, rig)),
    })),
    purchase: line.purchase,
    ...said({
      short: line.short,
      hauling: haulWords(pair),
      answered_by: line.answeredBy,
      hands: line.hands,
      rope_m: line.rope?.diameter,
      material: line.rope?.material,
      whipped: line.whipped,
      coloured: line.coloured,
      station: line.station,
      lifted: line.lifted,
      survey: surveyWords(line),
    }),
  }
}

function placesOf(line: Line, rig: Rig): readonly ReckoningRecord[] {
  const place = (point: BelayingPoint): ReckoningRecord => ({
    address: line.address,
    rail: rig.railAt.get(point.rail)?.name ?? point.rail,
    code: point.rail,
    pin: point.pin,
    side: point.side,
  })
  return [line.belay, line.otherBelay].flatMap(point => (point ? [place(point)] : []))
}

const said = (of: Readonly<Record<string, Plain | undefined>>): ReckoningRecord =>
  Object.fromEntries(
    Object.entries(of).flatMap(([name, value]) =>
      value === undefined || value === '' ? [] : [[name, value]],
    ),
  )
