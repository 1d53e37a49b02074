export { type FaceFile, faceFiles } from './faces.ts'
export { type Features, featuresOf } from './features.ts'
export { type Fonts, loadFonts, type PdfFont } from './load-fonts.ts'
export { type MissingGlyphs, missingGlyphs } from './missing-glyphs.ts'
