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
import { type ProblemMore, placeAt, problemAt, type SourceFile } from './source-file.ts'

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
  readonly problem: (
    place: Place,
    code: ProblemCode,
    message: string,
    more?: ProblemMore,
  ) => Problem
}

const known: Readonly<Record<string, ProblemCode>> = {
  DUPLICATE_KEY: 'yaml/duplicate-key',
  BAD_ALIAS: 'yaml/alias',
}

function yamlProblem(file: SourceFile, error: YAMLError): Problem {
  const [from, to] = error.pos
  const at = Math.min(from, file.text.length)
  const place = placeAt(file, at, Math.min(to - from, 80))
  return problemAt(
    file,
    place,
    known[error.code] ?? 'yaml/syntax',
    error.message.split('\n')[0]?.replace(/ at line \d+, column \d+:?$/, '') ?? error.message,
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

/** Reads YAML 1.2 with positions; anchors, aliases and several documents in a file are refused. */
export function readYaml(file: SourceFile): Result<SourceTree> {
  const lines = new LineCounter()
  const doc = parseDocument(file.text, {
    lineCounter: lines,
    prettyErrors: false,
    strict: true,
    uniqueKeys: true,
    merge: false,
  })
  const problems = [...doc.errors, ...doc.warnings].map((e) => yamlProblem(file, e))
  if (file.text.trim() === '' || (problems.length === 0 && doc.contents === null)) {
    problems.push(
      problemAt(file, placeAt(file, 0, 1), 'file/empty', 'the file is empty', {
        hint: 'see the demo facility for what belongs here',
      }),
    )
  }
  visit(doc, {
    Alias: (_, node) => {
      const [from, to] = rangeOf(node) ?? [0, 1]
      problems.push(
        problemAt(
          file,
          placeAt(file, from, to - from),
          'yaml/alias',
          'anchors and aliases (& and *) are not used here',
          { hint: 'write the value out' },
        ),
      )
    },
  })
  if (problems.length > 0) return { value: undefined, problems }
  const placeOf = (path: Path): Place => {
    const [from, to] = rangeOf(nodeAt(doc, path)) ?? [0, 1]
    const end = file.text.slice(from, to).search(/\n/)
    return placeAt(file, from, end === -1 ? to - from : end)
  }
  const keyPlaceOf = (path: Path): Place => {
    const parent = nodeAt(doc, path.slice(0, -1))
    const key = path.at(-1)
    const pair = isMap(parent)
      ? parent.items.find((p) => isPair(p) && isScalar(p.key) && p.key.value === key)
      : undefined
    const range = rangeOf(pair?.key)
    return range ? placeAt(file, range[0], range[1] - range[0]) : placeOf(path)
  }
  const textPlaceOf = (path: Path, part: string): Place => {
    const [from, to] = rangeOf(nodeAt(doc, path)) ?? [0, 0]
    const at = file.text.slice(from, to).indexOf(part)
    return at === -1 ? placeOf(path) : placeAt(file, from + at, part.length)
  }
  const data: unknown = doc.toJS({ maxAliasCount: 0 })
  const problem: SourceTree['problem'] = (place, code, message, more) =>
    problemAt(file, place, code, message, more)
  return { value: { file, data, placeOf, keyPlaceOf, textPlaceOf, problem }, problems: [] }
}
