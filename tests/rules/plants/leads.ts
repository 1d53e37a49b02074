import { vec3 } from 'gl-matrix'
import type { Point3 } from '../../../src/measure/index.ts'
import { type Line, onMast } from '../../../src/rig/index.ts'
import { type Notebook, type Planted, sailsIn, withLine, wordsAt } from '../notebook.ts'
import { thing } from './on-deck.ts'
import { anywhere, at, type Plant, type Plants, saying } from './plant.ts'

/** A stretch of a lead that stands clear of masts, yards and bowsprit, and is long enough to be crossed. */
interface Stretch {
  readonly line: Line
  readonly middle: Point3
  /** Across the stretch, upward, one metre long. */
  readonly across: readonly [number, number, number]
}

const perStretch =
  (rule: string, planted: (stretch: Stretch) => string): Plant =>
  book =>
    stretchesIn(book).map(stretch => anywhere(rule, `${book.lines.join('\n')}\n${planted(stretch)}`))

function stretchesIn({ rig }: Notebook): readonly Stretch[] {
  return rig.lines.flatMap(line => {
    const [pin, lead, next] = line.lead
    if (!pin || !lead || !next || pin.what !== 'belay') return []
    const [x, y, z] = [lead.at.x - pin.at.x, lead.at.y - pin.at.y, lead.at.z - pin.at.z]
    const [length, level] = [Math.hypot(x, y, z), Math.hypot(x, y)]
    const middle = {
      x: (pin.at.x + lead.at.x) / 2,
      y: (pin.at.y + lead.at.y) / 2,
      z: (pin.at.z + lead.at.z) / 2,
    } as Point3
    const isBesideMast = rig.masts.some(
      mast => Math.hypot((onMast(mast, middle.z)?.x ?? Number.POSITIVE_INFINITY) - middle.x, middle.y) < 1.6,
    )
    const isBesideYard = rig.spars.some(
      spar =>
        spar.kind === 'yard' &&
        spar.middle &&
        Math.hypot(spar.middle.x - middle.x, spar.middle.z - middle.z) < 3,
    )
    const isOverBowsprit = middle.x < 1
    if (length < 8 || level < 1 || isBesideMast || isBesideYard || isOverBowsprit) return []
    const across = [(-x * z) / level / length, (-y * z) / level / length, level / length] as const
    return [{ line, middle, across }]
  })
}

/** A place so far from a stretch's middle, straight across it. */
function place({ middle, across: [x, y, z] }: Stretch, far: number): string {
  const at = [middle.x + x * far, middle.y + y * far, middle.z + z * far] as const
  return `${written(at[0], 'aft', 'forward')} ${written(at[1], 'starboard', 'port')} ${written(at[2], 'up', 'below')}`
}

const written = (n: number, over: string, under: string): string =>
  `${Math.abs(n).toFixed(3)} m ${n < 0 ? under : over}`

/** Just above the pin, where every lead is low. */
const abovePin = (line: Line): Point3 | undefined => {
  const [pin, lead] = line.lead
  if (!pin || !lead || lead.at.z < pin.at.z + 1) return undefined
  const share = 0.25 / (lead.at.z - pin.at.z)
  const on = (axis: 'x' | 'y' | 'z') => pin.at[axis] + (lead.at[axis] - pin.at[axis]) * share
  return { x: on('x'), y: on('y'), z: on('z') } as Point3
}

/** Whether the lead from the pin keeps by a bowsprit, a boom or a gaff, where nobody goes below it. */
function liesAlongSpar({ lead: [pin, lead] }: Line, { rig }: Notebook): boolean {
  return rig.spars.some(spar => {
    if (spar.kind === 'yard' || !spar.inner || !spar.outer || !pin || !lead) return false
    const [inner, outer] = [vectorTo(spar.inner), vectorTo(spar.outer)]
    const way = vec3.sub(vec3.create(), outer, inner)
    return [pin, lead].every(({ at }) => {
      const share = vec3.dot(vec3.sub(vec3.create(), vectorTo(at), inner), way) / vec3.squaredLength(way)
      const nearest = vec3.scaleAndAdd(vec3.create(), inner, way, Math.min(1, Math.max(0, share)))
      return vec3.distance(vectorTo(at), nearest) < 1.5
    })
  })
}

const vectorTo = ({ x, y, z }: Point3) => vec3.fromValues(x, y, z)

const companionway: Plant = book =>
  book.rig.lines.flatMap(line => {
    const at = abovePin(line)
    const deck = book.rig.vessel.decks[0]?.height
    if (!at || deck === undefined || at.z - deck > 1.5) return []
    if (liesAlongSpar(line, book)) return []
    return [
      anywhere('lead/over-passage', `${book.lines.join('\n')}\n${thing('companionway', at, deck + 0.1)}`),
    ]
  })

const looseLine = (name: string, lead: string): string =>
  `  planted ${name} single, 14 mm spun polyester, rove single\n${lead}`

/** Pages that stand by themselves at the foot of any notebook. */
const page =
  (rule: string, text: string): Plant =>
  book => [anywhere(rule, `${book.lines.join('\n')}\n${text}`)]

const twisted = `rails
  planted rail, marked PZ
    2 pins from 0.00 m aft 2.00 m port to 0.40 m aft 2.00 m port, 3.00 m up
lines
${looseLine('first line', '    high block at 1.00 m aft 0.50 m port 9.00 m up\n    through high block to 2.00 m aft 0.50 m port 5.00 m up')}
${looseLine('second line', '    low block at 0.40 m aft 0.50 m port 9.00 m up\n    through low block to 2.00 m aft 0.60 m port 5.00 m up')}
belay on planted rail
  1  planted first line
  2  planted second line
`

const led = (places: readonly string[], what: string): string => `rails
  planted cleat at 0.00 m aft 2.00 m port 3.00 m up, marked PZ
lines
${looseLine(
  'line',
  `${places
    .map((at, i) => `    lead ${i + 1} ${what} at ${at}`)
    .join('\n')
    .replaceAll(/lead (\d)/g, (_, n) => ordinals[Number(n) - 1] ?? '')}
    through ${places.map((_, i) => `${ordinals[i]} ${what}`).join(' then ')} to 2.00 m aft 2.00 m port 6.00 m up`,
)}
belay planted line to planted cleat
`
const ordinals = ['first', 'second', 'third', 'fourth', 'fifth']

/** A hundred and twenty metres of fall for ten hands: no deck has room for that. */
const noRoom = `rails
  planted cleat at 1.00 m aft 2.00 m port 3.00 m up, marked PZ
lines
  planted halyard single, 20 mm spun polyester, rove threefold, 10 hands
    hoists yard, travels 20.00 m
    planted block at 1.00 m aft 2.00 m port 30.00 m up
    through planted block to 4.00 m aft 2.00 m port 6.00 m up
belay planted halyard to planted cleat
`

/** A block that a lead of the sail goes through, and whose place she says, given no more. */
const blockNotGiven: Plant = book =>
  sailsIn(book).flatMap(({ thing, entry, gear }) => {
    const led = book.rig.lines.filter(({ host, belay }) => host?.name === thing.name && belay?.at)
    const through = new Set(led.flatMap(({ lead }) => lead.map(({ what }) => what)))
    const planted: Planted[] = []
    // What is said like another keeps the other's place until a new one is said, and a masthead block its gear's.
    if (/ like /.test(wordsAt(book, entry))) return planted
    for (let line = gear + 1; /^ {6}/.test(wordsAt(book, line)); line++) {
      const [, block = ''] = /^ {6}((?!masthead)\w+ block) +at /.exec(wordsAt(book, line)) ?? []
      if (!through.has(block)) continue
      planted.push(at(entry, 'lead/to-be-given', withLine(book, line, `      ${block} to be given`)))
    }
    return planted
  })

/** Faults of where a line is led, and of how long it is cut. */
export const leads: Plants = {
  'a stay across a lead': perStretch(
    'lead/chafes-standing',
    stretch => `stays\n  planted stay from ${place(stretch, 2.5)} to ${place(stretch, -2.5)}\n`,
  ),
  'a line across a lead': perStretch(
    'lead/lines-cross',
    stretch => `rails
  planted cleat at ${place(stretch, -2.5)}, marked PZ
lines
${looseLine('line', `    planted block at ${place(stretch, 2.5)}\n    through planted block to ${place(stretch, 3.5)}`)}
belay planted line to planted cleat
`,
  ),
  'a house across a lead': perStretch('lead/through-house', ({ middle }) =>
    thing('house', middle, middle.z + 0.5),
  ),
  'a companionway under a lead': companionway,
  'two lines twisted aloft': page('lead/order-swaps', twisted),
  'a line nipped at a thimble': page(
    'lead/turns-sharply',
    led(['0.00 m aft 2.00 m port 9.00 m up'], 'thimble'),
  ),
  'a line round five blocks on deck': page(
    'lead/too-many-turns',
    led(
      [
        '1.00 m aft 2.00 m port 3.00 m up',
        '1.00 m aft 1.00 m port 3.00 m up',
        '2.00 m aft 1.00 m port 3.00 m up',
        '2.00 m aft 2.00 m port 3.00 m up',
        '3.00 m aft 2.00 m port 3.00 m up',
      ],
      'block',
    ),
  ),
  'a block whose place is not given': blockNotGiven,
  'a heavy halyard with no room to walk away': page('lead/no-walk-away', noRoom),
  'a halyard cut too short': saying('line/cut-short', 'halyard cut 4.00 m', hasHalyard),
  'a halyard cut too long': saying('line/cut-long', 'halyard cut 400.00 m', hasHalyard),
}

function hasHalyard({ name }: { readonly name: string }, { rig }: Notebook): boolean {
  return rig.lines.some(
    ({ host, kind, labelOnSail, leadUnknown }) =>
      host?.name === name && kind === 'halyard' && labelOnSail === 'Halyard' && leadUnknown === undefined,
  )
}
