export { blockNames, purchaseOfBlocks } from './blocks.ts'
export { type Friction, type FrictionModel, holdingRatio, pullRatio } from './friction.ts'
export { capstan, type Engine, type HandForce, handsAt, handsFor } from './hands.ts'
export { joined, type Tackle, tackleOf } from './tackle.ts'
