import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { editorGrammar, railroad } from '../press/reference/index.ts'
import { ebnf, grammarRules } from '../syntax/index.ts'

const grammar = new URL('../../grammar/', import.meta.url)
const railroads = new URL('railroads/', grammar)

/** Writes the grammar's reference anew from the parser: its EBNF, a railroad diagram for each rule, and what editors colour by. */
writeFileSync(new URL('crosstree.ebnf', grammar), ebnf())
writeFileSync(
  new URL('crosstree.tmLanguage.json', grammar),
  `${JSON.stringify(editorGrammar(), undefined, 2)}\n`,
)
rmSync(railroads, { recursive: true, force: true })
mkdirSync(railroads)
for (const rule of grammarRules()) writeFileSync(new URL(`${rule.name}.svg`, railroads), railroad(rule))
