export { elementId } from './identify.ts'
export { toSvg } from './to-svg.ts'
