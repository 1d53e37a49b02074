export { hullLines } from './hull-lines.ts'
export { hullShape } from './hull-shape.ts'
export { sailPlan } from './sail-plan.ts'
export { type View, viewAt } from './view.ts'
