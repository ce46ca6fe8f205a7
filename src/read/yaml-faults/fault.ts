/** Why a file is no YAML, and where the fault began. */
export type YamlFault = {
  /** Offset into the text. */
  readonly at: number
  readonly length: number
  readonly message: string
  /** What to type. */
  readonly hint: string
}

/** A text with quotes round it, such as can be typed. */
export const quoted = (text: string): string =>
  text.includes('"') && !text.includes("'") ? `'${text}'` : `"${text.replaceAll('"', '')}"`

/** A text of any length as part of a message. */
export const shortened = (text: string, longest = 60): string =>
  text.length > longest ? `${text.slice(0, longest - 1).trimEnd()}…` : text
