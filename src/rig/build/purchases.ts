import { nameKey, type Statement } from '../../syntax/index.ts'
import { nearest } from '../../text/index.ts'
import { purchaseNames, purchaseOf } from '../purchase.ts'
import { clausesOf } from './clauses.ts'
import { type Say, unknownName } from './say.ts'

/** Tells of what a line is said to be rove with, and the trade has no such purchase. */
export function sayUnknownPurchases(statement: Statement, say: Say): void {
  for (const name of clausesOf(statement, 'rove').flatMap(({ parts }) => parts)) {
    if (purchaseOf(nameKey(name.words))) continue
    const unknown = unknownName('purchase', name, purchaseNames)
    const isNear = nearest(name.words, purchaseNames).length > 0
    say(isNear ? unknown : { ...unknown, remedy: `Say one that is known: ${known}.` })
  }
}

const known = purchaseNames.join(', ')
