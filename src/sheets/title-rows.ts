import type { Figures } from '../reckon/index.ts'
import type { Rig } from '../rig/index.ts'
import { unsoundWords } from './cartouche.ts'
import type { Imprint } from './imprint.ts'
import { areaFigure, notRecorded, shipLength } from './measure-words.ts'
import { revisionWords } from './revision-words.ts'

/** One row of a title block: a label in italic, and its value. */
export interface TitleRow {
  readonly label: string
  readonly value: string
  /** A part of the row above. */
  readonly isPart?: boolean
}

/** What a sum of areas is of: studdingsails, set for a fair wind only, are left out of it. */
export const allSail = ({ sails }: Pick<Rig, 'sails'>): string =>
  sails.some(sail => sail.kind === 'studdingsail') ? 'all plain sail' : 'all sail'

/** Area of all sail, of square sail and of fore-and-aft sail, and how many sails and lines. */
export function sailRows(rig: Rig, figures: Figures): readonly TitleRow[] {
  if (rig.sails.length === 0) return [{ label: 'Sails', value: 'none recorded' }]
  const part = (kind: 'square' | 'fore-and-aft', label: string): readonly TitleRow[] =>
    rig.sails.some(sail => sail.kind === kind)
      ? [
          {
            label,
            value: areaFigure(kind === 'square' ? figures.square : figures.foreAndAft, rig.vessel),
            isPart: true,
          },
        ]
      : []
  return [
    {
      label: allSail(rig) === 'all sail' ? 'Sail, all' : 'Plain sail',
      value: areaFigure(figures.total, rig.vessel),
    },
    ...part('square', 'square'),
    ...part('fore-and-aft', 'fore-and-aft'),
    { label: 'Sails', value: String(rig.sails.length) },
    { label: 'Lines', value: String(rig.lines.length) },
  ]
}

/** The vessel's chief dimensions; what the text leaves out is said to be not recorded. */
export function dimensionRows({ vessel }: Rig): readonly TitleRow[] {
  return [
    { label: 'Length, sparred', value: shipLength(vessel.overSpars, vessel) },
    { label: 'Waterline', value: shipLength(vessel.waterline, vessel) },
    { label: 'Beam', value: shipLength(vessel.beam, vessel) },
    { label: 'Draught', value: shipLength(vessel.draught, vessel) },
  ]
}

/** Revision, source, rights, credits where there are some, and status. */
export function revisionRows(rig: Rig, imprint: Imprint): readonly TitleRow[] {
  const { credits } = rig.vessel
  return [
    { label: 'Revision', value: revisionWords(rig.vessel) ?? notRecorded },
    { label: 'From', value: imprint.from },
    { label: 'Rights', value: rig.vessel.rights ?? notRecorded },
    ...(credits.length > 0 ? [{ label: 'Credits', value: credits.join('; ') }] : []),
    {
      label: 'Status',
      value: imprint.errors === 0 ? 'checked, no error' : unsoundWords(imprint.errors),
    },
  ]
}

/** '1 sail', '20 sails'. */
export const counted = (n: number, thing: string): string => `${n} ${thing}${n === 1 ? '' : 's'}`
