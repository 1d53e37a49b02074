export { jsonFigures } from './json.ts'
