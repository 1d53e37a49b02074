import { type IToken, Lexer } from 'chevrotain'
import { lexed } from './tokens.ts'

/** Cuts a text into marks, words, numbers, quoted words and prose; it knows neither margins nor small words. */
export function lex(text: string): IToken[] {
  return theLexer().tokenize(text).tokens
}

// Made when first needed, and then kept: it holds nothing of the texts it has cut.
let made: Lexer | undefined
function theLexer(): Lexer {
  made ??= new Lexer(lexed, { positionTracking: 'onlyOffset', skipValidations: true })
  return made
}
