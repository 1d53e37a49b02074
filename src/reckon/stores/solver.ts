import type highs from 'highs'
import type { Solve } from './cutting.ts'

/**
 * The solver HiGHS, loaded when it is first asked; from one seed and within so many steps, not so much time, so that it
 * finds the same everywhere.
 */
export const solve: Solve = async model => {
  loaded ??= import('highs').then(module => (module.default as unknown as typeof highs.default)())
  const solution = (await loaded).solve(model, { output_flag: false, random_seed: 1, mip_max_nodes: 20_000 })
  const values = Object.entries(solution.Columns).map(
    ([name, column]) => [name, 'Primal' in column ? Number(column.Primal) : 0] as const,
  )
  return { values: new Map(values), bound: solution.Status === 'Optimal' ? solution.ObjectiveValue : 0 }
}

let loaded: ReturnType<typeof highs.default> | undefined
