export { sailPlan } from './sail-plan.ts'
