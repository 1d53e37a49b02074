/** A range of leads as a share of the waterline, with the convention it is told under. */
export interface LeadRange {
  readonly rig: string
  readonly low: number
  readonly high: number
  readonly source: string
}

const gerr = "D. Gerr, The Nature of Boats, second-hand; a yacht's whole sail plan"
const practice = 'common practice, no source; all plain sail, mizzen whole'

/**
 * Ranges to be shown beside a lead: the lead is of all sails whole, over the lateral plane that the text states.
 * A range of yachts says nothing against a traditional rig, and no finding is made of any.
 */
export const leadRanges: readonly LeadRange[] = [
  { rig: 'ship or barque', low: 0.03, high: 0.08, source: practice },
  { rig: 'brig', low: 0.04, high: 0.08, source: practice },
  { rig: 'topsail schooner', low: 0.06, high: 0.1, source: practice },
  { rig: 'gaff schooner', low: 0.07, high: 0.12, source: practice },
  { rig: 'gaff cutter', low: 0.02, high: 0.08, source: practice },
  { rig: 'yacht: schooner', low: 0.07, high: 0.12, source: gerr },
  { rig: 'yacht: ketch', low: 0.11, high: 0.14, source: gerr },
  { rig: 'yacht: yawl', low: 0.12, high: 0.15, source: gerr },
  { rig: 'yacht: sloop or cutter', low: 0.13, high: 0.17, source: gerr },
]
