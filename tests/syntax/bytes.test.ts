import { describe, expect, test } from 'vitest'
import { decode } from '../../src/text/index.ts'

const utf16 = (text: string, big: boolean, mark = true) => {
  const units = [
    ...(mark ? [0xfeff] : []),
    ...Array.from({ length: text.length }, (_, i) => text.charCodeAt(i)),
  ]
  return Uint8Array.from(units.flatMap(unit => (big ? [unit >> 8, unit & 255] : [unit & 255, unit >> 8])))
}
const utf8 = (text: string) => new TextEncoder().encode(text)
const rules = (bytes: Uint8Array) => decode(bytes, 'x.rig').findings.map(({ rule }) => rule)

describe('bytes', () => {
  const text = 'edition 1\nvessel Großsegel\n'

  test('UTF-8, with and without its mark', () => {
    expect(decode(utf8(text), 'x.rig')).toEqual({ value: text, findings: [] })
    expect(decode(utf8(`\ufeff${text}`), 'x.rig').value).toBe(text)
  })

  test('UTF-16 of either order, by its mark or by its zeros', () => {
    for (const big of [true, false]) {
      expect(decode(utf16(text, big), 'x.rig')).toEqual({ value: text, findings: [] })
      expect(decode(utf16(text, big, false), 'x.rig').value).toBe(text)
    }
  })

  test('single bytes that are no UTF-8 are told once, and the rest is read', () => {
    const bytes = Uint8Array.from([...utf8('vessel Gro'), 0xdf, ...utf8('er\n')])
    expect(decode(bytes, 'x.rig').value).toBe('vessel Gro\ufffder\n')
    expect(rules(bytes)).toEqual(['syntax/not-utf-8'])
  })

  test('a picture is no text', () => {
    const picture = Uint8Array.from([
      0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13, 0xff, 0xd8, 0xc0, 1, 2, 3,
    ])
    expect(decode(picture, 'x.rig').value).toBe('')
    expect(rules(picture)).toEqual(['syntax/no-text'])
  })

  test('nothing at all is an empty text', () =>
    expect(decode(new Uint8Array(), 'x.rig')).toEqual({ value: '', findings: [] }))
})
