import { readdirSync } from 'node:fs'
import type fc from 'fast-check'
import { compiledText, exampleText } from '../support/compiled.ts'
import { amiss } from './amiss.ts'
import { fragments } from './fragments.ts'
import { spoiled } from './spoil.ts'

const rigs = readdirSync(new URL('../../rigs', import.meta.url))
  .filter(file => file.endsWith('.rig'))
  .map(file => exampleText(file.slice(0, -'.rig'.length)))

/** What is thrown at the compiler. */
export const texts: Record<'fragments' | 'whole rigs', fc.Arbitrary<string>> = {
  fragments: fragments(),
  'whole rigs': spoiled(rigs),
}

/** Compiles a text as if it lay beside the example rigs; throws where it, or one of its findings, is amiss. */
export function mustHold(text: string): void {
  const { value, findings } = compiledText(text)
  for (const finding of findings) {
    const wrong = amiss(finding, value.rig.sources)
    if (wrong !== undefined) throw new Error(wrong)
  }
}
