/**
 * These characters, each with the whole run of the alphabet that it comes from: who needs one small letter gets
 * them all. So the papers of a rig need few different subsets of a face, and each is made once.
 */
export function wholeRuns(characters: ReadonlySet<string>): ReadonlySet<string> {
  const all = new Set(characters)
  for (const run of runs)
    if (run.some(character => characters.has(character))) for (const character of run) all.add(character)
  return all
}

const runs: readonly (readonly string[])[] = [
  'abcdefghijklmnopqrstuvwxyz',
  'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
  '0123456789',
  ' .,:;()-–’“”·/',
].map(run => Array.from(run))
