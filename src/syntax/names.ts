/**
 * The key by which names are compared: 'Fore upper-topsail' and 'fore.upper topsail' are one name.
 * Unicode composition, letter case, the kind of apostrophe and 'the' make no difference; dots, hyphens and blanks are alike.
 */
export function nameKey(words: string): string {
  return isKey(words) ? words : keyOf(words)
}

/** Most names are asked for again and again, and are keys already; a pattern would take thrice as long to tell. */
function isKey(words: string): boolean {
  let inWord = false
  for (let i = 0; i < words.length; i++) {
    const code = words.charCodeAt(i)
    const isOfWord = (code >= 97 && code <= 122) || (code >= 48 && code <= 57) || code === 39
    if (!isOfWord && !(code === 32 && inWord)) return false
    inWord = isOfWord
  }
  return inWord && !(words.includes('the') && /(?:^| )the(?: |$)/.test(words))
}

function keyOf(words: string): string {
  return words
    .normalize('NFC')
    .toLowerCase()
    .replace(/[’ʼ]/g, "'")
    .split(/[\s.\u2010\u2011-]+/u)
    .filter(word => word !== '' && word !== 'the')
    .join(' ')
}
