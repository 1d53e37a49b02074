/** Tells how far long work has come: a share from 0 to 1, and what is being done. */
export type Progress = (share: number, doing: string) => void

/** Shows progress on one line of the terminal; says nothing where standard error is no terminal. */
export function terminalProgress(stream: NodeJS.WriteStream): {
  readonly show: Progress
  readonly clear: () => void
} {
  if (!stream.isTTY) return { show: () => {}, clear: () => {} }
  return {
    show: (share, doing) => {
      const percent = `${Math.round(share * 100)}`.padStart(3)
      stream.write(`\r\u001b[2K${percent} %  ${printable(doing).slice(0, Math.max(10, stream.columns - 8))}`)
    },
    clear: () => stream.write('\r\u001b[2K'),
  }
}

const printable = (words: string) => words.replace(/\p{Cc}/gu, ' ')
