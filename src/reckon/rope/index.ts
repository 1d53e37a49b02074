export { byRule, type RuleOfThumb, rulesOfThumb } from './rules-of-thumb.ts'
export { knowsMaterial, materials, type Strength, strengthOf, thicknessFor } from './strength.ts'
export { type Age, type End, shareLeft } from './wear.ts'
export { type KilogramsPerMetre, ropeWeight } from './weight.ts'
