/**
 * The key by which names are compared: 'Fore upper-topsail' and 'fore.upper topsail' are one name.
 * Unicode composition, letter case, the kind of apostrophe and 'the' make no difference; dots, hyphens and blanks are alike.
 */
export function nameKey(words: string): string {
  return words
    .normalize('NFC')
    .toLowerCase()
    .replace(/[’ʼ]/g, "'")
    .split(/[\s.\u2010\u2011-]+/u)
    .filter(word => word !== '' && word !== 'the')
    .join(' ')
}
