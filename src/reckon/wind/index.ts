export { windPressure } from './pressure.ts'
