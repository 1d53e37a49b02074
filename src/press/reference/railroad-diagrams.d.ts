declare module 'railroad-diagrams' {
  /** A piece of a diagram; as text it is SVG. */
  export interface Piece {
    toString(): string
  }
  type Child = Piece | string

  const railroads: {
    Diagram(...parts: Child[]): Piece
    Sequence(...parts: Child[]): Piece
    Choice(normal: number, ...of: Child[]): Piece
    Optional(part: Child): Piece
    OneOrMore(part: Child): Piece
    ZeroOrMore(part: Child): Piece
    Terminal(words: string): Piece
    NonTerminal(words: string): Piece
    Skip(): Piece
  }
  export default railroads
}
