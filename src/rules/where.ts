import type { Line, Rig } from '../rig/index.ts'
import type { Span } from '../text/index.ts'

/**
 * Where a line is to be looked for in the text. Most lines are said once in a gear and hung on many sails, so that
 * the gear's own page is no help to whoever seeks one of them: then it is the sail's entry, or the spar's.
 */
export function whereHung(rig: Rig, line: Line): Span {
  const host = hostSpan(rig, line)
  return !host || isSaidUnder(rig, host, line.span) ? line.span : host
}

/** Where a line's own words can be mended: its gear, unless that is a text brought in from elsewhere. */
export function whereSaid(rig: Rig, line: Line): Span {
  const host = hostSpan(rig, line)
  return host && host.source !== line.span.source ? host : line.span
}

/** The entry of the sail or spar that a line hangs on. */
export function hostSpan(rig: Rig, { host }: Line): Span | undefined {
  if (!host) return undefined
  return (host.kind === 'sail' ? rig.sailAt : rig.sparAt).get(host.name)?.span
}

/** Whether nothing else is declared between a sail or spar and a place after it. */
function isSaidUnder(rig: Rig, host: Span, span: Span): boolean {
  if (host.source !== span.source || span.start < host.start) return false
  const others = [rig.sails, rig.spars, rig.rails, rig.standing, rig.masts].flat()
  return !others.some(
    ({ span: other }) =>
      other.source === host.source && other.start > host.start && other.start <= span.start,
  )
}
