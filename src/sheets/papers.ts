import type { Evolutions } from '../evolve/index.ts'
import type { Found } from '../findings/index.ts'
import type { Figures } from '../reckon/index.ts'
import type { Rig } from '../rig/index.ts'
import { imposed, stationHandbook } from './book/index.ts'
import { deckChart } from './deck-chart/index.ts'
import { inStyle, rulerIn } from './in-style.ts'
import { blankStrips, railStrips } from './rail-strip/index.ts'
import { sailPlan } from './sail-plan/index.ts'
import type { Setting } from './setting.ts'
import type { PaperDocument, Sheet } from './sheet.ts'
import { forStrips, styleOf } from './style.ts'

/** The kinds of paper a rig is compiled into. */
export type PaperKind = 'sail plan' | 'pin charts' | 'handbooks'

/** One paper: a document for the PDF and, where it is a single sheet, that sheet for the SVG. */
export interface Paper {
  readonly document: PaperDocument
  readonly sheet: Sheet | undefined
}

/** What the papers are drawn from. */
export interface Drawn {
  readonly rig: Rig
  readonly figures: Figures
  readonly evolutions: Evolutions
}

/** A paper yet to be laid out: laying out takes time, and whoever waits wants to see it pass. */
export type PaperMaker = () => Found<readonly Paper[]>

/**
 * The papers of these kinds, those first that are soonest laid out, so that whoever presses need not wait: rail strips
 * with their blanks, deck chart, sail plan, handbooks.
 */
export function paperMakers(
  drawn: Drawn,
  setting: Setting,
  kinds: ReadonlySet<PaperKind>,
): readonly PaperMaker[] {
  const { rig, figures } = drawn
  const makers: PaperMaker[] = []
  const style = styleOf(setting)
  const inked = { ...setting, ruler: rulerIn(style, setting.ruler) }
  const single = ({ value, findings }: Found<Sheet>): Found<readonly Paper[]> => ({
    value: [paperOf(rig, inStyle(style, value))],
    findings,
  })
  const sheets = sheetNumbers(rig)
  if (kinds.has('pin charts')) {
    const ofStrips = forStrips(style)
    const onStrips = { ...setting, ruler: rulerIn(ofStrips, setting.ruler) }
    const several = ({ value, findings }: Found<readonly Sheet[]>): Found<readonly Paper[]> => ({
      value: value.map(sheet => paperOf(rig, inStyle(ofStrips, sheet))),
      findings,
    })
    rig.rails.forEach((rail, index) => {
      const strip = { ...onStrips, sheetNumber: sheets.strip(index) }
      const blank = { ...onStrips, sheetNumber: sheets.blank(index) }
      makers.push(
        () => several(railStrips(rig, rail, strip)),
        () => several(blankStrips(rig, rail, blank)),
      )
    })
    makers.push(() => single(deckChart(rig, figures, { ...inked, sheetNumber: sheets.deckChart })))
  }
  if (kinds.has('sail plan')) {
    makers.push(() => single(sailPlan(rig, figures, { ...inked, sheetNumber: sheets.sailPlan })))
  }
  if (kinds.has('handbooks')) {
    for (const station of rig.stations) {
      makers.push(() => {
        const { value: document, findings } = stationHandbook(drawn, station, setting)
        const booklet = imposed(document, setting.paper)
        return { value: [document, booklet].map(one => ({ document: one, sheet: undefined })), findings }
      })
    }
  }
  return makers
}

/** A rig's single sheets are counted through: the plan, the chart, then strip and blank of each rail. */
function sheetNumbers(rig: Rig) {
  const of = 2 + 2 * rig.rails.length
  return {
    sailPlan: { n: 1, of },
    deckChart: { n: 2, of },
    strip: (index: number) => ({ n: 3 + 2 * index, of }),
    blank: (index: number) => ({ n: 4 + 2 * index, of }),
  }
}

function paperOf({ vessel }: Rig, sheet: Sheet): Paper {
  const document: PaperDocument = {
    id: sheet.id,
    title: sheet.title,
    language: 'en',
    subject: sheet.description,
    pages: [sheet],
    pageLabels: undefined,
    outline: [{ title: sheet.title, page: 0, children: [] }],
    date: vessel.revision,
  }
  return { document, sheet }
}
