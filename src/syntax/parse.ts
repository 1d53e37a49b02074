import type { Finding, Found } from '../findings/index.ts'
import type { Source } from '../text/index.ts'
import { lex } from './lexer.ts'
import { setMargins } from './margin.ts'
import { foldFindings } from './messages.ts'
import { RigParser } from './parser.ts'
import { hiddenIn, overLimit } from './preflight.ts'
import type { Tree } from './tree.ts'
import { tellWords } from './wording.ts'

/** Reads a rig file. Any text at all gives a tree: what could be read stays in it, and a finding tells of the rest. */
export function parse(source: Source): Found<Tree> {
  const refused = overLimit(source)
  if (refused !== undefined) return { value: { source, pages: [] }, findings: [refused] }
  const before: Finding[] = hiddenIn(source)
  const words = tellWords(lex(source.text), source, before)
  const { pages, findings, stumbles } = theParser().read(source, setMargins(words, source, before))
  return { value: { source, pages }, findings: foldFindings(source, { before, inRules: findings, stumbles }) }
}

// Made when first needed, and then kept: the analysis of the grammar costs more than the reading of a file.
let made: RigParser | undefined
function theParser(): RigParser {
  made ??= new RigParser()
  return made
}
