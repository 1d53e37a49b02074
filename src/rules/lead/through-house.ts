import type { DeckThing } from '../../rig/index.ts'
import { aboutLine, bothSubject, lineName, sentence, subject } from '../naming.ts'
import { onceAPair } from '../once-a-pair.ts'
import { berthOf } from '../pairs.ts'
import type { Rule } from '../rule.ts'
import { shownLength } from '../shown.ts'

/** A lead that its places take through a house, a hatch, a boat or a mast. */
export const throughHouse: Rule = {
  slug: 'lead/through-house',
  severity: 'error',
  judges: 'vessels and parts',
  *judge({ rig, figures }) {
    const { overDeck, throughMasts } = figures.fouls()
    const through = overDeck.filter(({ thing, overTop }) => isSolid(thing) && overTop < -grace)
    for (const { first, isTwice } of onceAPair(
      through,
      ({ line, thing }) => `${line.pairKey} ${thing.name}`,
    )) {
      const { line, thing, overTop } = first
      yield {
        at: line.belaySpan ?? line.span,
        message: `${sentence(isTwice ? bothSubject(line) : subject(line))} is led through the ${thing.name}, ${shownLength(rig, -overTop)} below its top.`,
        aboard: 'It can neither run nor be hauled.',
        remedy: `Check the places of the line and of the ${thing.name}, or lead it round by another block.`,
        related: [{ at: thing.span, message: `the ${thing.name} is here` }],
        about: [...aboutLine(line), thing.name],
        follows: [berthOf(line)],
      }
    }
    for (const { first } of onceAPair(throughMasts, ({ line, mast }) => `${line.pairKey} ${mast.name}`)) {
      const { line, mast } = first
      yield {
        at: line.belaySpan ?? line.span,
        message: `The way of the ${lineName(line)} goes through the ${mast.name}.`,
        aboard: 'It can neither run nor be hauled.',
        remedy: 'Lead it to the pin on its own side, or round the mast by another block.',
        related: [{ at: mast.span, message: `the ${mast.name} stands here` }],
        about: [...aboutLine(line), mast.name],
        follows: [berthOf(line)],
      }
    }
  },
}

/** Two centimetres: a lead may lie on a roof or a coaming. */
const grace = 0.02

/** What a lead can't go through. A raised deck has rails and blocks upon it, and a horse is there for its sheet. */
const isSolid = ({ kind }: DeckThing): boolean =>
  /house|cabin|hatch|boat|skylight|trunk|galley|machinery|windlass|capstan|tank|locker/.test(kind)
