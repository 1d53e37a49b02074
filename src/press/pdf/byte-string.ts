/** Bytes written piece by piece and joined once: text a byte a letter, each piece of text ended as a line. */
export interface ByteString {
  readonly length: number
  write(piece: string | Uint8Array): void
  bytes(): Uint8Array
}

export function byteString(): ByteString {
  const pieces: (string | Uint8Array)[] = []
  let lines = ''
  let length = 0
  const endLines = () => {
    if (lines !== '') pieces.push(lines)
    lines = ''
  }
  return {
    get length() {
      return length
    },
    write(piece) {
      if (typeof piece === 'string') {
        lines += `${piece}\n`
        length += piece.length + 1
      } else {
        endLines()
        pieces.push(piece)
        length += piece.length
      }
    },
    bytes() {
      endLines()
      return joined(pieces, length)
    },
  }
}

function joined(pieces: readonly (string | Uint8Array)[], length: number): Uint8Array {
  const [first] = pieces
  if (pieces.length === 1 && first instanceof Uint8Array) return first
  const whole = new Uint8Array(length)
  let at = 0
  for (const piece of pieces) {
    if (typeof piece === 'string') writeLetters(piece, whole.subarray(at, at + piece.length))
    else whole.set(piece, at)
    at += piece.length
  }
  return whole
}

// Much the faster way writes letters beyond the first 128 as two bytes, and then runs out of room.
function writeLetters(letters: string, into: Uint8Array): void {
  const { read, written } = encoder.encodeInto(letters, into)
  if (read < letters.length || written < letters.length)
    for (let i = 0; i < letters.length; i++) into[i] = letters.charCodeAt(i)
}

const encoder = new TextEncoder()
