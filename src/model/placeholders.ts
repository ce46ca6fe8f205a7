/** `{grade.time}`: a figure or fact named in text. */
export const placeholder = /\{([a-z][a-z0-9-]*(?:\.[a-z0-9-]+)+)\}/g

/** Anything in braces: what is not a well-formed name is a fault. */
export const anyBraces = /\{([^{}\n]*)\}/g

/** The names that a text uses. */
export const namesIn = (text: string): readonly string[] =>
  [...text.matchAll(placeholder)].map((m) => m[1] ?? '')
