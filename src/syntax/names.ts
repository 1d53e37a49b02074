/**
 * The key by which names are compared: 'Fore upper-topsail' and 'fore.upper topsail' are one name.
 * Unicode composition, letter case, the kind of apostrophe and 'the' make no difference; dots, hyphens and blanks are alike.
 */
export function nameKey(words: string): string {
  return isKey(words) ? words : keyOf(words)
}

/** Most names are asked for again and again, and are keys already. */
const isKey = (words: string): boolean =>
  /^[a-z0-9']+(?: [a-z0-9']+)*$/.test(words) && !(words.includes('the') && /(?:^| )the(?: |$)/.test(words))

function keyOf(words: string): string {
  return words
    .normalize('NFC')
    .toLowerCase()
    .replace(/[’ʼ]/g, "'")
    .split(/[\s.\u2010\u2011-]+/u)
    .filter(word => word !== '' && word !== 'the')
    .join(' ')
}
