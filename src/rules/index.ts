export { judge } from './judge.ts'
export { rules } from './list.ts'
export type { Draft, Rule, Ship } from './rule.ts'
