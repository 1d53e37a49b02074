import { type MetresPerSecond, metresPerSecond, type Radians, radians } from '../../measure/index.ts'

/** A wind as a ship has it: its speed, and how far off the bow it comes from, positive to starboard. */
export interface ShipWind {
  readonly speed: MetresPerSecond
  readonly angle: Radians
}

/** The wind felt aboard, from the true wind off the bow and the ship's speed: the triangle of velocities. */
export const apparentWind = ({ speed, angle }: ShipWind, ship: MetresPerSecond): ShipWind =>
  fromParts(speed * Math.cos(angle) + ship, speed * Math.sin(angle))

/** The true wind off the bow, from the wind felt aboard and the ship's speed. */
export const trueWind = (felt: ShipWind, ship: MetresPerSecond): ShipWind =>
  fromParts(felt.speed * Math.cos(felt.angle) - ship, felt.speed * Math.sin(felt.angle))

const fromParts = (ahead: number, abeam: number): ShipWind => ({
  speed: metresPerSecond(Math.hypot(ahead, abeam)),
  angle: radians(Math.atan2(abeam, ahead)),
})
