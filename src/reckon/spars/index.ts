export {
  type Dimensions,
  lengthsBy,
  mastsBySevenths,
  type Proportions,
  proportions,
  thicknessBy,
} from './proportions.ts'
export { densityOf, sparMaterials } from './timber.ts'
export { sparLength, sparMass, taperedVolume } from './weight.ts'
