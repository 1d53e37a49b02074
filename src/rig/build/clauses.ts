import type { Clause, Statement } from '../../syntax/index.ts'

type KindOf<K extends Clause['kind']> = Extract<Clause, { readonly kind: K }>

/** The last clause of a kind that a statement says: saying it again replaces it. */
export function clause<K extends Clause['kind']>(
  { clauses }: { readonly clauses: readonly Clause[] },
  kind: K,
): KindOf<K> | undefined {
  for (let i = clauses.length - 1; i >= 0; i--) if (clauses[i]?.kind === kind) return clauses[i] as KindOf<K>
  return undefined
}

/** All clauses of a kind, in the order said. */
export function clausesOf<K extends Clause['kind']>(
  { clauses }: { readonly clauses: readonly Clause[] },
  kind: K,
): readonly KindOf<K>[] {
  return clauses.filter((one): one is KindOf<K> => one.kind === kind)
}

/** Whether an entry is marked as conjectural, not recorded but thought likely; and on whose word. */
export function conjectureOf(statement: Statement): {
  readonly conjectural: boolean
  readonly credited: string | undefined
} {
  const said = clause(statement, 'conjectural')
  return { conjectural: said !== undefined, credited: said?.by?.text }
}
