import { type Figure, known, units, workedFrom } from '../../measure/index.ts'
import type { Criterion, Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { type Cell, nothing, type Table, words } from '../table.ts'
import { caution } from './lines.ts'
import { cell, column, plainNumber, type TableUnits } from './units.ts'

const thousandths = plainNumber(3)
const tenths = plainNumber(1)

/** What is asked of a vessel beside what she has. */
export const criterionColumns = ['criterion', 'has', 'asked', 'unit', 'met', 'mind'].map(name => column(name))

/** The printed criteria of a sailing vessel, what she has beside what is asked. Empty where her papers give nothing. */
export function stabilityTable({ vessel }: Rig, figures: Figures, { length }: TableUnits): Table {
  const { criteria, leastMetacentricHeight, heel } = figures.stability()
  const height: Figure<number> =
    vessel.metacentricHeight === undefined
      ? { known: false, because: 'Her metacentric height is not given.' }
      : known(vessel.metacentricHeight)
  const isAsked = vessel.stability.rightingArms.length > 0 || vessel.stability.waters !== undefined
  const numeral = (axis: 'x' | 'y' | 'z'): readonly Cell[] => {
    const name = `46 CFR 171.055, ${axis.toUpperCase()}`
    if (!criteria.known) return [words(name), cell(criteria, thousandths)]
    return judged(name, 'long tons/ft²', criteria.value[axis])
  }
  const range = workedFrom([criteria], ({ range }) => range)
  return {
    id: 'stability',
    title: 'Stability criteria, and heel',
    columns: criterionColumns,
    rows: isAsked
      ? [
          numeral('x'),
          numeral('y'),
          numeral('z'),
          judged('46 CFR 171.055, righting arm positive to', '°', range),
          [
            words('46 CFR 170.170, metacentric height'),
            cell(height, length),
            cell(leastMetacentricHeight, length),
            words(length.unit),
            height.known && leastMetacentricHeight.known
              ? words(height.value >= leastMetacentricHeight.value ? 'yes' : 'no')
              : nothing,
          ],
          ...proofRow(figures),
          [
            words('Steady heel close-hauled, 1 lb on the square foot of sail'),
            cell(
              workedFrom([heel], a => a / units.deg.si),
              tenths,
            ),
            nothing,
            words('°'),
          ],
        ]
      : [],
    notes: [areasTaken, papersGovern],
  }
}

/** The moment of a small vessel's proof test, where it is asked of her waters. */
function proofRow(figures: Figures): readonly (readonly Cell[])[] {
  const { proof } = figures.stability()
  if (proof === undefined) return []
  return [
    [
      words('46 CFR 178.330, moment of the proof test of a small vessel'),
      cell(proof, { unit: 'kN m', si: 1000, decimals: 1 }),
      nothing,
      words('kN m'),
    ],
  ]
}

/** What the areas of the criteria are made of. */
const areasTaken =
  'Under sail the area is that of the hull’s side and all plain sail, whole; under bare poles of the hull’s side, masts, booms, gaffs, bowsprit and standing rigging. Yards, end on, tops and running rigging are left out.'

/** Said under every page of stability. */
export const papersGovern = `Never a substitute for the vessel’s papers. ${caution}`

function judged(name: string, unit: string, figure: Figure<Criterion>): readonly Cell[] {
  if (!figure.known) return [words(name), cell(figure, thousandths)]
  const { has, asked, isMet, caution: mind } = figure.value
  const shown = unit === '°' ? tenths : thousandths
  return [
    words(name),
    cell(known(has), shown),
    cell(known(asked), shown),
    words(unit),
    words(isMet ? 'yes' : 'no'),
    words(mind ?? ''),
  ]
}
