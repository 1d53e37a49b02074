export { type Found, findLines, nearNames } from './find-lines.ts'
export { type LineName, namesOf } from './line-names.ts'
