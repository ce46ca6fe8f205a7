import type { Problem } from '../model/problem.ts'
import { placeAt, problemAt, type SourceFile } from './source-file.ts'

/**
 * Characters that no page, table or calendar can show: controls other than tabs and ends of lines,
 * halves of a pair (from escapes in quotes), what Unicode says is no character, what turns the
 * direction of writing so that a reader sees another text than a program, and the two by which
 * figures are marked in a text while it is rendered.
 */
const unprintable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  /[\0-\x08\x0b\x0c\x0e-\x1f\x7f\ue000\ue001\ufffe\uffff\u202d\u202e]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/

/** A text that somebody typed or pasted, without such characters: nobody can see that they are there. */
export const printable = (text: string): string =>
  text.replace(new RegExp(unprintable.source, 'g'), '')

/** The first such character of a text, as Unicode numbers it. */
export function unprintableIn(
  text: string,
): { readonly at: number; readonly name: string } | undefined {
  const found = unprintable.exec(text)
  if (!found) return undefined
  const code = found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')
  return { at: found.index, name: `U+${code}` }
}

/** A text with a character that cannot be shown. */
export const unprintableProblem = (
  file: SourceFile,
  at: number,
  length: number,
  name: string,
): Problem =>
  problemAt(
    file,
    placeAt(file, at, length),
    'schema/format',
    `the text holds a character that cannot be printed (${name})`,
    { hint: 'delete the text and type it anew; it may have been copied from another program' },
  )
