/** A vessel of about so many lines: masts with a headsail and a rail each, and every line belayed, as often as need be. */
export function longText(lines: number): string {
  const blocks = Math.max(1, Math.round((lines - head.length) / blockOf(0).length))
  return [...head, ...Array.from({ length: blocks }, (_, i) => blockOf(i)).flat(), ''].join('\n')
}

const head = ['edition 1', 'bring in standard gear', '', 'vessel Long Tally', '  cutter', '']

/** One mast of hers with all that hangs on it; its name is made of letters, for figures in names mean pins. */
function blockOf(index: number): readonly string[] {
  const name = nameOf(index)
  const at = 3 + index * 3
  const metres = (figure: number) => `${figure.toFixed(2)} m aft`
  return [
    'masts',
    `  ${name} mast, stepped ${metres(at)} 0.80 m up`,
    '    lower mast to 11.00 m up',
    'stays',
    `  ${name} stay from ${metres(at + 0.1)} 9.50 m up to ${metres(at - 2.8)} 1.40 m up`,
    'sails',
    `  ${name} jib, headsail on ${name} stay`,
    `    tack ${metres(at - 2.6)} 1.70 m up, head ${metres(at - 0.2)} 8.60 m up, clew ${metres(at - 0.1)} 1.90 m up`,
    '    gear jib',
    `      fairlead at ${metres(at + 0.6)} 1.20 m out 1.10 m up`,
    'rails',
    `  ${name} rail, port and starboard, marked ${name.toUpperCase()}`,
    `    3 pins from ${metres(at)} 1.30 m out to ${metres(at + 0.6)} 1.30 m out, 1.20 m up`,
    `belay on ${name} rail`,
    `  1  port ${name} jib halyard, starboard ${name} jib downhaul`,
    `  2  ${name} jib sheet`,
    '  3  free',
    '',
  ]
}

/** A word of consonant and vowel in turn, another for each number: 'baba', 'baca'. */
function nameOf(index: number): string {
  const consonants = 'bcdfgklmnpqrtvwz'
  const vowels = 'aeo'
  let left = index
  let word = ''
  for (let syllable = 0; syllable < 3; syllable++) {
    word = `${consonants[left % 16]}${vowels[Math.floor(left / 16) % 3]}${word}`
    left = Math.floor(left / 48)
  }
  return `q${word}`
}
