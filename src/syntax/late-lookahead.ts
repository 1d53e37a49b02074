import { type ILookaheadStrategy, LLkLookaheadStrategy } from 'chevrotain'

type Reader = ThisParameterType<ReturnType<ILookaheadStrategy['buildLookaheadForOptional']>>

/**
 * Looks ahead as Chevrotain does, but works out what to look for only where a text first comes to it: most texts
 * never reach most of the grammar, and working all of it out is a large part of the start.
 */
export function lateLookahead(maxLookahead: number): ILookaheadStrategy {
  const strategy = new LLkLookaheadStrategy({ maxLookahead })
  return {
    validate: options => strategy.validate(options),
    buildLookaheadForAlternation: options => {
      let made: ReturnType<ILookaheadStrategy['buildLookaheadForAlternation']> | undefined
      return function (this: Reader, alternatives) {
        made ??= strategy.buildLookaheadForAlternation(options)
        return made.call(this, alternatives)
      }
    },
    buildLookaheadForOptional: options => {
      let made: ReturnType<ILookaheadStrategy['buildLookaheadForOptional']> | undefined
      return function (this: Reader) {
        made ??= strategy.buildLookaheadForOptional(options)
        return made.call(this)
      }
    },
  }
}
