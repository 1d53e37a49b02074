export { ebnf, ebnfOf } from './ebnf.ts'
export { type FilePlace, type Files, type Gathered, gather, type Reading } from './gather.ts'
export { type GrammarPart, type GrammarRule, grammarRules } from './grammar.ts'
export { nameKey } from './names.ts'
export { unreadPage } from './page-word.ts'
export { parse } from './parse.ts'
export { type Piece, type TextLine, textLines } from './text-lines.ts'
export type {
  Act,
  Berth,
  CarriedSail,
  Clause,
  Count,
  Deed,
  Dimension,
  Direction,
  Measure,
  Name,
  Page,
  PageKind,
  Place,
  Reference,
  Side,
  Statement,
  StatementKind,
  Step,
  Tree,
  Words,
} from './tree.ts'
export { pageWords, placedWords, proseWords, smallWords } from './words.ts'
