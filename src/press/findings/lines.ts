import { type LineColumn, lineColumn, lineStarts, type Source, type Span } from '../../text/index.ts'

/** Turns spans into lines and columns, for the texts that findings point into. */
export interface Lines {
  readonly start: (span: Span) => LineColumn
  readonly end: (span: Span) => LineColumn
  /** 'rigs/barque.rig:12:3'. */
  readonly place: (span: Span) => string
}

export function linesOf(sources: readonly Source[]): Lines {
  const starts = new Map(sources.map(source => [source.name, lineStarts(source.text)]))
  const at = (name: string, offset: number) => lineColumn(starts.get(name) ?? [0], offset)
  const start = (span: Span) => at(span.source, span.start)
  return {
    start,
    end: span => at(span.source, Math.max(span.start, span.end)),
    place: span => {
      const { line, column } = start(span)
      return `${span.source}:${line}:${column}`
    },
  }
}
