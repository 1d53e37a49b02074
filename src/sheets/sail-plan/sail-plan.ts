import type { Finding, Found } from '../../findings/index.ts'
import type { Figures } from '../../reckon/index.ts'
import type { Rig } from '../../rig/index.ts'
import { ink } from '../ink.ts'
import { areaFigure } from '../measure-words.ts'
import type { Rect } from '../plane.ts'
import { type Plate, plateFrame, plateOf } from '../plate.ts'
import type { Setting } from '../setting.ts'
import type { Mark, Sheet } from '../sheet.ts'
import { styleOf } from '../style.ts'
import { titleBlock } from '../title-block.ts'
import { allSail, counted } from '../title-rows.ts'
import { areasTable, tableForm } from './areas-table.ts'
import { beyondPaper, leftOffFindings } from './beyond-paper.ts'
import { cartoucheOf, keyOf, nothingDrawn, stripForm } from './corners.ts'
import { layOut } from './layout.ts'
import { placeNames } from './names.ts'
import { type Ship, shipIn } from './ship.ts'
import { shipMarks } from './ship-marks.ts'
import { silhouettes } from './silhouette.ts'
import { surroundingsOf } from './surroundings.ts'
import { viewAt } from './view.ts'
import { perpendiculars, waterMarks } from './water.ts'
import { withinReason } from './within-reason.ts'

/**
 * The sail plan of any rig: her starboard profile to scale with all sail set, names, areas and centres, on one
 * plate. What the text leaves out is left out and said; it never fails.
 */
export function sailPlan(whole: Rig, figures: Figures, setting: Setting): Found<Sheet> {
  const { rig, findings } = withinReason(whole)
  const plate = plateOf(setting.paper, styleOf(setting).enlarged)
  // In a view at 1 : 1000 a metre is a millimetre: that is how the layout measures her.
  const model = shipIn(rig, figures, viewAt(1000, { x: 0, y: 0 }))
  const title = cartoucheOf(model, plate, setting)
  const key = keyOf(model, plate, setting)
  const column = tableForm(whole, 1, setting.ruler)
  const layout = layOut(silhouettes(model), plate, {
    corners: [...title.blocks, key.bounds],
    key: key.bounds,
    column,
    strip: stripForm(whole, plate, setting),
  })
  const table = layout?.table ?? { form: column, at: { x: key.bounds.left, y: key.bounds.top } }
  const areas = areasTable(whole, figures, table.form, table.at, setting.ruler)
  const drawn =
    layout &&
    drawing(shipIn(rig, figures, layout.view), plate, setting, [title.bounds, key.bounds, areas.bounds])
  const marks: readonly Mark[] = [
    plateFrame(plate),
    title.mark,
    ...(drawn?.marks ?? [nothingDrawn(plate, setting)]),
    ...(layout && key.mark ? [key.mark] : []),
    ...(whole.sails.length > 0 ? [areas.mark] : []),
    titleBlock({ rig: whole, figures, setting, plate, scale: layout?.view.scale }),
  ]
  return {
    value: sheetOf(whole, figures, plate, marks, layout && layout.view.scale / plate.enlarged),
    findings: [...findings, ...leftOffFindings(beyondPaper(rig)), ...(drawn?.findings ?? [])],
  }
}

/** The water, the ship with her names, and the perpendiculars. */
function drawing(
  ship: Ship,
  plate: Plate,
  { ruler }: Setting,
  furniture: readonly Rect[],
): { readonly marks: readonly Mark[]; readonly findings: readonly Finding[] } {
  const { rig, figures, view, lines, keelY, sails } = ship
  const { names, findings } = placeNames(
    sails,
    { rig, figures },
    surroundingsOf(ship, plate, furniture),
    ruler,
  )
  const marks = [
    waterMarks(rig, plate, view, ruler),
    ...shipMarks(ship, names, ruler),
    ...(lines ? perpendiculars(lines, view, keelY, ruler) : []),
  ]
  const alt = profileWords(rig, figures, view.scale / plate.enlarged)
  return {
    marks: [{ kind: 'group', id: 'ship', title: rig.vessel.name, tag: { role: 'Figure', alt }, marks }],
    findings,
  }
}

function sheetOf(
  rig: Rig,
  figures: Figures,
  { width, height }: Plate,
  marks: readonly Mark[],
  scale: number | undefined,
): Sheet {
  const { vessel } = rig
  return {
    id: 'sail-plan',
    title: `${vessel.name}: sail plan`,
    description: `Sail plan of ${vessel.name}${vessel.rig ? `, ${vessel.rig}` : ''}. ${profileWords(rig, figures, scale)}`,
    width,
    height,
    ground: ink.paper,
    marks,
  }
}

/** What the drawing shows, for those who can't see it. */
function profileWords(rig: Rig, figures: Figures, scale: number | undefined): string {
  const drawn = scale === undefined ? 'Nothing is drawn to scale.' : `Starboard profile at 1 : ${scale}.`
  return `${drawn} ${counted(rig.sails.length, 'sail')}, area of ${allSail(rig)} ${areaFigure(figures.total, rig.vessel)}.`
}
