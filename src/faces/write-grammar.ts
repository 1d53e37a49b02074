import { writeFileSync } from 'node:fs'
import { ebnf } from '../syntax/index.ts'

/** Writes the grammar's reference anew from the parser. */
writeFileSync(new URL('../../grammar/crosstree.ebnf', import.meta.url), ebnf())
