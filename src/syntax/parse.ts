import type { IToken } from 'chevrotain'
import type { Finding, Found } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import { keptLookahead } from './kept-lookahead.ts'
import { lex } from './lexer.ts'
import { setMargins } from './margin.ts'
import { foldFindings } from './messages.ts'
import { type ReadPages, RigParser } from './parser.ts'
import { hiddenIn, overLimit } from './preflight.ts'
import { soundReader } from './sound-reader.ts'
import type { Tree } from './tree.ts'
import { tellWords } from './wording.ts'

/** Reads a rig file. Any text at all gives a tree: what could be read stays in it, and a finding tells of the rest. */
export function parse(source: Source): Found<Tree> {
  const refused = overLimit(source)
  if (refused !== undefined) return { value: { source, pages: [] }, findings: [refused] }
  const before: Finding[] = hiddenIn(source)
  const words = tellWords(lex(source.text), source, before)
  const { pages, findings, stumbles } = read(source, setMargins(words, source, before))
  return { value: { source, pages }, findings: foldFindings(source, { before, inRules: findings, stumbles }) }
}

// Made when first needed, and then kept: the analysis of the grammar costs more than the reading of a file.
const made: { sound?: RigParser; whole?: RigParser } = {}

const whole = (): RigParser => (made.whole ??= new RigParser())

/** What was kept of the grammar's analysis is enough for a sound text. */
function read(source: Source, words: IToken[]): ReadPages {
  if (keptLookahead === undefined) return whole().read(source, words)
  made.sound ??= soundReader(keptLookahead)
  const reading = made.sound.read(source, words)
  return reading.stumbles.length === 0 ? reading : whole().read(source, words)
}
