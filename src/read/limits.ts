import type { Problem } from '../model/problem.ts'
import { placeAt, problemAt, type SourceFile } from './source-file.ts'

/**
 * Nothing that people write comes near these; what does would take a reader minutes, so it is the
 * wrong file or means harm.
 */
const most = { lines: 10_000, characters: 7_000, all: 300_000, depth: 100 } as const

const refused = (file: SourceFile, at: number, message: string, hint: string): Problem =>
  problemAt(file, placeAt(file, at, 1), 'file/too-large', message, { hint })

/** The start of the first line that is longer than any is. */
function longLine(text: string): number | undefined {
  let from = 0
  for (let to = text.indexOf('\n'); to !== -1; to = text.indexOf('\n', from)) {
    if (to - from > most.characters) return from
    from = to + 1
  }
  return text.length - from > most.characters ? from : undefined
}

/** The start of the line that is one more than there may be. */
function oneLineTooMany(text: string): number | undefined {
  let at = 0
  for (let n = 0; n < most.lines; n++) {
    at = text.indexOf('\n', at) + 1
    if (at === 0) return undefined
  }
  return at < text.length ? at : undefined
}

/** What is too long about a text for anybody to have written it, or nothing. */
export function tooLong(file: SourceFile): Problem | undefined {
  const long = longLine(file.text)
  if (long !== undefined)
    return refused(
      file,
      long,
      `a line has more than ${most.characters} characters`,
      'no text here is as long; is it the right file?',
    )
  const more = oneLineTooMany(file.text)
  return more === undefined
    ? undefined
    : refused(
        file,
        more,
        `the file has more than ${most.lines} lines`,
        'no file of a fair is as long; is it the right one?',
      )
}

/** A file of texts that is larger than any, which tables and lines of a rail may be. */
export const tooLarge = (file: SourceFile): Problem | undefined =>
  file.text.length <= most.all
    ? undefined
    : refused(
        file,
        0,
        `the file has more than ${most.all} characters`,
        'no file of texts is as long; is it the right one?',
      )

/** Lists in lists on one line, or an entry that stands further in than on any page. */
const deepLine = /^(?:[ \t]*(?:[-?][ \t]+){100}| {200})/m

/** Where groups or lists stand in each other deeper than anybody writes. */
function deepAt(text: string): number | undefined {
  let depth = 0
  for (let at = 0; at < text.length; at++) {
    const c = text[at]
    if (c === '[' || c === '{') depth++
    else if (c === ']' || c === '}') depth = Math.max(0, depth - 1)
    if (depth > most.depth) return at
  }
  return deepLine.exec(text)?.index
}

/** Groups or lists in each other, more of them than any reader follows. */
export const tooManyGroups = (file: SourceFile, at: number): Problem =>
  refused(
    file,
    at,
    `more than ${most.depth} groups or lists stand in each other here`,
    'is a bracket missing that ends one?',
  )

/** Where they do so, or nothing. */
export function tooDeep(file: SourceFile): Problem | undefined {
  const at = deepAt(file.text)
  return at === undefined ? undefined : tooManyGroups(file, at)
}
