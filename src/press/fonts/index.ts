export { type FaceFile, faceFiles } from './faces.ts'
export { type Fonts, loadFonts, type ParsedFont } from './load-fonts.ts'
export { featuresOf } from './shape.ts'
