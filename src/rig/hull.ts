import type { Metres } from '../measure/index.ts'
import type { Span } from '../text/index.ts'

/** A point of the profile: x aft of the forward perpendicular, z above the waterline. */
export interface ProfilePoint {
  readonly x: Metres
  readonly z: Metres
}

/**
 * The hull's profile from some twenty numbers, each undefined where the text is silent: the sheet then
 * draws it by rule. Heights above the waterline, x aft of the forward perpendicular, in metres.
 */
export interface Hull {
  readonly lowestSheer: ProfilePoint | undefined
  readonly bowSheer: Metres | undefined
  readonly sternSheer: Metres | undefined
  readonly bulwark: Metres | undefined
  readonly stemHead: ProfilePoint | undefined
  readonly billet: ProfilePoint | undefined
  /** Where the forefoot meets the keel. */
  readonly forefoot: Metres | undefined
  /** How much deeper the keel is aft than forward. */
  readonly keelDrag: Metres | undefined
  readonly sternpost: Metres | undefined
  readonly knuckle: ProfilePoint | undefined
  readonly taffrail: ProfilePoint | undefined
  readonly dolphinStriker: ProfilePoint | undefined
  readonly forecastle:
    | { readonly from: Metres; readonly to: Metres; readonly deck: Metres; readonly rail: Metres | undefined }
    | undefined
  readonly span: Span
}
