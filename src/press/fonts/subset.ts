import { keptFeatures } from './features.ts'
import { tag } from './harfbuzz.ts'

/** Small fonts of a larger one, each with only some of its characters, and what it takes to shape them alike. */
export type Subsets = (font: Uint8Array) => (characters: ReadonlySet<string>) => Uint8Array

/**
 * The subsetter of HarfBuzz, from its WebAssembly module. fontkit's own subsets are made for PDF and have
 * no character map, so browsers refuse them.
 */
export async function subsetter(module: Uint8Array): Promise<Subsets> {
  const { instance } = await webAssembly.instantiate(module)
  const harfbuzz = instance.exports
  harfbuzz._initialize()
  return font => {
    const face = open(harfbuzz, font)
    return characters => subset(harfbuzz, face, characters)
  }
}

function open(harfbuzz: HarfBuzz, font: Uint8Array): number {
  const address = harfbuzz.malloc(font.length)
  new Uint8Array(harfbuzz.memory.buffer).set(font, address)
  const blob = harfbuzz.hb_blob_create(address, font.length, memoryMode.writable, 0, 0)
  // Whatever is alike in all subsets is worked out here once.
  return harfbuzz.hb_subset_preprocess(harfbuzz.hb_face_create(blob, 0))
}

function subset(harfbuzz: HarfBuzz, face: number, characters: ReadonlySet<string>): Uint8Array {
  const input = harfbuzz.hb_subset_input_create_or_fail()
  choose(harfbuzz, input, characters)
  const small = harfbuzz.hb_subset_or_fail(face, input)
  if (small === 0) throw new Error('HarfBuzz could not make a subset of a font')
  const bytes = faceBytes(harfbuzz, small)
  harfbuzz.hb_face_destroy(small)
  harfbuzz.hb_subset_input_destroy(input)
  return bytes
}

function choose(harfbuzz: HarfBuzz, input: number, characters: ReadonlySet<string>): void {
  harfbuzz.hb_subset_input_set_flags(input, flags.noHinting)
  const wanted = harfbuzz.hb_subset_input_unicode_set(input)
  for (const character of characters) harfbuzz.hb_set_add(wanted, character.codePointAt(0) as number)
  const features = harfbuzz.hb_subset_input_set(input, sets.layoutFeatures)
  harfbuzz.hb_set_clear(features)
  for (const feature of keptFeatures(characters)) harfbuzz.hb_set_add(features, tag(feature))
}

function faceBytes(harfbuzz: HarfBuzz, face: number): Uint8Array {
  const blob = harfbuzz.hb_face_reference_blob(face)
  const start = harfbuzz.hb_blob_get_data(blob, 0)
  const bytes = new Uint8Array(harfbuzz.memory.buffer, start, harfbuzz.hb_blob_get_length(blob)).slice()
  harfbuzz.hb_blob_destroy(blob)
  return bytes
}

// Node and browsers both have it, though neither's types are loaded here.
const webAssembly = (globalThis as unknown as { readonly WebAssembly: WebAssembler }).WebAssembly

interface WebAssembler {
  instantiate(module: Uint8Array): Promise<{ readonly instance: { readonly exports: HarfBuzz } }>
}

// From HarfBuzz's hb-blob.h and hb-subset.h.
const memoryMode = { writable: 2 } as const
const flags = { noHinting: 1 } as const
const sets = { layoutFeatures: 6 } as const

interface HarfBuzz {
  readonly memory: { readonly buffer: ArrayBuffer }
  _initialize(): void
  malloc(length: number): number
  hb_blob_create(address: number, length: number, mode: number, user: 0, destroy: 0): number
  hb_blob_destroy(blob: number): void
  hb_blob_get_data(blob: number, length: 0): number
  hb_blob_get_length(blob: number): number
  hb_face_create(blob: number, index: 0): number
  hb_face_destroy(face: number): void
  hb_face_reference_blob(face: number): number
  hb_set_add(set: number, value: number): void
  hb_set_clear(set: number): void
  hb_subset_input_create_or_fail(): number
  hb_subset_input_destroy(input: number): void
  hb_subset_input_set(input: number, set: number): number
  hb_subset_input_set_flags(input: number, flags: number): void
  hb_subset_input_unicode_set(input: number): number
  hb_subset_or_fail(face: number, input: number): number
  hb_subset_preprocess(face: number): number
}
