/** How the end of a line is made fast to what it works: what of the strength that leaves. */
export type End = 'spliced' | 'figure-eight' | 'knotted'

/** A knot costs half, a figure-eight 35 % (lessons on cordage); a splice a tenth (from memory). */
const atEnd: Readonly<Record<End, number>> = { spliced: 0.9, 'figure-eight': 0.65, knotted: 0.5 }

/** How long a rope has served. */
export type Age = 'new' | 'in daily use' | 'old'

/** A third off for rope in daily use (A. B. Dyer, Handbook for Light Artillery, Cordage); half when old: common practice. */
const atAge: Readonly<Record<Age, number>> = { new: 1, 'in daily use': 2 / 3, old: 1 / 2 }

/** What is left of the breaking load of a new rope without knots, as a share. */
export const shareLeft = ({ end, age }: { readonly end: End; readonly age: Age }): number =>
  atEnd[end] * atAge[age]
