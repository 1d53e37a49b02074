import {
  type Figure,
  known,
  type Metres,
  type Newtons,
  newtons,
  units,
  workedFrom,
} from '../../measure/index.ts'
import {
  type Assumptions,
  byRule,
  capstan,
  handsAt,
  handsFor,
  heldByTurns,
  holdingRatio,
  lengthsBy,
  mastsBySevenths,
  proportions,
  pullRatio,
  rulesOfThumb,
  shareLeft,
  strengthOf,
  type Tackle,
  thicknessBy,
  thicknessFor,
} from '../../reckon/index.ts'
import { nothing, type Table, words } from '../table.ts'
import { caution } from './lines.ts'
import { cell, column, plainNumber, type Shown } from './units.ts'

/** A tackle reckoned without a rig. */
export interface TackleByHand {
  readonly said: string
  readonly tackle: Tackle
  readonly load: Newtons
  readonly leads: number
  readonly material: string
}

const kilonewtons: Shown = { unit: 'kN', si: units.kN.si, decimals: 2 }
const fibreFactor = 6

/** What a tackle makes of a load: pull, hands, and the rope that it asks for. */
export function tackleTable(
  { said, tackle, load, leads, material }: TackleByHand,
  assumptions: Assumptions,
): Table {
  const { friction, hands } = assumptions
  const ratio = pullRatio(tackle, leads, friction)
  const pull = workedFrom([ratio], ratio => newtons(load * ratio))
  const onPull = (next: (pull: Newtons) => Figure<number>) => (pull.known ? next(pull.value) : pull)
  const rows: readonly (readonly [string, Figure<number>, Shown])[] = [
    ['Load', known(load), kilonewtons],
    ['Parts at the moving block, the power without friction', known(tackle.advantage), plainNumber(0)],
    ['Sheaves, leads with them', known(tackle.sheaves + leads), plainNumber(0)],
    ['Pull on the fall', pull, kilonewtons],
    ['Pull that holds it', known(load * holdingRatio(tackle, leads, friction)), kilonewtons],
    [
      'The same, with a turn and a half round a pin',
      known((load * holdingRatio(tackle, leads, friction)) / heldByTurns(1.5)),
      kilonewtons,
    ],
    [
      'Of the power, useful',
      workedFrom([ratio], ratio => 1 / (ratio * tackle.advantage)),
      { unit: '%', si: 0.01, decimals: 0 },
    ],
    ['Rope hauled for a metre', known(tackle.advantage), { unit: 'm', si: 1, decimals: 0 }],
    ['Hands', onPull(pull => handsFor(pull, hands)), plainNumber(0)],
    ['Hands at a capstan', onPull(pull => handsAt(capstan, pull, hands.hand)), plainNumber(0)],
    [
      `Rope of ${material}, a sixth of its strength, at least`,
      onPull(pull => thicknessFor(material, newtons((pull * fibreFactor) / shareLeft(assumptions)))),
      { unit: 'mm', si: 0.001, decimals: 0 },
    ],
  ]
  return {
    id: 'tackle',
    title: said,
    columns: [column('figure'), column('value'), column('unit')],
    rows: rows.map(([name, figure, shown]) => [words(name), cell(figure, shown), words(shown.unit)]),
    notes: [
      `Friction of ${friction.share * 100} % a sheave, ${friction.model}; ${hands.hand} N a hand.`,
      caution,
    ],
  }
}

/** What a rope breaks at by its table, and beside it what rules of thumb would make of it. */
export function ropeTable(material: string, diameter: Metres, assumptions: Assumptions): Table {
  const strength = strengthOf(material, diameter)
  const breaking = workedFrom([strength], ({ breaking }) => breaking)
  const left = workedFrom([breaking], breaking => breaking * shareLeft(assumptions))
  const row = (name: string, figure: Figure<number>, source: string) => [
    words(name),
    cell(figure, kilonewtons),
    words(source),
  ]
  return {
    id: 'rope',
    title: `${material}, ${(diameter * 1000).toFixed(1)} mm`,
    columns: [column('figure'), column('load', kilonewtons), column('source')],
    rows: [
      row('Breaks at', breaking, strength.known ? strength.value.source : ''),
      row(`${assumptions.end}, ${assumptions.age}`, left, ''),
      row(
        'A sixth of that',
        workedFrom([left], left => left / fibreFactor),
        "Nicholls's Seamanship, p. 346",
      ),
      [words('Rules of thumb, for comparison only:'), nothing, nothing],
      ...rulesOfThumb
        .filter(rule => isOf(material, rule.name))
        .map(rule => row(rule.name, known(byRule(rule, diameter)), rule.source)),
    ],
    notes: [caution],
  }
}

/** Whether a rule of thumb speaks of a material, or of any rope. */
const isOf = (material: string, rule: string): boolean =>
  ['any', ...material.toLowerCase().split(' ')].some(
    word => rule.startsWith(`${word} `) || rule.startsWith(`${word},`),
  )

/** What the rules in print make of a vessel's spars. */
export function proportionsTables(beam: Metres, length: Metres): readonly Table[] {
  const metresShown: Shown = { unit: 'm', si: 1, decimals: 2 }
  const millimetres: Shown = { unit: 'mm', si: 0.001, decimals: 0 }
  const [fore, main, mizzen] = mastsBySevenths(length)
  return [
    ...proportions.map(rule => ({
      id: 'proportions',
      title: `Spars by the rule of a ${rule.name}`,
      columns: [column('spar'), column('length', metresShown), column('thickness', millimetres)],
      rows: [...lengthsBy(rule, { beam, length })].map(([spar, long]) => {
        const thick = thicknessBy(rule, spar, long)
        return [
          words(spar),
          cell(known(long), metresShown),
          thick === undefined ? nothing : cell(known(thick), millimetres),
        ]
      }),
      notes: [rule.source],
    })),
    {
      id: 'masts',
      title: 'Masts by sevenths of the length, from the stem',
      columns: [column('mast'), column('aft', metresShown)],
      rows: (
        [
          ['fore', fore],
          ['main', main],
          ['mizzen', mizzen],
        ] as const
      ).map(([mast, aft]) => [words(mast), cell(known(aft), metresShown)]),
      notes: ["R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847, ch. I", caution],
    },
  ]
}
