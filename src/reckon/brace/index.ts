export { boomLimit } from './boom.ts'
export { type BracedYard, type Course, fanOf, fansOf, type MastBraced, windAloft } from './fan.ts'
export { type BraceLimit, braceLimit, limitOf, sharpestEver, usualLimit } from './limit.ts'
export { danasFan, fanByRule, fanStep, halfPoint, lowerYard } from './rule.ts'
