/**
 * Where something stands in what the author wrote. Lines and columns count from 1; the line of a cell
 * is its row, written out with its cells beside each other.
 */
export type Place = {
  readonly file: string
  readonly line: number
  readonly column: number
  /** Number of characters to underline. */
  readonly length: number
  /** The cell of a workbook, such as C7, and its sheet. */
  readonly cell?: { readonly sheet: string; readonly name: string }
  /** The entry of its file that stands there, or would, from the top of the file down. */
  readonly path?: readonly (string | number)[]
}

/** Every kind of fault that input can have. The code is the contract; the wording is free. */
export const problemCodes = {
  'file/missing': 'a file that must be there is not',
  'file/empty': 'a file has nothing in it',
  'file/too-large': 'a file is larger than any real one would be',
  'file/not-text': 'a file is not UTF-8 text',
  'file/format': 'a file that is not in the format that its name promises',
  'file/outside': 'a path leads out of the facility folder',
  'yaml/syntax': 'the YAML cannot be read',
  'yaml/duplicate-key': 'one key stands twice in the same map',
  'yaml/alias': 'YAML anchors and aliases are not used in content',
  'schema/type': 'a value of the wrong kind',
  'schema/missing': 'a required entry is missing',
  'schema/unknown-key': 'an entry that the schema does not know',
  'schema/choice': 'a value that is not one of the listed choices',
  'schema/format': 'text that is not in the expected form',
  'quantity/number': 'the number of a quantity cannot be read',
  'quantity/no-unit': 'a quantity without its unit',
  'quantity/unknown-unit': 'a unit that is not known',
  'quantity/dimension': 'a unit of another dimension than expected',
  'quantity/range': 'a value outside the range in which it can be true',
  'oval/impossible': 'an oval that cannot exist',
  'oval/too-little': 'too few dimensions to know the shape of the oval',
  'facility/odd': 'values that cannot be, or do not fit each other',
  'ref/duplicate-id': 'one id given to two things',
  'ref/twice': 'something that may be named once in its place is named again',
  'ref/missing': 'a reference to something that is not there',
  'text/unknown-figure': 'a figure or fact named in text that does not exist',
  'text/html': 'HTML in Markdown, which is not allowed',
  'text/typed-number': 'a quantity typed in text instead of a figure',
  'text/style': 'words that break the house style',
  'text/link': 'a link to nothing',
  'template/syntax': 'a template that cannot be read',
  'language/names': 'a translated text that names other figures or links than the first',
} as const

export type ProblemCode = keyof typeof problemCodes

/** One thing wrong with the input, and where. Problems are collected, never thrown one by one. */
export type Problem = {
  readonly code: ProblemCode
  readonly severity: 'error' | 'warning'
  /** What is wrong, in the author's words; no final stop. */
  readonly message: string
  /** What was expected, or what to do next. */
  readonly hint?: string
  readonly place: Place
  /** The entry that it is about, from the top of the file down; of a table, the entry that names it. */
  readonly path?: readonly (string | number)[]
  /** The offending line as it stands in the file. */
  readonly source?: string
}

/** What a stage returns: `value` is undefined only when no later stage could work at all. */
export type Result<T> = { readonly value: T | undefined; readonly problems: readonly Problem[] }

/** True when any of the problems forbids writing output. */
export const hasErrors = (problems: readonly Problem[]): boolean =>
  problems.some((p) => p.severity === 'error')
