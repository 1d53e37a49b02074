import type { Order, OrderPhase, StationHands } from '../../evolve/index.ts'
import { type Piece, words } from '../flow.ts'
import type { Book } from './book.ts'
import { liftedWords } from './lifted-words.ts'
import { curled, lineInOrder, listed, plural, raised } from './order-names.ts'
import { type } from './type.ts'

/** What stands under the title of an order: the state it begins from, the hands it wants, who works what. */
export function stateWords(order: Order, book: Book): readonly Piece[] {
  return [...briefStateWords(order, book), ...plain(othersWords(order, book))]
}

/** The same without who works what, which every line says by itself. */
export function briefStateWords(order: Order, book: Book): readonly Piece[] {
  const sail = book.rig.sailAt.get(order.sail)
  return [...plain(order.before), ...plain(sail && liftedWords(sail, book)), ...handsWords(order, book)]
}

const plain = (sentence: string | undefined): readonly Piece[] =>
  sentence === undefined || sentence === '' ? [] : [words(`${curled(sentence)} `, type.text)]

interface Want {
  readonly phase: OrderPhase
  readonly hands: StationHands
  readonly wanted: number
}

/**
 * The hands of the phase that asks most of the station: who comes to help where it has too few, or whether a
 * watch can do it. Nothing where the text gives no hands.
 */
function handsWords(order: Order, book: Book): readonly Piece[] {
  const wants = order.phases.flatMap(phase => phase.hands.stations.flatMap(hands => wantOf(phase, hands)))
  const [shortest] = wants.filter(({ hands }) => wanting(hands) > 0).toSorted(byNeed)
  if (shortest) return shortWords(shortest, order, book)
  const [most] = wants.filter(({ hands }) => hands.station === book.station.name).toSorted(byNeed)
  return most ? plain(enoughWords(most)) : []
}

const byNeed = (a: Want, b: Want): number => wanting(b.hands) - wanting(a.hands) || b.wanted - a.wanted

const lent = ({ loans }: StationHands): number => loans.reduce((total, { hands }) => total + hands, 0)
const wanting = (hands: StationHands): number => lent(hands) + hands.short

function wantOf(phase: OrderPhase, hands: StationHands): readonly Want[] {
  return hands.hauling.known ? [{ phase, hands, wanted: hands.hauling.value + hands.easing }] : []
}

function shortWords({ phase, hands, wanted }: Want, order: Order, book: Book): readonly Piece[] {
  const station = stationName(hands.station, book)
  const asks =
    hands.inAll === 0
      ? `${raised(station)} has no hands of its own, and ${subject(phase, hands, order, book)} wants ${wanted} there: `
      : `${raised(subject(phase, hands, order, book))} wants ${wanted} hands and ${station} musters ${hands.inAll}: `
  const comes = hands.loans.map(
    loan => `${loan.hands} ${loan.hands === 1 ? 'comes' : 'come'} from ${stationName(loan.from, book)}`,
  )
  const lacks =
    hands.short > 0
      ? [`${hands.short} ${hands.short === 1 ? 'is' : 'are'} wanting with all hands called`]
      : []
  return [words(asks, type.text), words(`${listed([...comes, ...lacks])}. `, type.textStrong)]
}

/** 'the halyard', where the station hauls that one line and nothing else; else 'phase 3'. */
function subject(phase: OrderPhase, hands: StationHands, order: Order, book: Book): string {
  const own = phase.haul.filter(row => row.stations.includes(hands.station))
  const line = book.rig.pairAt.get(own[0]?.pairKey ?? '')?.[0]
  const alone = own.length === 1 && hands.easing === 0 && line !== undefined && own[0]?.reach === 'all'
  return alone ? `the ${lineInOrder(line, order.sail, book)}` : `phase ${phase.number}`
}

function enoughWords({ phase, hands, wanted }: Want): string | undefined {
  if (hands.inAll === undefined || wanted === 0) return undefined
  const number = `${wanted} ${wanted === 1 ? 'hand' : 'hands'}`
  if (hands.inWatch === undefined) return `Phase ${phase.number} wants ${number} of your ${hands.inAll}.`
  if (wanted <= hands.inWatch) return `At most ${number} of yours at once: your watch can do it.`
  return `Phase ${phase.number} wants ${number} of your ${hands.inAll}, more than your watch of ${hands.inWatch}.`
}

/** 'Forecastle works the tacks, waist the sheets, mainmast the braces.' */
function othersWords(order: Order, book: Book): string | undefined {
  const works = new Map<string, string[]>()
  for (const phase of order.phases) {
    for (const row of [...phase.haul, ...phase.ease, ...phase.hold, ...phase.tend, ...phase.standBy]) {
      const line = book.rig.pairAt.get(row.pairKey)?.[0]
      const [station] = row.stations
      if (!line || !station || row.stations.includes(book.station.name)) continue
      const name = lineInOrder(line, order.sail, book)
      works.set(station, [
        ...(works.get(station) ?? []),
        line.side === undefined || line.foreign ? name : plural(name),
      ])
    }
  }
  const clauses = [...works].map(([station, names], index) => {
    const verb = index === 0 ? ' works' : ''
    return `${stationName(station, book)}${verb} the ${listed([...new Set(names)])}`
  })
  return clauses.length === 0 ? undefined : `${raised(clauses.join(', '))}.`
}

const stationName = (name: string, { rig }: Book): string =>
  (rig.stationAt.get(name)?.label ?? name).toLowerCase()
