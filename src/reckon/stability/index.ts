export {
  type Case,
  type Criterion,
  catamaran,
  deckEdgeArm,
  equalAreaArm,
  leastMetacentricHeight,
  notChecked,
  numeralOf,
  type SailingVesselCriteria,
  sailingVessel,
  type WeatherCase,
} from './criteria.ts'
export { type Heeling, heelingMoment, heelUnder, proofMoment } from './heel.ts'
export { heelOf, type SailsSet, type StabilityFigures, stabilityOf } from './of-vessel.ts'
export { areaTo, armAt, type Curve, curveOf, greatestAt, type RightingArm, rangeOf } from './righting.ts'
export {
  catamaranNumeral,
  leastRange,
  numeral,
  numerals,
  proofPressure,
  type Waters,
  weatherTerm,
} from './rules-in-print.ts'
export { sparAreas } from './spar-areas.ts'
