import { fixed } from '../../measure/index.ts'
import type { Lead } from '../../reckon/index.ts'

/** Leads between which a vessel steers, as shares of the waterline: all sail set, and while it is being set. */
export const setRange = { low: 0.01, high: 0.12 } as const
export const settingRange = { low: -0.03, high: 0.15 } as const

export type Range = typeof setRange | typeof settingRange

/** The lead's share where it lies outside a range; undefined where it is within, or not known. */
export function outside({ share }: Lead, { low, high }: Range): number | undefined {
  return share.known && (share.value < low || share.value > high) ? share.value : undefined
}

/** A share as a finding says it: '6.2 %'. */
export const shownShare = (share: number): string => `${fixed(share * 100, 1)} %`
