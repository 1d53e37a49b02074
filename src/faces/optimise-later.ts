/**
 * V8's option to optimise code four times later than by default: most checks are over before the work of it would pay.
 * V8 tells an option that it doesn't know on the terminal, so only versions that were tried have one.
 */
export function optimiseLater(v8: string): string | undefined {
  switch (Number.parseInt(v8, 10)) {
    case 11:
      return '--interrupt-budget=500000'
    case 12:
    case 13:
      return '--invocation-count-for-turbofan=12000'
    default:
      return undefined
  }
}

/**
 * The same for papers, later still: two threads press them, each with code of its own, and where there are two
 * processors, what optimises is in their way.
 */
export function optimiseLaterStill(v8: string): string | undefined {
  return Number.parseInt(v8, 10) === 11 ? '--interrupt-budget=2000000' : undefined
}
