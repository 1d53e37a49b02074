/**
 * Words as they can be printed: one line of well-formed Unicode. What no paper can show (controls, line
 * ends, marks that turn the direction of reading, halves of a surrogate pair) becomes a space, a
 * replacement character, or nothing; so do accents heaped on one letter, beyond the eighth. The ruler, the SVG and the PDF all set words through this, so a
 * name written to break a file breaks none, and is measured as it is drawn.
 */
export function printable(words: string): string {
  if (/^[\x20-\x7e]*$/.test(words)) return words
  return words
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .replace(/[\t\n\v\f\r\u0085\u2028\u2029]/g, ' ')
    .replace(unseen, '')
    .normalize('NFC')
    .replace(/(\p{M}{8})\p{M}+/gu, '$1')
}

// Controls and noncharacters are not allowed in XML; the others shape nothing in our faces, and a direction
// override in a name would print it, and all after it, backwards.
const unseen = /[\p{Cc}\p{Default_Ignorable_Code_Point}\p{Noncharacter_Code_Point}\ufff9-\ufffb]/gu
