import Handlebars from 'handlebars'
import type { Place, Problem } from '../../model/problem.ts'
import { placeAt, problemAt, type SourceFile } from '../../read/source-file.ts'

/** Where the library says that a fault lies, if it says so: lines from 1, columns from 0. */
type Said = { readonly message: string; readonly lineNumber?: number; readonly column?: number }

const notGiven = /^"(.*)" not defined in |^Cannot read properties of \w+ \(reading '(.*)'\)$/s

function messageOf(said: string): string {
  const [, name, inner = name] = notGiven.exec(said) ?? []
  if (inner !== undefined) return `the template asks for "${inner}", which it is not given`
  return (
    said
      .split('\n')
      .at(-1)
      ?.replace(/ - \d+:\d+$/, '') ?? said
  )
}

/**
 * A place of a template, as the library counts it: lines from 1, which a carriage return alone ends too,
 * columns from 0.
 */
export function placeIn(file: SourceFile, line: number, column: number, length: number): Place {
  const ends = [...file.text.matchAll(/\r\n?|\n/g)]
  const end = ends[Math.min(line - 1, ends.length) - 1]
  return placeAt(file, (end ? end.index + end[0].length : 0) + column, length)
}

/** A fault of a template's text, as the library tells it, with its place. */
export function faultOfTemplate(file: SourceFile, error: unknown): Problem {
  const said: Said = error instanceof Error ? error : { message: String(error) }
  const [, ofParser] = /on line (\d+)/.exec(said.message) ?? []
  const [, ofMessage, column] = / - (\d+):(\d+)$/.exec(said.message) ?? []
  const line = said.lineNumber ?? Number(ofParser ?? ofMessage ?? 1)
  const place = placeIn(file, line, said.column ?? Number(column ?? 0), 1)
  return problemAt(file, place, 'template/syntax', messageOf(said.message))
}

const faults = new WeakMap<Error, Problem>()

/** The fault of a template for which filling it has ended; nothing where the program itself is at fault. */
export const templateFault = (error: unknown): Problem | undefined =>
  error instanceof Error ? faults.get(error) : undefined

/** Lets an error be known as the fault of a template from now on. */
export const blame = (error: Error, fault: Problem): void => void faults.set(error, fault)

/** Whether some template is being filled, and whether each of its partials is looked at. */
const now = { isFilling: false, looksInside: false }

/**
 * Fills a template, or a partial inside one; an error for which its text is to blame is known by its
 * place from then on.
 */
export function blaming(file: SourceFile, fillIn: () => string): string {
  const isWhole = !now.isFilling
  now.isFilling = true
  try {
    const text = fillIn()
    if ((isWhole || now.looksInside) && text.includes(printedGroup)) {
      if (isWhole) lookInside(fillIn)
      throw groupPrinted(file, text)
    }
    return text
  } catch (error) {
    // Partials stand inside: the innermost has caused it.
    const isOfText = error instanceof Handlebars.Exception || isOfLibrary(error)
    if (error instanceof Error && isOfText && !faults.has(error))
      faults.set(error, faultOfTemplate(file, error))
    throw error
  } finally {
    if (isWhole) now.isFilling = false
  }
}

/** What was filled in is whole pages: their partials are looked at only where something is wrong. */
function lookInside(fillIn: () => string): void {
  now.looksInside = true
  try {
    fillIn()
  } finally {
    now.looksInside = false
  }
}

/** What comes out where a template prints a group of values as if it were a text. */
const printedGroup = '[object Object]'

/** The longest end of what stood before it in the output that stands in the template says where. */
function groupPrinted({ path: file, text }: SourceFile, output: string): Error {
  const before = output.slice(0, output.indexOf(printedGroup)).slice(-60)
  const ends = Array.from(before, (_, i) => before.slice(i))
  const found = ends.find((end) => text.includes(end)) ?? ''
  const at = found === '' ? 0 : text.indexOf(found) + found.length
  const lines = text.slice(0, at).split('\n')
  const start = { line: lines.length, column: lines.at(-1)?.length ?? 0 }
  const node = { type: 'group', loc: { source: file, start, end: start } }
  return new Handlebars.Exception('a group of values is printed as if it were a text', node)
}

/** The parser's errors have no type of their own; others are thrown where the library looks a name up. */
const isOfLibrary = (error: unknown): boolean =>
  error instanceof Error &&
  (/^(?:Parse|Lexical) error on line /.test(error.message) ||
    /handlebars|\blookupProperty\b|\(eval at /.test(
      error.stack?.split('\n').find((line) => /^\s+at /.test(line)) ?? '',
    ))
