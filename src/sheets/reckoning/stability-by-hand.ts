import {
  type Figure,
  type Kilograms,
  known,
  type Metres,
  type SquareMetres,
  units,
} from '../../measure/index.ts'
import { catamaran, catamaranNumeral, notChecked, proofMoment, type Waters } from '../../reckon/index.ts'
import { nothing, type Table, words } from '../table.ts'
import { criterionColumns, papersGovern } from './stability.ts'
import { cell, plainNumber, type Shown } from './units.ts'

/** Sails without a rig: their area, how high their centre stands, and of a catamaran what she weighs and how far her hulls are apart. */
export interface SailsByHand {
  readonly area: SquareMetres
  /** Over the water for the proof test, over the deck for a catamaran. */
  readonly centre: Metres
  readonly displacement: Kilograms | undefined
  /** Between the middle lines of the two hulls. */
  readonly hulls: Metres | undefined
}

const momentUnit: Shown = { unit: 'kN m', si: 1000, decimals: 1 }
const footPounds: Shown = { unit: 'ft lb', si: units.lbf.si * units.ft.si, decimals: 0 }
const waters: readonly Waters[] = ['protected', 'partially protected', 'exposed']

/** The printed rules of small sailing vessels: the moment of the proof test, and a catamaran's numeral. */
export function smallVesselTable({ area, centre, displacement, hulls }: SailsByHand): Table {
  const moment = known(proofMoment(area, centre))
  const proof = 'Moment of the proof test, 46 CFR 178.330, protected and partially protected waters'
  const row = (name: string, figure: Figure<number>, shown: Shown) => [
    words(name),
    cell(figure, shown),
    nothing,
    words(shown.unit),
  ]
  const numeral =
    displacement === undefined || hulls === undefined
      ? undefined
      : catamaran(displacement, hulls, area, centre)
  return {
    id: 'small-vessel',
    title: 'Small sailing vessels',
    columns: criterionColumns,
    rows: [
      row(proof, moment, momentUnit),
      row('The same', moment, footPounds),
      ...(numeral === undefined
        ? []
        : waters.map(where => [
            words(`Catamaran, 46 CFR 171.057, ${where} waters`),
            cell(known(numeral), plainNumber(2)),
            cell(known(catamaranNumeral[where]), plainNumber(2)),
            words('lbf/ft²'),
            words(numeral >= catamaranNumeral[where] ? 'yes' : 'no'),
            words(notChecked),
          ])),
    ],
    notes: [
      'The centre is taken over the water for the proof test, over the deck for a catamaran.',
      papersGovern,
    ],
  }
}
