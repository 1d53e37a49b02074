import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { linesOf, noEmphasis, plainFindings } from '../../src/press/findings/index.ts'
import { compiledText } from '../support/compiled.ts'

const file = new URL('../../grammar/tutorial.md', import.meta.url)
const tutorial = readFileSync(file, 'utf8')

/** Each step with the pages it shows, and what the check is said to answer. */
const steps = tutorial
  .split(/^## (?=\d+\. )/m)
  .slice(1)
  .map(step => ({
    title: step.split('\n')[0] ?? '',
    pages: [...step.matchAll(/^```rig\n(.*?)^```$/gms)].flatMap(([, text = '']) => pagesOf(text)),
    said: /^```said\n(.*?)^```$/ms.exec(step)?.[1] ?? '',
  }))

/** The pages of a text: each from a word at the margin to the next. */
function pagesOf(text: string): readonly string[] {
  return text.split(/^(?=\w)/m).map(page => page.trimEnd())
}

/** The file as a reader has it after a step: a page shown anew takes the place of the one that began alike. */
function written(upTo: number): string {
  const pages = new Map<string, string>()
  for (const { pages: shown } of steps.slice(0, upTo + 1))
    for (const page of shown) pages.set(page.split('\n')[0] ?? '', page)
  const bring = [...pages].filter(([first]) => first.startsWith('bring'))
  const [edition = '', ...others] = [...pages]
    .filter(([first]) => !first.startsWith('bring'))
    .map(([, page]) => page)
  return `${[[edition, ...bring.map(([, page]) => page)].join('\n'), ...others].join('\n\n')}\n`
}

function answer(text: string): string {
  const { value, findings } = compiledText(text, 'teal-reed.rig')
  return plainFindings(findings, linesOf(value.rig.sources), noEmphasis)
}

const answers = steps.map((_, i) => answer(written(i)))

if (process.env.UPDATE_GOLDEN) {
  let step = 0
  writeFileSync(
    file,
    tutorial.replace(/^```said\n.*?^```$/gms, () => `\`\`\`said\n${answers[step++]}\`\`\``),
  )
}

describe('the tutorial', () => {
  it('has ten steps', () => {
    expect(steps).toHaveLength(10)
  })

  it.each(steps.map(({ title, said }, i) => [title, said, i] as const))(
    '%s answers as printed',
    (_, said, i) => {
      expect(answers[i]).toBe(said)
    },
  )

  it('ends with a rig that is clean, and every line of it belayed', () => {
    const { value, findings } = compiledText(written(9), 'teal-reed.rig')
    expect(findings).toEqual([])
    expect(value.rig.lines.map(({ address }) => address)).toHaveLength(6)
    expect(value.rig.lines.filter(({ belay }) => !belay)).toEqual([])
  })
})
