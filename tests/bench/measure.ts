/** The middle of some figures; of an even number of them, the upper of the two in the middle. */
export const median = (figures: readonly number[]): number =>
  [...figures].sort((a, b) => a - b)[Math.floor(figures.length / 2)] ?? Number.NaN

/** The processor time that a piece of work takes in this process, in milliseconds: other work on the machine hardly shows. */
export function worked(work: () => unknown): number {
  const start = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(start)
  return (user + system) / 1000
}

/** How long a piece of work takes, in milliseconds. */
export function timed(work: () => unknown): number {
  const start = performance.now()
  work()
  return performance.now() - start
}

/**
 * Medians of two pieces of work measured in turn, and of their ratios pair by pair: what else the machine does
 * then weighs on both alike.
 */
export function bareRatio(rounds: number, bare: () => number, ours: () => number) {
  const pairs = Array.from({ length: rounds }, () => ({ bare: bare(), ours: ours() }))
  return {
    bare: median(pairs.map(pair => pair.bare)),
    ours: median(pairs.map(pair => pair.ours)),
    ratio: median(pairs.map(pair => pair.ours / pair.bare)),
  }
}

/** '1,234 ms'. */
export const milliseconds = (time: number): string =>
  time < 10 ? `${time.toFixed(1)} ms` : `${String(Math.round(time)).replace(/\B(?=(\d{3})+$)/g, ',')} ms`

/** The slope of the straight line of least squares through points whose axes are both logarithmic. */
export function slopeOf(points: readonly { readonly x: number; readonly y: number }[]): number {
  const logs = points.map(({ x, y }) => ({ x: Math.log(x), y: Math.log(y) }))
  const mean = (pick: (point: { x: number; y: number }) => number) =>
    logs.reduce((sum, point) => sum + pick(point), 0) / logs.length
  const [middleX, middleY] = [mean(point => point.x), mean(point => point.y)]
  const along = logs.reduce((sum, { x, y }) => sum + (x - middleX) * (y - middleY), 0)
  return along / logs.reduce((sum, { x }) => sum + (x - middleX) ** 2, 0)
}
