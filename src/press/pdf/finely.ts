/** What is reckoned from rounded numbers, such as the handle of a curve or a cosine, to a millionth. */
export function finely(value: number): number {
  return Math.round(value * 1e6) / 1e6 || 0
}
