import type { Finding, Found } from '../../findings/index.ts'
import type { Rail, Rig } from '../../rig/index.ts'
import { ink } from '../ink.ts'
import { type RailView, railView } from '../rail-view.ts'
import type { Setting } from '../setting.ts'
import type { Mark, Sheet } from '../sheet.ts'
import { blankBoxes } from './blank.ts'
import { bandMarks, columnRules, pinColumn, rowMarks } from './columns.ts'
import { bandsOver, type StripPin, stripPins } from './content.ts'
import { divided } from './divide.ts'
import { type StripFrame, stripFrame } from './frame.ts'
import { type HeadWords, railTitle, stripFoot, stripHead } from './head.ts'
import { levelPlan } from './level.ts'
import type { PlanOf, StripPlan } from './plan.ts'
import { type PinState, pinOnPlank, plank } from './plank.ts'
import { turnedPlan } from './turned.ts'

/**
 * The strip of one rail: every place as it is seen by who faces it, with number, mark, letter, name, what the
 * haul does and what is eased with it. A rail too long for one sheet is divided at a sail's border over several.
 */
export function railStrips(rig: Rig, rail: Rail, setting: Setting): Found<readonly Sheet[]> {
  const { view, parts, frame } = layOut(rig, rail, setting)
  const sheets = parts.map((part, index) =>
    filled({ rig, rail, view, frame, setting, part, index, of: parts.length }),
  )
  return { value: sheets, findings: parts.flatMap(part => crowded(part.plan, rail)) }
}

/** The blank twin of a rail's strip, to be filled in: the same places to the millimetre, and nothing told. */
export function blankStrips(rig: Rig, rail: Rail, setting: Setting): Found<readonly Sheet[]> {
  const { view, parts, frame } = layOut(rig, rail, setting)
  const sheets = parts.map((part, index) =>
    blank({ rig, rail, view, frame, setting, part, index, of: parts.length }),
  )
  return { value: sheets, findings: [] }
}

interface Part {
  readonly pins: readonly StripPin[]
  readonly plan: StripPlan
  /** Its place in the row of sheets as the rail is seen: the ends that go on are broken. */
  readonly goesOn: { readonly left: boolean; readonly right: boolean }
}

function layOut(rig: Rig, rail: Rail, { paper, ruler }: Setting) {
  const view = railView(rail, rig)
  const frame = stripFrame(paper)
  const pins = stripPins(rail, view.leftToRight, rig)
  const planOf = (run: readonly StripPin[]): PlanOf => ({
    pins: run,
    bands: bandsOver(run, rail, rig),
    frame,
    ruler,
  })
  const parts = dividedUntilItFits(pins, planOf)
  const lowestFirst = [...parts].sort((a, b) => lowestNumber(a.pins) - lowestNumber(b.pins))
  return { view, frame, parts: lowestFirst }
}

const lowestNumber = (pins: readonly StripPin[]): number =>
  pins.reduce((least, pin) => Math.min(least, pin.place.number), Infinity)

/** As few sheets as hold the rail; a sheet of six pins that still does not fit is not divided further. */
function dividedUntilItFits(
  pins: readonly StripPin[],
  planOf: (run: readonly StripPin[]) => PlanOf,
): readonly Part[] {
  for (let count = 1; ; count += 1) {
    const runs = divided(pins, count)
    const plans = runs.map(run => bestPlan(planOf(run)))
    if (plans.every(plan => plan.fits) || pins.length / (count + 1) < 6) {
      return runs.map((run, index) => ({
        pins: run,
        plan: plans[index] as StripPlan,
        goesOn: { left: index > 0, right: index < runs.length - 1 },
      }))
    }
  }
}

/** Level under few pins, and then as large as it goes; turned under many. The last is taken where none fits. */
function bestPlan(of: PlanOf): StripPlan {
  const isFew = of.pins.length < 15
  const levels = isFew ? [25 / 15, 20 / 15, 1].map(scale => levelPlan(of, scale)) : []
  const fittingLevel = levels.find(plan => plan.fits)
  if (fittingLevel) return fittingLevel
  const large = turnedPlan(of, 20 / 15)
  return large.fits ? large : turnedPlan(of, 1)
}

interface SheetOf {
  readonly rig: Rig
  readonly rail: Rail
  readonly view: RailView
  readonly frame: StripFrame
  readonly setting: Setting
  readonly part: Part
  readonly index: number
  readonly of: number
}

function filled(sheet: SheetOf): Sheet {
  const { rail, part, frame, setting, view } = sheet
  const { plan, pins } = part
  const { ruler } = setting
  const used = pins.filter(pin => pin.lines.length > 0).length
  const words: HeadWords = { ...headWords(sheet), beside: `${counted(pins.length, 'place')}, ${used} in use` }
  const marks: readonly Mark[] = [
    ...stripHead(words, view, frame, setting),
    {
      kind: 'group',
      tag: { role: 'Artifact' },
      marks: [
        ...plank(plan, frame, part.goesOn),
        ...bandMarks(plan, ruler),
        ...columnRules(plan, frame),
        ...rowMarks(plan, frame, ruler),
      ],
    },
    {
      kind: 'group',
      tag: { role: 'L' },
      marks: pins.map((pin, index) =>
        pinColumn(
          plan,
          index,
          pin,
          numbered(plan, rail, pin, index, pin.lines.length > 0 ? 'in use' : 'free', ruler),
          ruler,
        ),
      ),
    },
    stripFoot(words, sheet.rig, plan.type.body.size, frame, setting),
  ]
  return { ...bare(sheet, ''), description: describe(sheet, 'as it is worked'), marks }
}

function blank(sheet: SheetOf): Sheet {
  const { rail, part, frame, setting, view } = sheet
  const { plan, pins } = part
  const { ruler } = setting
  const words: HeadWords = { ...headWords(sheet), beside: 'Write in each line; the filled strip is the key.' }
  const numbers = pins.map(pin => pin.place.pin)
  const marks: readonly Mark[] = [
    ...stripHead(words, view, frame, setting),
    {
      kind: 'group',
      tag: { role: 'Artifact' },
      marks: [...plank(plan, frame, part.goesOn), ...rowMarks(plan, frame, ruler)],
    },
    {
      kind: 'group',
      tag: { role: 'Figure', alt: describe(sheet, 'without names, to fill in') },
      marks: [
        ...pins.map(
          (pin, index): Mark => ({
            kind: 'group',
            id: pin.place.address,
            title: `${rail.code} ${pin.place.pin}`,
            marks: numbered(plan, rail, pin, index, 'not told', ruler),
          }),
        ),
        ...blankBoxes(plan, numbers, ruler),
      ],
    },
    stripFoot(
      { ...words, sheet: words.sheet === '' ? 'blank' : `blank: ${words.sheet}` },
      sheet.rig,
      plan.type.body.size,
      frame,
      setting,
    ),
  ]
  return { ...bare(sheet, '-blank'), description: describe(sheet, 'without names, to fill in'), marks }
}

const numbered = (
  plan: StripPlan,
  rail: Rail,
  pin: StripPin,
  index: number,
  state: PinState,
  ruler: Setting['ruler'],
) => pinOnPlank(plan, { x: plan.columns[index] ?? 0, number: pin.place.pin, kind: rail.kind, state }, ruler)

function headWords({ rig, rail, setting, index, of }: SheetOf): Omit<HeadWords, 'beside'> {
  const { sheetNumber } = setting
  const part = of > 1 ? `, ${index + 1} of ${of}` : ''
  return {
    code: rail.code,
    title: `${railTitle(rail)}${part}`,
    vessel: rig.vessel.name,
    // The parts of a divided rail share its number, as sheet 5.1 and 5.2: those that follow keep theirs.
    sheet: sheetNumber ? `sheet ${sheetNumber.n}${of > 1 ? `.${index + 1}` : ''} of ${sheetNumber.of}` : '',
  }
}

function bare({ rail, frame, index, of }: SheetOf, ending: string): Omit<Sheet, 'description' | 'marks'> {
  const part = of > 1 ? `-${index + 1}` : ''
  return {
    id: `rail-${rail.code}${part}${ending}`,
    title: `${rail.code} ${railTitle(rail)}${ending === '' ? '' : ', blank'}`,
    width: frame.width,
    height: frame.height,
    ground: ink.paper,
  }
}

function describe({ rig, rail, view, part }: SheetOf, how: string): string {
  const hand = view.bow === undefined ? '' : `, the bow to the ${view.bow}`
  return `${railTitle(rail)} of ${rig.vessel.name}, ${view.sentence}${hand}: ${counted(part.pins.length, 'place')} ${how}.`
}

const counted = (count: number, noun: string): string => `${count} ${count === 1 ? noun : `${noun}s`}`

function crowded(plan: StripPlan, rail: Rail): readonly Finding[] {
  if (plan.fits) return []
  return [
    {
      rule: 'sheet/strip-too-full',
      severity: 'warning',
      at: rail.span,
      message: `The ${railTitle(rail).toLowerCase()} has more to say than its strip holds; words end in "…".`,
      aboard: 'A name that is cut short can be taken for another.',
      remedy: 'Give the longest of its lines a short name, or write the rail as two.',
      related: [],
    },
  ]
}
