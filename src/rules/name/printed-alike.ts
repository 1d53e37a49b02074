import type { Line } from '../../rig/index.ts'
import { aboutLine, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { whereHung } from '../where.ts'

/** Two lines that are printed under one name. */
export const printedAlike: Rule = {
  slug: 'name/printed-alike',
  severity: 'warning',
  judges: 'vessels and parts',
  *judge({ rig }) {
    const first = new Map<string, Line>()
    for (const lines of rig.pairAt.values()) {
      const [line] = lines
      if (!line) continue
      const key = line.label.normalize('NFC').toLowerCase()
      const other = first.get(key)
      if (!other) {
        first.set(key, line)
        continue
      }
      yield {
        at: whereHung(rig, line),
        message: `${sentence(line.words)} and the ${other.words} are both printed as "${line.label}".`,
        aboard: 'On the charts and in the handbook nobody can tell which of the two is meant.',
        remedy: 'Give one of them another name with "called".',
        related: [{ at: whereHung(rig, other), message: `the ${other.words} is said here` }],
        about: [...aboutLine(line), ...aboutLine(other)],
      }
    }
  },
}
