import type { Finding } from '../../findings/index.ts'
import type { Rig } from '../../rig/index.ts'

/** What one plan draws at the most: far more than any ship has, so that a runaway text is drawn in bounded time. */
const most = { sails: 60, masts: 20, spars: 250, standing: 250, deck: 250 } as const
type Listed = keyof typeof most
const lists: readonly Listed[] = ['sails', 'masts', 'spars', 'standing', 'deck']

/** The rig with no more than a plan can hold, and what is said of the rest. */
export function withinReason(rig: Rig): { readonly rig: Rig; readonly findings: readonly Finding[] } {
  const long = lists.filter(list => rig[list].length > most[list])
  if (long.length === 0) return { rig, findings: [] }
  const { sails, masts, spars, standing, deck } = rig
  return {
    rig: {
      ...rig,
      sails: sails.slice(0, most.sails),
      masts: masts.slice(0, most.masts),
      spars: spars.slice(0, most.spars),
      standing: standing.slice(0, most.standing),
      deck: deck.slice(0, most.deck),
    },
    findings: long.map(list => tooMany(rig, list)),
  }
}

const words: Readonly<Record<Listed, string>> = {
  sails: 'sails',
  masts: 'masts',
  spars: 'spars',
  standing: 'stays and shrouds',
  deck: 'things on deck',
}

const tooMany = (rig: Rig, list: Listed): Finding => ({
  rule: 'sheet/too-many',
  severity: 'warning',
  at: rig[list][most[list]]?.span ?? rig.vessel.span,
  message: `The rig has ${rig[list].length} ${words[list]}, and the sail plan draws the first ${most[list]}.`,
  related: [],
})
