/** The words that open a page when they stand first at the margin. */
export const pageWords = [
  'edition',
  'bring',
  'vessel',
  'hull',
  'masts',
  'spars',
  'stays',
  'sails',
  'lines',
  'rails',
  'deck',
  'stations',
  'labels',
  'gear',
  'belay',
  'set',
  'allow',
  'lifted',
  'survey',
  'glossary',
  'canvas',
] as const

/**
 * The small words: they end a name, so a name that holds one is quoted. All other words are free for names.
 */
export const smallWords = [
  // where and to what
  ...[
    'at',
    'to',
    'from',
    'on',
    'in',
    'against',
    'through',
    'then',
    'with',
    'without',
    'like',
    'and',
    'by',
    'for',
    'abreast',
  ],
  // which way
  ...['aft', 'forward', 'up', 'below', 'above', 'down', 'out', 'port', 'starboard', 'athwart', 'round'],
  // how a thing is made and stands
  ...[
    'stepped',
    'raked',
    'doubled',
    'fixed',
    'sheeted',
    'shackled',
    'marked',
    'called',
    'short',
    'nicknamed',
    'conjectural',
    'numbered',
    'inspected',
    'hooped',
    'hanked',
    'laced',
    'reefs',
  ],
  // a line
  ...[
    'pair',
    'single',
    'rove',
    'travels',
    'shifts',
    'cut',
    'also',
    'not',
    'fits',
    'middled',
    'whipped',
    'coloured',
    'due',
  ],
  // what a line does
  ...[
    'hoists',
    'cocks',
    'tops',
    'spreads',
    'draws',
    'lowers',
    'raises',
    'gathers',
    'brings',
    'swings',
    'steadies',
  ],
  // people
  ...['works', 'takes', 'manned'],
] as const

/** Small words that take what follows them as plain prose, to the end of the line; 'when' and 'free for' to the next comma. */
export const proseWords = ['until', 'mind', 'because', 'answered by', 'aloft', 'when', 'free for'] as const

/** Words that mean something in their own place only, and are free for names everywhere else. */
export const placedWords = [
  ...['top', 'cringle', 'roach', 'yards', 'long', 'wide', 'thick', 'apart', 'each', 'side', 'be', 'given'],
  ...['set', 'douse', 'before', 'if', 'it', 'jams', 'answer', 'report', 'caution', 'cautions'],
  ...['haul', 'ease', 'hold', 'tend', 'let', 'go', 'stand', 'weather', 'lee', 'other', 'every', 'named'],
  ...['free', 'shared', 'walls'],
] as const

/**
 * Words that mean something only beside certain others: 'gear' and 'allow' first in their line, 'allow' before the name of a
 * check, 'pin' and 'number' before a number, 'over' and 'or' after 'fits', 'braces' before 'to' and an angle, 'reef' before 'in'.
 */
export const besideWords = ['gear', 'allow', 'pin', 'number', 'over', 'or', 'braces', 'reef'] as const

export type PageWord = (typeof pageWords)[number]
export type SmallWord = (typeof smallWords)[number]
export type PlacedWord = (typeof placedWords)[number]
export type BesideWord = (typeof besideWords)[number]
export type ProseWord = (typeof proseWords)[number]
