import fc from 'fast-check'

/** One spoiling of a text, at places told by numbers from 0 to below 1. */
interface Spoiling {
  readonly kind: (typeof kinds)[number]
  readonly at: number
  readonly other: number
  readonly word: string
}

const kinds = [
  'drop a line',
  'say a line twice',
  'swap two lines',
  'drop a word',
  'put a word in',
  'put a word for another',
  'take a word from elsewhere',
  'move a margin',
  'cut the text off',
  'change a letter',
] as const

const oddWords = [
  ...['0', '-0 m', '1e999 m', '12', '0.001 mm', '999999 km', '1/0 in', '41′ 6″', '3 deg', '-5 m', '1,5 m'],
  ...['"', '"open', ',', ')', '#', '\t', '\r', '\0', '\u202e', '\ufeff', '\ud800', '½', '“fore”', '\u00a0'],
  ...[
    '__proto__',
    'constructor',
    '..',
    'con',
    'Fore',
    '../../rigs',
    'x'.repeat(5000),
    'like',
    'pair',
    'then',
  ],
  ...[
    'gear topsail like topsail',
    'bring in "test.rig"',
    'belay on',
    'port',
    'starboard',
    'other',
    'without',
  ],
  ...[
    '\nsails\n',
    '\n\n',
    '\n        ',
    'edition 99',
    'shared by',
    'allow',
    'because',
    'free',
    'through',
    'to be given',
  ],
]

const spoiling: fc.Arbitrary<Spoiling> = fc.record({
  kind: fc.constantFrom(...kinds),
  at: fc.double({ min: 0, max: 0.999999, noNaN: true }),
  other: fc.double({ min: 0, max: 0.999999, noNaN: true }),
  word: fc.constantFrom(...oddWords),
})

/** A text spoiled in one to six places. */
export const spoiled = (texts: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...texts), fc.array(spoiling, { minLength: 1, maxLength: 6 }))
    .map(([text, spoilings]) => spoilings.reduce(spoil, text))

function spoil(text: string, { kind, at, other, word }: Spoiling): string {
  const lines = text.split('\n')
  const here = Math.floor(at * lines.length)
  const there = Math.floor(other * lines.length)
  const line = lines[here] ?? ''
  const rewritten = (changed: string) => lines.with(here, changed).join('\n')
  const words = line.split(' ')
  const nth = Math.floor(other * words.length)
  switch (kind) {
    case 'drop a line':
      return lines.toSpliced(here, 1).join('\n')
    case 'say a line twice':
      return lines.toSpliced(there, 0, line).join('\n')
    case 'swap two lines':
      return lines
        .with(here, lines[there] ?? '')
        .with(there, line)
        .join('\n')
    case 'drop a word':
      return rewritten(words.toSpliced(nth, 1).join(' '))
    case 'put a word in':
      return rewritten(words.toSpliced(nth, 0, word).join(' '))
    case 'put a word for another':
      return rewritten(words.with(nth, word).join(' '))
    case 'take a word from elsewhere':
      return rewritten(words.with(nth, (lines[there] ?? '').trim().split(' ')[0] ?? '').join(' '))
    case 'move a margin':
      return rewritten(`${' '.repeat(Math.floor(other * 9))}${line.trimStart()}`)
    case 'cut the text off':
      return text.slice(0, Math.floor(at * text.length))
    case 'change a letter': {
      const place = Math.floor(at * text.length)
      return text.slice(0, place) + String.fromCharCode(32 + Math.floor(other * 95)) + text.slice(place + 1)
    }
  }
}
