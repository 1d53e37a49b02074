import { fixed, known, unknown } from '../../measure/index.ts'
import { type Figures, sparLength } from '../../reckon/index.ts'
import type { Rig, Spar } from '../../rig/index.ts'
import { nothing, type Table, words } from '../table.ts'
import { cell, column, type TableUnits } from './units.ts'

/** Every spar and what it weighs, as said or as reckoned. */
export function sparsTable(rig: Rig, figures: Figures, units: TableUnits): Table {
  return {
    id: 'spars',
    title: 'Spars',
    columns: [
      column('spar'),
      column('length', units.length),
      column('thickness', units.rope),
      column('weight', units.mass),
      column('weight is'),
      column('made of'),
    ],
    rows: rig.spars.map(spar => {
      const length = sparLength(spar)
      const mass = figures.spars().get(spar.name) ?? unknown('It has no figures.')
      return [
        words(spar.label),
        length === undefined ? nothing : cell(known(length), units.length),
        spar.diameter === undefined ? nothing : cell(known(spar.diameter), units.rope),
        cell(mass, units.mass),
        words(spar.mass === undefined ? (mass.known ? 'reckoned' : '') : 'as said'),
        words(madeOf(spar, units)),
      ]
    }),
    notes: [
      `Where no weight is said, it is that of what the spar is made of; where that isn’t said either, of ${figures.assumptions.timber}.`,
    ],
  }
}

/** 'steel, 8 mm walls'; nothing where the text is silent. */
function madeOf({ material, walls }: Spar, { rope }: TableUnits): string {
  const hollow = walls === undefined ? [] : [`${fixed(walls / rope.si, rope.decimals)} ${rope.unit} walls`]
  return [...(material === undefined ? [] : [material]), ...hollow].join(', ')
}
