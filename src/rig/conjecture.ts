/** That a thing is not recorded but thought likely, and on whose word. */
export interface Conjecture {
  /** 'a photograph of 1911'; undefined where the text credits nobody. */
  readonly by: string | undefined
}
