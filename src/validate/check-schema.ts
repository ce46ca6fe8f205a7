import type * as z from 'zod'
import { didYouMean } from '../model/closest.ts'
import type { Problem, ProblemCode, Result } from '../model/problem.ts'
import type { Path, SourceTree } from '../read/read-yaml.ts'
import { emptyGroupFor } from './schema-advice/moved-entry.ts'
import { schemaAt, shapeOf } from './schema-advice/schema-keys.ts'

/** What a custom check may tell with its issue, beside the message. */
export type IssueParams = {
  readonly code: ProblemCode
  readonly hint?: string | undefined
  readonly at?: number
  readonly length?: number
}

type Issue = z.core.$ZodIssue

const plainPath = (path: readonly PropertyKey[]): Path =>
  path.map((p) => (typeof p === 'number' ? p : String(p)))

const shown = (value: unknown): string =>
  value === null || value === undefined
    ? 'nothing'
    : Array.isArray(value)
      ? 'a list'
      : typeof value === 'object'
        ? 'a group of entries'
        : `"${String(value).slice(0, 60)}"`

const wanted: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of entries',
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (v, step) =>
      typeof v === 'object' && v !== null
        ? (v as Record<string | number, unknown>)[step]
        : undefined,
    data,
  )
}

function unknownKeys(
  tree: SourceTree,
  schema: unknown,
  issue: Extract<Issue, { code: 'unrecognized_keys' }>,
): Problem[] {
  const path = plainPath(issue.path)
  const allowed = Object.keys(shapeOf(schemaAt(schema, path)))
  return issue.keys.map((key) => {
    const place = tree.keyPlaceOf([...path, key])
    const group = emptyGroupFor(key, schema, path, valueAt(tree.data, path))
    if (group !== undefined)
      return tree.problem(place, 'schema/unknown-key', `"${key}" belongs under "${group}"`, {
        hint: `begin the line with 2 spaces more than that of "${group}"`,
      })
    // The usual slip in `{ station: 1,700 ft }`: inside braces the comma ends the entry.
    const hint = /^\d/.test(key)
      ? 'inside { } a comma ends an entry: put the value in quotes, such as "1,700 ft"'
      : allowed.length > 0
        ? (didYouMean(key, allowed) ?? `known here: ${allowed.join(', ')}`)
        : undefined
    return tree.problem(place, 'schema/unknown-key', `unknown entry "${key}"`, { hint })
  })
}

function problemsOf(tree: SourceTree, schema: unknown, issue: Issue): Problem[] {
  const path = plainPath(issue.path)
  const value = valueAt(tree.data, path)
  const place = tree.placeOf(path)
  if (issue.code === 'unrecognized_keys') return unknownKeys(tree, schema, issue)
  if (issue.code === 'custom') {
    const params = issue.params as IssueParams | undefined
    const quoted = /["']/.test(
      (tree.file.text.split('\n')[place.line - 1] ?? '').charAt(place.column - 1),
    )
      ? 1
      : 0
    const inside =
      params?.at === undefined
        ? place
        : { ...place, column: place.column + quoted + params.at, length: params.length ?? 1 }
    return [
      tree.problem(inside, params?.code ?? 'schema/format', issue.message, { hint: params?.hint }),
    ]
  }
  if (issue.code === 'invalid_union') {
    // Report the branch that got furthest: the one whose faults lie deepest.
    const branches = [...issue.errors].sort(
      (a, b) =>
        Math.max(0, ...b.map((i) => i.path.length)) - Math.max(0, ...a.map((i) => i.path.length)),
    )
    return (branches[0] ?? []).flatMap((inner) =>
      problemsOf(tree, schema, { ...inner, path: [...issue.path, ...inner.path] }),
    )
  }
  if (issue.code === 'invalid_type' && value === undefined) {
    return [
      tree.problem(
        path.length > 1 ? tree.keyPlaceOf(path.slice(0, -1)) : tree.placeOf([]),
        'schema/missing',
        `"${path.join('.')}" is missing`,
        { hint: `expected ${wanted[issue.expected] ?? issue.expected}` },
      ),
    ]
  }
  if (issue.code === 'invalid_type')
    return [
      tree.problem(
        place,
        'schema/type',
        `${shown(value)} where ${wanted[issue.expected] ?? issue.expected} was expected`,
      ),
    ]
  if (issue.code === 'invalid_value') {
    const choices = issue.values.map(String)
    const near = typeof value === 'string' ? didYouMean(value, choices) : undefined
    const missing = value === undefined
    return [
      tree.problem(
        place,
        missing ? 'schema/missing' : 'schema/choice',
        missing ? `"${path.join('.')}" is missing` : `${shown(value)} is not one of the choices`,
        { hint: `${near === undefined ? '' : `${near} `}expected one of: ${choices.join(', ')}` },
      ),
    ]
  }
  return [
    tree.problem(place, 'schema/format', `${shown(value)} is not right here: ${issue.message}`),
  ]
}

/** Groups that are empty only because their entries lost the indent; one message says so. */
function emptyGroupsOf(tree: SourceTree, schema: unknown, issue: Issue): string[] {
  if (issue.code !== 'unrecognized_keys') return []
  const path = plainPath(issue.path)
  const data = valueAt(tree.data, path)
  return issue.keys.flatMap((key) => {
    const group = emptyGroupFor(key, schema, path, data)
    return group === undefined ? [] : [[...path, group].join('.')]
  })
}

/** Checks a tree against a schema; every fault is reported at its line. */
export function checkSchema<T extends z.ZodType>(tree: SourceTree, schema: T): Result<z.output<T>> {
  const parsed = schema.safeParse(tree.data)
  if (parsed.success) return { value: parsed.data, problems: [] }
  const { issues } = parsed.error
  const filled = new Set(issues.flatMap((issue) => emptyGroupsOf(tree, schema, issue)))
  return {
    value: undefined,
    problems: issues
      .filter((issue) => !filled.has(issue.path.join('.')))
      .flatMap((issue) => problemsOf(tree, schema, issue)),
  }
}
