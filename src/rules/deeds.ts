import type { Line } from '../rig/index.ts'

/**
 * What lines do to a sail, judged by deed and object and not by the line's name: a ship may call her
 * clewlines what she likes. The object's last word counts: "yard" and "fore topsail yard" are the same deed.
 */
const does = (line: Line, verbs: readonly string[], objects: readonly string[]): boolean =>
  line.deed !== undefined && verbs.includes(line.deed.verb) && objects.includes(lastWord(line.deed.object))

const lastWord = (words: string) => words.slice(words.lastIndexOf(' ') + 1).toLowerCase()

const isForward = (line: Line) => line.deed?.direction === 'forward'

export const hoistsYard = (line: Line) => does(line, ['hoists'], ['yard'])
export const lowersYard = (line: Line) => does(line, ['lowers'], ['yard'])
export const swingsYard = (line: Line) => does(line, ['swings'], ['yard', 'yardarm'])
export const topsBoom = (line: Line) => does(line, ['tops'], ['boom']) || isLazyJack(line)

/** A running backstay. */
export const steadiesMast = (line: Line) => does(line, ['steadies'], ['mast', 'topmast'])

/** Keeps the boom up of itself, and is not hauled against anything. */
export const isLazyJack = (line: Line) => /\blazy jacks?$/.test(line.words)

export const hoistsThroat = (line: Line) => does(line, ['hoists'], ['throat', 'gaff'])
export const hoistsPeak = (line: Line) => does(line, ['hoists'], ['peak', 'gaff'])

/** A halyard of a sail, a yard or a gaff, as against one of a flag or a lantern. */
export const isHalyard = (line: Line) =>
  does(line, ['hoists'], ['yard', 'head', 'throat', 'peak', 'gaff', 'sail'])

export const hoistsHead = (line: Line) => does(line, ['hoists'], ['head', 'sail'])
export const lowersHead = (line: Line) => does(line, ['lowers'], ['head', 'sail'])

/** Brings the head down, or the tack or head in: a downhaul or an inhaul. */
export const getsHeadIn = (line: Line) =>
  does(line, ['lowers', 'brings'], ['head', 'tack', 'sail', 'gaff', 'yard', 'peak', 'clew'])

/** A clewline, a clewgarnet, an inhaul of the clew. */
export const raisesClew = (line: Line) => does(line, ['raises', 'brings'], ['clew', 'clews'])

/** Buntlines, leechlines, brails: gathers the cloth by an edge. A clewline may be said to gather its clew. */
export const gathers = (line: Line) => line.deed?.verb === 'gathers'

export const gathersClew = (line: Line) => does(line, ['gathers'], ['clew', 'clews'])

/** An outhaul: hauls a corner out along its spar. */
export const isOuthaul = (line: Line) =>
  lastWord(line.kind) === 'outhaul' || does(line, ['spreads'], ['peak', 'head'])

/** A sheet of the sail's clew, or of the boom its foot is on. */
export const sheetsClew = (line: Line) =>
  does(line, ['spreads', 'draws'], ['clew', 'clews']) && !isForward(line)
export const sheetsBoom = (line: Line) => does(line, ['draws'], ['boom']) && !isForward(line)

/** A sheet of a square sail, or a tack: what a clewline or a clewgarnet is hauled against. */
export const extendsClew = (line: Line) => does(line, ['spreads', 'draws'], ['clew', 'clews'])

/** The tack of a course: hauls the clew forward and down. */
export const drawsClewForward = (line: Line) => does(line, ['draws'], ['clew']) && isForward(line)

/** Whether it works the ship at all, as against a flag or a lantern. */
export const isWorkingGear = (line: Line) => line.deed?.verb !== 'hoists' || isHalyard(line)
