import type { Figures, UnderCanvas } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import type { Table } from '../table.ts'
import { bracingTable } from './bracing.ts'
import { canvasTable } from './canvas.ts'
import { lengthsTable, loadsTable } from './lines.ts'
import { sailsTable, settingTable } from './sails.ts'
import { sparsTable } from './spars.ts'
import { stabilityTable } from './stability.ts'
import { tableUnits } from './units.ts'
import { markedBlocksTable, surveysTable } from './upkeep.ts'
import { foulsTable, waysTable } from './ways.ts'
import { chosenTable, wholeTable } from './whole.ts'
import { windTable } from './wind.ts'

/** What is reckoned of a rig, as tables in the units of her papers; a table without rows is left out. */
export function reckoningTables(rig: Rig, figures: Figures, chosen?: UnderCanvas): readonly Table[] {
  const units = tableUnits(rig.vessel)
  const tables = [
    wholeTable(rig, figures, units),
    ...(chosen ? [chosenTable(chosen, units)] : []),
    sailsTable(rig, figures, units),
    settingTable(rig, figures, units),
    canvasTable(figures, units),
    sparsTable(rig, figures, units),
    windTable(figures, units),
    bracingTable(rig, figures, units),
    stabilityTable(rig, figures, units),
    lengthsTable(rig, figures, units),
    waysTable(rig, figures, units),
    foulsTable(figures, units),
    loadsTable(rig, figures, units),
    surveysTable(rig),
    markedBlocksTable(rig),
  ]
  return tables.filter(table => table.rows.length > 0)
}
