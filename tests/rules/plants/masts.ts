import { lineOf, wordsAt } from '../notebook.ts'
import { at, edited, type Plant, type Plants } from './plant.ts'

/** The height of a mast's part left out; a mast like another would take over the other's. */
const heightLeftOut: Plant = book =>
  book.rig.masts.flatMap(({ span, sections }) => {
    const entry = lineOf(book, span)
    if (entry === undefined || / like /.test(wordsAt(book, entry))) return []
    return sections.flatMap(section => {
      const line = lineOf(book, section.span)
      const text = line === undefined ? undefined : edited(book, line, / +to +[\d.]+ m up,?/, '')
      return line !== undefined && text ? [at(line, 'mast/part-without-height', text)] : []
    })
  })

/** Faults of masts. */
export const masts: Plants = { "a mast's part without its height": heightLeftOut }
