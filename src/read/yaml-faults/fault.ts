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
export function quoted(text: string): string {
  if (!text.includes('"') && !text.includes('\\')) return `"${text}"`
  return text.includes("'")
    ? `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`
    : `'${text}'`
}

/** Longer texts are not repeated whole: whoever types sees them on the screen. */
const longest = 300

/** What to do with a text that needs quotes: the text with them behind its key, to be copied. */
export const inQuotes = (text: string, key = ''): string =>
  text.length > longest
    ? `put " before "${shortened(text, 20)}" and " behind its last word`
    : key === ''
      ? `put the text in quotes: ${quoted(text)}`
      : `write ${key}: ${quoted(text)}`

/** The key that stands before a value in its line; '' where it is a point of a list. */
export const keyBefore = (text: string, at: number): string =>
  /(?:^|[\n{,]|- )\s*([\w-]+):\s*$/.exec(text.slice(Math.max(0, at - 200), at))?.[1] ?? ''

/** A text of any length as part of a message. */
const shortened = (text: string, longest = 60): string =>
  text.length > longest ? `${text.slice(0, longest - 1).trimEnd()}…` : text
