export type { LineLoad } from './line-load.ts'
export { type LoadFigures, leastSafety, loadFigures } from './load-figures.ts'
export { sailForce } from './sail-force.ts'
export { type SailLoad, sailLoads } from './sail-load.ts'
