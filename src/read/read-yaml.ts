import {
  type Document,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml'
import type { Place, Problem, ProblemCode, Result } from '../model/problem.ts'
import { tooDeep, tooLarge, tooLong, tooManyGroups } from './limits.ts'
import { silentSlips } from './silent-slips.ts'
import { lineOf, type ProblemMore, placeAt, problemAt, type SourceFile } from './source-file.ts'
import { unprintableTexts } from './unprintable-texts.ts'
import { firstFault } from './yaml-faults/first-fault.ts'
import { firstMark } from './yaml-faults/first-mark.ts'

export type Path = readonly (string | number)[]

/** A YAML file as plain data that still knows where everything stood. */
export type SourceTree = {
  readonly file: SourceFile
  readonly data: unknown
  /**
   * Where the value at a path stands; for a path that does not exist, the nearest parent that does.
   */
  readonly placeOf: (path: Path) => Place
  /** Where the key of a path stands. */
  readonly keyPlaceOf: (path: Path) => Place
  /** Where a stretch of the text of a scalar stands, found by what it says. */
  readonly textPlaceOf: (path: Path, part: string) => Place
  /** The line that a place is in. */
  readonly lineAt: (place: Place) => string
  /** Where an entry would stand that is not there, where that can be told. */
  readonly emptyPlaceOf?: (path: Path) => Place | undefined
  readonly problem: (
    place: Place,
    code: ProblemCode,
    message: string,
    more?: ProblemMore,
  ) => Problem
}

/** The first fault of a text that is no YAML; those behind it are mostly its consequences. */
function yamlProblem(file: SourceFile, doc: Document, errors: readonly YAMLError[]): Problem {
  const { at, length, message, hint } = firstFault(file.text, doc, errors)
  const twice = errors.some((e) => e.code === 'DUPLICATE_KEY' && e.pos[0] === at)
  return problemAt(
    file,
    placeAt(file, at, length),
    twice ? 'yaml/duplicate-key' : 'yaml/syntax',
    message,
    { hint },
  )
}

/** An anchor, alias or tag, which nothing here uses and which would vanish from a text. */
function refusedMark(file: SourceFile, doc: Document): Problem | undefined {
  const mark = firstMark(file.text, doc)
  if (!mark) return undefined
  return problemAt(
    file,
    placeAt(file, mark.at, mark.length),
    'yaml/alias',
    'anchors, aliases and tags (&, * and !) are not used here',
    { hint: mark.hint },
  )
}

/** A list or a group where the name of an entry belongs, such as `{time}` without quotes. */
function nameless(file: SourceFile, doc: Document): Problem | undefined {
  let range: readonly [number, number] | undefined
  visit(doc, {
    Pair(_, { key }) {
      range = isScalar(key) ? undefined : rangeOf(key)
      return range && visit.BREAK
    },
  })
  if (!range) return undefined
  return problemAt(
    file,
    placeAt(file, range[0], range[1] - range[0]),
    'yaml/syntax',
    'a list or a group stands where the name of an entry was expected',
    { hint: 'a text that begins with [ or { stands in quotes' },
  )
}

/** The node at a path, or the last one on the way there. */
function nodeAt(doc: Document, path: Path): unknown {
  let node: unknown = doc.contents
  for (const step of path) {
    const next: unknown = isMap(node) || isSeq(node) ? node.get(step, true) : undefined
    if (!isNode(next)) return node
    node = next
  }
  return node
}

const rangeOf = (node: unknown): readonly [number, number] | undefined =>
  isNode(node) && node.range ? [node.range[0], node.range[1]] : undefined

const parsed = ({ text }: SourceFile): Document =>
  parseDocument(text, {
    lineCounter: new LineCounter(),
    prettyErrors: false,
    strict: true,
    uniqueKeys: true,
    merge: false,
  })

/**
 * A file without faults whose data is known from an earlier reading; it is parsed again only where
 * somebody asks for a place in it.
 */
export function knownYaml(file: SourceFile, data: unknown): SourceTree {
  let doc: Document | undefined
  return treeOf(file, data, () => {
    doc ??= parsed(file)
    return doc
  })
}

/** Reads YAML 1.2 with positions; anchors, aliases and several documents in a file are refused. */
export function readYaml(file: SourceFile): Result<SourceTree> {
  const large = tooLong(file) ?? tooLarge(file) ?? tooDeep(file)
  if (large) return { value: undefined, problems: [large] }
  try {
    return readWritten(file)
  } catch (error) {
    // The parser calls itself for every group in a group, whatever these are made of.
    if (error instanceof RangeError) return { value: undefined, problems: [tooManyGroups(file, 0)] }
    throw error
  }
}

function readWritten(file: SourceFile): Result<SourceTree> {
  const doc = parsed(file)
  const problems: Problem[] = []
  const errors = [...doc.errors, ...doc.warnings]
  if (file.text.trim() === '' || (errors.length === 0 && doc.contents === null))
    problems.push(
      problemAt(file, placeAt(file, 0, 1), 'file/empty', 'the file is empty', {
        hint: 'see a demo for what belongs here; npm run new makes a facility file in which every entry is explained',
      }),
    )
  else if (errors.length > 0) problems.push(yamlProblem(file, doc, errors))
  const mark = errors.length === 0 ? refusedMark(file, doc) : undefined
  if (mark) problems.push(mark)
  const unnamed = errors.length === 0 && !mark ? nameless(file, doc) : undefined
  if (unnamed) problems.push(unnamed)
  if (errors.length === 0) problems.push(...unprintableTexts(file, doc))
  if (problems.length > 0) return { value: undefined, problems }
  const data: unknown = doc.toJS({ maxAliasCount: 0 })
  return { value: treeOf(file, data, () => doc), problems: silentSlips(file, doc) }
}

/** @param doc The parsed file. */
function treeOf(file: SourceFile, data: unknown, doc: () => Document): SourceTree {
  const placeOf = (path: Path): Place => {
    const [from, to] = rangeOf(nodeAt(doc(), path)) ?? [0, 1]
    const end = file.text.slice(from, to).search(/\n/)
    return { ...placeAt(file, from, end === -1 ? to - from : end), path }
  }
  const keyPlaceOf = (path: Path): Place => {
    const parent = nodeAt(doc(), path.slice(0, -1))
    const key = path.at(-1)
    const pair = isMap(parent)
      ? parent.items.find((p) => isPair(p) && isScalar(p.key) && p.key.value === key)
      : undefined
    const range = rangeOf(pair?.key)
    return range ? { ...placeAt(file, range[0], range[1] - range[0]), path } : placeOf(path)
  }
  const textPlaceOf = (path: Path, part: string): Place => {
    const [from, to] = rangeOf(nodeAt(doc(), path)) ?? [0, 0]
    const at = file.text.slice(from, to).indexOf(part)
    return at === -1 ? placeOf(path) : { ...placeAt(file, from + at, part.length), path }
  }
  const lineAt = ({ line }: Place): string => lineOf(file, line)
  const problem: SourceTree['problem'] = (place, code, message, more) =>
    problemAt(file, place, code, message, more)
  return { file, data, placeOf, keyPlaceOf, textPlaceOf, lineAt, problem }
}
