import { zlibSync } from 'fflate'

/** Deflates a stream of a PDF, alike on every machine. */
export type Pack = (stream: Uint8Array) => Uint8Array

/** A packer that remembers the streams it is told will come again, as a face's subset does in the next document. */
export function packer(): { readonly pack: Pack; readonly keep: (stream: Uint8Array) => void } {
  const kept = new WeakMap<Uint8Array, Uint8Array>()
  return {
    pack: stream => kept.get(stream) ?? deflated(stream),
    keep: stream => kept.set(stream, deflated(stream)),
  }
}

const deflated: Pack = stream => zlibSync(stream, { level: 6 })
