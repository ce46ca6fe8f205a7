/** Words and phrases for one thing, in groups, and words that tell nothing of what is looked for. */
export type SearchWords = {
  readonly same: readonly (readonly string[])[]
  readonly silent: readonly string[]
}
