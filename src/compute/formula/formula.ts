/**
 * A formula as it is read from its TeX: every part in the order in which it stands, nothing left
 * out, so that printing it gives the source again. What prints it as TeX, as text, or works it out
 * walks this and nothing else.
 */
export type Formula = readonly FormulaNode[]

export type FormulaNode =
  /** `@straight`: an input, or an output named before. */
  | { readonly kind: 'name'; readonly name: string }
  /** `0.5` or `2{,}640`, digits as in the source. */
  | { readonly kind: 'number'; readonly tex: string }
  /** A letter or a command that prints one: `R`, `\rho`, `°`. */
  | { readonly kind: 'letter'; readonly tex: string }
  /** Upright words or a unit: `\text{gal/min}`; `tex` is what stands between the braces. */
  | { readonly kind: 'upright'; readonly tex: string }
  /** What joins, compares or parts: `+`, `\cdot`, `\le`, `,`. */
  | { readonly kind: 'sign'; readonly tex: string }
  /** White space and commands that make room: `\,`, `\quad`. */
  | { readonly kind: 'space'; readonly tex: string }
  /** A command that changes how the rest is set and says nothing: `\textstyle`. */
  | { readonly kind: 'style'; readonly tex: string }
  /** `\max`, `\sum`: takes what follows. */
  | { readonly kind: 'function'; readonly name: string }
  /** `{…}`. */
  | { readonly kind: 'group'; readonly of: Formula }
  /** `_k` or `^{0.6}`, belonging to the part before it; `mark` is `'` for a prime. */
  | { readonly kind: 'script'; readonly mark: '_' | '^' | "'"; readonly of: Formula }
  /** `\frac{a}{b}`; each side is one part, mostly a group. */
  | {
      readonly kind: 'fraction'
      readonly command: 'frac' | 'tfrac'
      readonly over: FormulaNode
      readonly under: FormulaNode
    }
  /** `\sqrt{a}` and `\bar d`. */
  | {
      readonly kind: 'over'
      readonly command: 'sqrt' | 'bar'
      readonly gap: string
      readonly of: FormulaNode
    }
  /** Brackets of any kind with what stands between them: `\left(…\right)`, `[…]`, `|…|`. */
  | { readonly kind: 'fenced'; readonly open: string; readonly close: string; readonly of: Formula }
