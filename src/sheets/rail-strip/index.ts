export { blankStrips, railStrips } from './strips.ts'
