/** Shares and rates by which loads are taken. All are common practice, no source; `load.md` tells them in words. */

/** Of its weight that a load asks for more, to be started and kept moving. */
export const hoisting = 1.3
/** Cloth that is wet weighs so much more than dry. */
export const wet = 1.4
/** Ironwork, blocks and gear on a yard, as a share of its weight. */
export const fittings = 0.1
/** Newtons a square metre: cloth that shakes and slides while it is hoisted, lowered or gathered. */
export const handling = 10
/** Of the force of its sail, that the parrel and the halyard feel of a yard while it is hoisted. */
export const parrel = 0.05
/** Of the force of a sail, on one corner of its foot. */
export const clew = { square: 0.38, triangular: 0.45, boomed: 0.4 } as const
/** Of the force of a sail set on a stay or a topmast, on its halyard and its tack when the luff is hard. */
export const luff = 0.8
/** Of the force of a gaff sail, on its throat and its peak halyard beside the weight they carry. */
export const gaffHalyard = 0.3
/** Of the force of a sail, on the outhaul of one corner. */
export const outhaul = 0.4
/** Of the force of its sail, on one brace or vang. */
export const brace = 0.2
/** Of the force of a boomed sail, on the guy that holds its boom forward. */
export const guy = 0.4
