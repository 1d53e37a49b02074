import type { Finding } from '../findings/index.ts'
import type { Allowance, Rig } from '../rig/index.ts'
import { nearest } from '../text/index.ts'
import { railAcross } from './across.ts'
import { rules } from './list.ts'
import { listed, railName } from './naming.ts'

/** A finding, with what an allowance may call it by. */
export interface Judged {
  readonly finding: Finding
  readonly about: readonly string[]
}

/** Faults of the text itself: something in it was not understood, and no reason makes it so. */
const faultsOfTheText = ['syntax', 'file', 'measure', 'name/unknown', 'name/twice', 'allow']

/**
 * Findings with those that the rig allows lowered to notes, each carrying the reason; and a note for every
 * allowance that nothing needs. None is left out.
 */
export function allowed(rig: Rig, judged: readonly Judged[]): readonly Finding[] {
  const needed = new Set<string>()
  const lowered = judged.map(({ finding, about }) => {
    const allowing = isFaultOfTheText(finding.rule)
      ? []
      : rig.allowances.filter(one => one.rule === finding.rule && concerns(one, about))
    for (const allowance of allowing) {
      for (const thing of allowance.things) if (about.includes(thing)) needed.add(keyOf(allowance, thing))
      needed.add(keyOf(allowance))
    }
    const [allowance] = allowing
    return allowance ? lower(finding, allowance) : finding
  })
  return [...lowered, ...rig.allowances.flatMap(allowance => unneeded(rig, allowance, needed))]
}

const isFaultOfTheText = (rule: string) =>
  faultsOfTheText.some(fault => rule === fault || rule.startsWith(`${fault}/`))

const concerns = ({ things }: Allowance, about: readonly string[]) =>
  things.length === 0 || things.some(thing => about.includes(thing))

const keyOf = ({ span }: Allowance, thing = '') => `${span.source} ${span.start} ${thing}`

/** What to do is said no more: the reason stands in its place. */
function lower({ remedy: _, fix: __, ...finding }: Finding, { because, span }: Allowance): Finding {
  return {
    ...finding,
    severity: 'note',
    message: `${finding.message} Allowed because ${because.replace(/\.$/, '')}.`,
    related: [...finding.related, { at: span, message: 'it is allowed here' }],
  }
}

function unneeded(rig: Rig, allowance: Allowance, needed: ReadonlySet<string>): readonly Finding[] {
  if (isJudgedElsewhere(rig, allowance)) return []
  const things = allowance.things.filter(
    thing =>
      // A rail said without a side is both; it is enough that one of them needs it.
      !alike(rig, thing).some(one => needed.has(keyOf(allowance, one))),
  )
  if (needed.has(keyOf(allowance)) && (allowance.beside || things.length === 0)) return []
  return [
    {
      rule: 'allow/matches-nothing',
      severity: 'note',
      at: allowance.span,
      message: messageOf(allowance, allowance.beside ? [] : things.map(thing => nameOf(rig, thing))),
      remedy: remedyOf(allowance),
      related: [],
    },
  ]
}

/** What only a whole vessel shows isn't looked for in a part of one. */
const isJudgedElsewhere = (rig: Rig, { rule }: Allowance) =>
  !rig.isVessel && rules.some(({ slug, judges }) => slug === rule && judges === 'vessels')

function alike(rig: Rig, thing: string): readonly string[] {
  const rail = rig.railAt.get(thing)
  const across = rail && railAcross(rig, rail)
  return across ? [thing, across.code] : [thing]
}

/** A thing as a sentence calls it, from the address or code that the allowance holds. */
function nameOf(rig: Rig, thing: string): string {
  const rail = rig.railAt.get(thing)
  const [line] = rig.pairAt.get(thing) ?? []
  return `the ${rail ? railName(rail) : (line?.words ?? thing)}`
}

function messageOf({ rule, beside }: Allowance, things: readonly string[]): string {
  if (isFaultOfTheText(rule)) return `A fault of the text can't be allowed: ${rule} has to be mended.`
  const where = things.length > 0 ? ` for ${listed(things)}` : beside ? ' here' : ''
  return `Nothing is found by ${rule}${where}, and nothing need be allowed.`
}

function remedyOf({ rule }: Allowance): string {
  const slugs = rules.map(one => one.slug)
  if (isFaultOfTheText(rule) || slugs.includes(rule)) return 'Leave the allowance out.'
  const near = nearest(rule, slugs)
  return near.length > 0
    ? `There is no check of that name; nearest: ${near.join(', ')}.`
    : 'Leave the allowance out, or mend the name of the check: "crosstree explain" lists them all.'
}
