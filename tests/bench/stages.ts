// What is measured, as one bundle: tsx wraps every closure to keep its name, and users run none of that.
export { compile } from '../../src/compile.ts'
export { reckon } from '../../src/reckon/index.ts'
export { foulsOf } from '../../src/reckon/leads/index.ts'
export { buildRig } from '../../src/rig/index.ts'
export { reckoningRecord } from '../../src/sheets/reckoning/index.ts'
export { gather, parse } from '../../src/syntax/index.ts'
