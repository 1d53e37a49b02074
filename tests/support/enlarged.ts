import { compile } from '../../src/compile.ts'
import { exampleFiles, exampleText } from './compiled.ts'

/** A text with every measure in metres so many times as large; thicknesses and weights stay. */
export const enlarged = (text: string, times: number): string =>
  text.replace(/(\d+(?:\.\d+)?)(?= m\b)/g, number => String(Number(number) * times))

/** An example rig with herself and the standard gear enlarged alike, compiled. */
export const compiledEnlarged = (rig: string, times: number) =>
  compile(
    {
      read: place => {
        const found = exampleFiles.read(place)
        if (found.kind !== 'text') return found
        return { ...found, source: { ...found.source, text: enlarged(found.source.text, times) } }
      },
    },
    { name: `${rig}.rig`, text: enlarged(exampleText(rig), times) },
  )
