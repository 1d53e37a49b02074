import type { Line, Rig } from '../rig/index.ts'
import type { Span } from '../text/index.ts'
import { listed } from './naming.ts'
import { whereSaid } from './where.ts'

/** Lines of one gear, hung on several sails, that share a fault: it stands once in the text and is told once. */
export interface HungAlike {
  readonly at: Span
  readonly first: Line
  readonly others: readonly Line[]
}

/** Lines sorted by where they are said, in the order of the rig; the two of a pair count as one. */
export function hungAlike(rig: Rig, lines: readonly Line[]): readonly HungAlike[] {
  const groups = new Map<string, { at: Span; lines: Map<string, Line> }>()
  for (const line of lines) {
    const at = whereSaid(rig, line)
    const key = `${at.source} ${at.start} ${line.labelOnSail}`
    const group = groups.get(key) ?? { at, lines: new Map() }
    groups.set(key, group)
    if (!group.lines.has(line.pairKey)) group.lines.set(line.pairKey, line)
  }
  return [...groups.values()].flatMap(group => {
    const [first, ...others] = group.lines.values()
    return first ? [{ at: group.at, first, others }] : []
  })
}

const told = 3

/** A second sentence for the others: ' So are the outer jib halyard and the jib halyard.' Empty where there is none. */
export function soOthers(others: readonly Line[], word: string): string {
  if (others.length === 0) return ''
  const names = others.slice(0, told).map(({ words }) => `the ${words}`)
  const more = others.length > told ? [`${others.length - told} more`] : []
  return ` So ${word} ${listed([...names, ...more])}.`
}
