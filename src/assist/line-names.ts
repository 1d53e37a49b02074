import { type Line, lineIn, type Place, type Rail, type Rig, wordIn } from '../rig/index.ts'

/** One of the names a line goes by. */
export interface LineName {
  readonly words: string
  /** What name it is: the ship's own, a nickname, a word of another language, or where it is made fast. */
  readonly kind: 'name' | 'short' | 'nickname' | 'address' | 'place' | 'other language'
  /** 'German'; of all other kinds undefined. */
  readonly language: string | undefined
}

/** Every name a line goes by: as written and as printed, its address, its nicknames, in all languages, and its pins. */
export function namesOf(line: Line, rig: Rig): readonly LineName[] {
  const own = (kind: LineName['kind'], words: readonly (string | undefined)[]) =>
    words.flatMap(one => (one ? [{ words: one, kind, language: undefined }] : []))
  const places = [line.belay, line.otherBelay].flatMap(point => {
    const rail = point && rig.railAt.get(point.rail)
    const place = point && rail?.places[point.number - 1]
    return rail && place ? placeNames(rail, place) : []
  })
  return [
    ...own('nickname', line.nicknames),
    ...own('name', [line.words, line.label, line.labelOnMast]),
    ...own('short', [line.short]),
    ...own('address', [line.address]),
    ...[...rig.tongues.values()].flatMap(tongue => {
      const called = [lineIn(tongue, line), wordIn(tongue, line)]
        .flatMap(one => ('words' in one ? [one.words] : []))
        .slice(0, 1)
      const short = tongue.labels.get(line.pairKey)?.short
      return own('other language', [...called, short]).map(one => ({ ...one, language: tongue.language }))
    }),
    ...own('place', places),
  ]
}

/** What a belaying place is called: 'FR-P pin 4', 'FR-P 4', 'fore rail port pin 4'. */
export const placeNames = ({ code, name, label }: Rail, { pin, side }: Place): readonly string[] => {
  const number = side === 'centre' ? `pin ${pin}` : `${side} pin ${pin}`
  return [`${code} pin ${pin}`, `${code} ${pin}`, `${name} ${number}`, `${label} ${number}`]
}
