import type { Finding } from '../findings/index.ts'
import { unreadPage } from '../syntax/index.ts'

/** Findings less those on unknown names, where a page that may give them is left out. What is surely a slip stands. */
export function withoutUnread(findings: readonly Finding[]): readonly Finding[] {
  const isUnread = findings.some(({ explains }) => explains?.includes(unreadPage))
  return isUnread ? findings.filter(({ rule, fix }) => fix || !ofNames.has(rule)) : findings
}

const ofNames: ReadonlySet<string> = new Set(['name/unknown', 'name/not-of-the-gear', 'belay/no-such-rail'])
