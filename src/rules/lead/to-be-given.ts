import type { Line } from '../../rig/index.ts'
import { put } from '../gear.ts'
import { manyAsOne } from '../many-as-one.ts'
import { aboutLine, listed, sentence } from '../naming.ts'
import type { Rule } from '../rule.ts'
import { hostSpan } from '../where.ts'

/** Places that a gear leaves to the vessel, and that she has not given: the leads through them are known no further. */
export const toBeGiven: Rule = {
  slug: 'lead/to-be-given',
  severity: 'note',
  judges: 'vessels',
  *judge({ rig }) {
    const byHost = new Map<string, Line[]>()
    for (const line of rig.lines) {
      if (line.belay?.at && placeOf(line)) put(byHost, line.host?.name ?? line.words, line)
    }
    for (const [host, lines] of byHost) {
      const [first] = lines
      if (!first) continue
      const places = [...new Set(lines.flatMap(line => placeOf(line) ?? []))]
      const leads = [...new Set(lines.map(({ labelOnSail }) => labelOnSail.toLowerCase()))]
      yield {
        at: hostSpan(rig, first) ?? first.span,
        message: `${sentence(host)} leaves the place of its ${listed(places)} to be given: its ${listed(leads)} ${leads.length > 1 ? 'are' : 'is'} neither drawn nor measured further than that.`,
        aboard: 'Rope is ordered by these lengths, and what the leads cross or chafe goes unseen.',
        remedy: `Say under its gear where ${places.length > 1 ? 'each' : 'it'} is: "${places[0]} at", and how far aft, how far out where it is on one side, and how far up.`,
        about: [host, ...lines.flatMap(aboutLine)],
      }
    }
  },
  together: drafts =>
    manyAsOne(drafts, {
      slips: 4,
      nameOf: ({ about: [host = ''] }) => host,
      nor: () => 'So do others',
    }),
}

/** What is to be given, where a lead stops for want of it: 'brace block', 'horse'. */
const placeOf = ({ leadUnknown }: Line): string | undefined =>
  /^(?:the place of the|its) (.+) is to be given$/.exec(leadUnknown ?? '')?.[1]
