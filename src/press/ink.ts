/** An ink as both presses write it. Anything but '#rrggbb' is a fault of the drawing. */
export function hex(ink: string): string {
  if (!/^#[0-9a-f]{6}$/i.test(ink)) throw new Error(`A sheet holds an ink that is no colour: ${ink}`)
  return ink.toLowerCase()
}
