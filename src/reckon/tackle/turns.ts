/** Friction of rope on a wooden pin or post, as the problem in print has it. */
const onWood = 0.35

/** How many times its own pull a rope holds that has so many turns round a pin or a post (Euler and Eytelwein). */
export const heldByTurns = (turns: number): number => Math.exp(onWood * turns * 2 * Math.PI)
