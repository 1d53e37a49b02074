import type { Features } from './features.ts'

/** One glyph of words that have been shaped: advances and offsets in font units. */
export interface ShapedGlyph {
  readonly id: number
  /** Index into the text of the first letter it stands for. */
  readonly from: number
  readonly advance: number
  readonly right: number
  readonly up: number
}

/** A font that HarfBuzz has opened. */
export interface ShapingFont {
  readonly unitsPerEm: number
  has(character: string): boolean
  shape(text: string, features: Features): readonly ShapedGlyph[]
}

/** Opens a font for shaping. */
export type OpenFont = (font: Uint8Array) => ShapingFont

/**
 * HarfBuzz from its WebAssembly module: the shaper that most browsers use, so that words have the same glyphs
 * and kerning there. It is ten times as fast as fontkit's, and measuring is the slow part of every layout.
 */
export async function shaper(module: Uint8Array): Promise<OpenFont> {
  const { instance } = await webAssembly.instantiate(
    module,
    imports(() => instance.exports.memory),
  )
  const harfbuzz = instance.exports
  harfbuzz.__wasm_call_ctors()
  const buffer = harfbuzz.hb_buffer_create()
  harfbuzz.hb_buffer_set_cluster_level(buffer, eachCharacter)
  return font => open(harfbuzz, buffer, font)
}

function open(harfbuzz: HarfBuzz, buffer: number, bytes: Uint8Array): ShapingFont {
  const address = harfbuzz.malloc(bytes.length)
  new Uint8Array(harfbuzz.memory.buffer).set(bytes, address)
  const face = harfbuzz.hb_face_create(harfbuzz.hb_blob_create(address, bytes.length, writable, 0, 0), 0)
  const font = harfbuzz.hb_font_create(face)
  const glyph = harfbuzz.malloc(4)
  const switches = new Map<Features, number>()
  return {
    unitsPerEm: harfbuzz.hb_face_get_upem(face),
    has: character => harfbuzz.hb_font_get_nominal_glyph(font, character.codePointAt(0) ?? 0, glyph) !== 0,
    shape(text, features) {
      const at = switches.get(features) ?? writtenFeatures(harfbuzz, features)
      switches.set(features, at)
      fill(harfbuzz, buffer, text)
      harfbuzz.hb_shape(font, buffer, at, Object.keys(features).length)
      return glyphs(harfbuzz, buffer)
    },
  }
}

function fill(harfbuzz: HarfBuzz, buffer: number, text: string): void {
  const address = harfbuzz.malloc(text.length * 2)
  const letters = new Uint16Array(harfbuzz.memory.buffer, address, text.length)
  for (let i = 0; i < text.length; i++) letters[i] = text.charCodeAt(i)
  harfbuzz.hb_buffer_clear_contents(buffer)
  harfbuzz.hb_buffer_add_utf16(buffer, address, text.length, 0, text.length)
  harfbuzz.hb_buffer_guess_segment_properties(buffer)
  harfbuzz.hb_buffer_set_direction(buffer, leftToRight)
  harfbuzz.free(address)
}

// Both lists hold five numbers a glyph: id, mask and place in the text; advance across and down, offset.
function glyphs(harfbuzz: HarfBuzz, buffer: number): readonly ShapedGlyph[] {
  const infos = harfbuzz.hb_buffer_get_glyph_infos(buffer, 0) / 4
  const places = harfbuzz.hb_buffer_get_glyph_positions(buffer, 0) / 4
  const memory = new Int32Array(harfbuzz.memory.buffer)
  return Array.from({ length: harfbuzz.hb_buffer_get_length(buffer) }, (_, index) => {
    const [info, place] = [infos + index * 5, places + index * 5]
    const number = (at: number) => memory[at] as number
    return {
      id: number(info),
      from: number(info + 2),
      advance: number(place),
      right: number(place + 2),
      up: number(place + 3),
    }
  })
}

// A list of four numbers a feature: its tag, on or off, and the whole of the text as its range.
function writtenFeatures(harfbuzz: HarfBuzz, features: Features): number {
  const numbers = Object.entries(features).flatMap(([name, isOn]) => [tag(name), isOn ? 1 : 0, 0, 0xffffffff])
  const address = harfbuzz.malloc(numbers.length * 4)
  new Uint32Array(harfbuzz.memory.buffer, address, numbers.length).set(numbers)
  return address
}

/** OpenType tags are four letters packed in a number. */
export function tag(letters: string): number {
  return Array.from(letters).reduce((packed, letter) => packed * 256 + letter.charCodeAt(0), 0)
}

// What the module was compiled to ask of its surroundings: memory, and otherwise nothing that is ever used.
function imports(memory: () => Memory): object {
  const nothing = () => 0
  return {
    wasi_snapshot_preview1: { proc_exit: nothing },
    env: {
      _emscripten_runtime_keepalive_clear: nothing,
      _setitimer_js: nothing,
      _abort_js() {
        throw new Error('HarfBuzz gave up')
      },
      emscripten_resize_heap(bytes: number) {
        memory().grow(Math.ceil((bytes - memory().buffer.byteLength) / 65536))
        return 1
      },
    },
  }
}

// From HarfBuzz's hb-blob.h, hb-buffer.h and hb-common.h.
const writable = 2
const eachCharacter = 1
const leftToRight = 4

interface Memory {
  readonly buffer: ArrayBuffer
  grow(pages: number): void
}

interface HarfBuzz {
  readonly memory: Memory
  __wasm_call_ctors(): void
  malloc(length: number): number
  free(address: number): void
  hb_blob_create(address: number, length: number, mode: number, user: 0, destroy: 0): number
  hb_face_create(blob: number, index: 0): number
  hb_face_get_upem(face: number): number
  hb_font_create(face: number): number
  hb_font_get_nominal_glyph(font: number, character: number, glyph: number): number
  hb_buffer_create(): number
  hb_buffer_set_cluster_level(buffer: number, level: number): void
  hb_buffer_clear_contents(buffer: number): void
  hb_buffer_add_utf16(buffer: number, text: number, length: number, from: 0, count: number): void
  hb_buffer_guess_segment_properties(buffer: number): void
  hb_buffer_set_direction(buffer: number, direction: number): void
  hb_shape(font: number, buffer: number, features: number, count: number): void
  hb_buffer_get_length(buffer: number): number
  hb_buffer_get_glyph_infos(buffer: number, length: 0): number
  hb_buffer_get_glyph_positions(buffer: number, length: 0): number
}

// Node and browsers both have it, though neither's types are loaded here.
const { WebAssembly: webAssembly } = globalThis as unknown as {
  readonly WebAssembly: {
    instantiate(
      module: Uint8Array,
      imports: object,
    ): Promise<{ readonly instance: { readonly exports: HarfBuzz } }>
  }
}
