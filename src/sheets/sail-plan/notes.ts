import { wrap } from '../flow.ts'
import { narrowest } from '../narrow.ts'
import { plateType } from '../plate-type.ts'
import type { Ruler } from '../typeface.ts'
import type { Ship } from './ship.ts'

const measure = 92
const mostLines = 4

/** Remarks under the title: how she is drawn, what is by rule and what is not drawn. */
export function planNotes({ sails, lines, rig }: Ship, ruler: Ruler): readonly string[] {
  const notes = [
    sails.some(({ sail }) => sail.kind !== 'fore-and-aft')
      ? 'Yards drawn flat in the plane of the paper'
      : undefined,
    lines && !lines.isRecorded ? 'Hull drawn by rule: her lines are not recorded' : undefined,
    !lines && isAnythingDrawn(rig) ? 'No hull: her length is not recorded' : undefined,
    ...conjectures(rig),
    sails.some(({ sail }) => sail.kind === 'studdingsail')
      ? 'Of each pair of studdingsails one is drawn'
      : undefined,
    undrawn(
      sails.length,
      rig.sails.filter(sail => !sails.some(drawn => drawn.sail === sail)),
    ),
  ]
  const wrapped = notes.flatMap(note => (note === undefined ? [] : evenly(note, ruler)))
  return wrapped.length <= mostLines
    ? wrapped
    : [...wrapped.slice(0, mostLines - 1), `${wrapped[mostLines - 1] ?? ''} …`]
}

/** As few lines as the measure allows, of about one length. */
const evenly = (note: string, ruler: Ruler): readonly string[] =>
  narrowest(note, wrap(note, plateType.note, measure, ruler).length, plateType.note, ruler)

/** What is conjectural, by whose word: one note for each that is credited. */
function conjectures({ masts, spars, standing, sails }: Ship['rig']): readonly string[] {
  const things = [...masts, ...standing, ...spars, ...sails].filter(({ conjectural }) => conjectural)
  const credits = [...new Set(things.flatMap(({ credited }) => credited ?? []))]
  return credits.map(by => {
    const names = things.filter(({ credited }) => credited === by).map(({ name }) => name)
    return `Conjectural, by ${by}: ${withTheirYards(names).join(', ')}`
  })
}

/** A yard that goes by its sail's name is told with the sail. */
function withTheirYards(names: readonly string[]): readonly string[] {
  const yardOf = (sail: string) => `${sail} yard`
  const told = names.filter(name => !names.some(sail => name === yardOf(sail)))
  return told.map(name => (names.includes(yardOf(name)) ? `${name} and its yard` : name))
}

const isAnythingDrawn = ({ masts, sails }: Ship['rig']): boolean =>
  masts.some(mast => mast.foot) || sails.length > 0

function undrawn(drawn: number, rest: readonly { readonly name: string }[]): string | undefined {
  if (rest.length === 0) return undefined
  if (drawn === 0) return 'No sail is drawn: none has its measures recorded'
  return `Not drawn, for want of sound measures: ${rest.map(({ name }) => name).join(', ')}`
}
