/** Shares and rates by which loads are taken. All are common practice, no source; `load.md` tells them in words. */

/** Of its weight that a load asks for more, to be started and kept moving. */
export const hoisting = 1.3
/** Cloth that is wet weighs so much more than dry. */
export const wet = 1.4
/** Of its weight on one lift, what cocks a yard that lies balanced on its slings or its truss. */
export const balanced = 0.25
/** Ironwork, blocks and gear on a yard, as a share of its weight. */
export const fittings = 0.1
/** Newtons a square metre: cloth that shakes and slides while it is hoisted or gathered. */
export const handling = 10
/** Of that, what is left to a downhaul: the weight of what comes down helps. */
export const lowering = 0.5
/** Of the weight and the shaking of a sail, on one line that lifts a corner of it; that hauls one in along a spar. */
export const corner = { raised: 0.5, triced: 0.25, reefed: 0.25, broughtIn: 0.25 } as const
/** Of the same, on all lines together that gather it: the other half hangs from what it is bent to. */
export const gathering = 0.5
/** Of what a guy bears of the wind, while it is hauled before the sail draws. */
export const beforeItDraws = 0.5
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
/** Of the force of a lug, on its halyard and its tack. */
export const lug = 0.4
/** Of the force of its sail, on one brace. */
export const brace = 0.2
/** Of the force of its sail, on a line that stretches its luff or its leech. */
export const bowline = 0.1
/** Of the force of its sail, on one vang. */
export const vang = 0.1
/** Of the force of a boomed sail, on the guy that holds its boom forward. */
export const guy = 0.4
