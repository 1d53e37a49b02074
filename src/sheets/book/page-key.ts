/** The key of a sail's first page to set, or to douse. */
export const orderKey = (sail: string, kind: 'set' | 'douse'): string => `to ${kind} ${sail}`

/** The key of a line's row in the register, or of any place where it is told in full. */
export const lineKey = (pairKey: string): string => `line ${pairKey}`

/** The key of the chart that shows a rail. */
export const railKey = (code: string): string => `rail ${code}`

/** Keys of the pages that stand once in every book. */
export const pageKey = {
  cover: 'cover',
  use: 'use',
  cautions: 'cautions',
  glance: 'glance',
  answers: 'answers',
  register: 'register',
  index: 'index',
  revisions: 'revisions',
} as const
