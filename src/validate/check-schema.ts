import type * as z from 'zod'
import type { Place, Problem, ProblemCode, Result } from '../model/problem.ts'
import type { Path, SourceTree } from '../read/read-yaml.ts'
import { type HiddenHead, hiddenHeadHint, hiddenHeads } from '../read/yaml-faults/hidden-head.ts'
import { fairYear } from './fair-year.ts'
import { missing } from './schema-advice/missing.ts'
import { schemaAt, shapeOf } from './schema-advice/schema-keys.ts'
import { emptyGroupFor, nameMeant, unknownKey } from './schema-advice/unknown-key.ts'
import { wrongForm } from './schema-advice/wrong-form.ts'
import { wrongChoice, wrongType } from './schema-advice/wrong-type.ts'

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

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (v, step) =>
      typeof v === 'object' && v !== null
        ? (v as Record<string | number, unknown>)[step]
        : undefined,
    data,
  )
}

/** Whoever has so many entries that do not exist has another file; each takes a while to think about. */
const mostTold = 100

const headsAbove = (tree: SourceTree, line: number): readonly HiddenHead[] =>
  hiddenHeads(tree.file.text.split(/\r?\n/), line, true)

/** An entry that has come into another group, since the head of its own is still behind #. */
const underRemark = (
  tree: SourceTree,
  place: Place,
  key: string,
  heads: readonly HiddenHead[],
): Problem =>
  tree.problem(
    place,
    'schema/unknown-key',
    `"${key}" belongs to "${heads.map(({ name }) => name).join('.')}", whose head is still a remark`,
    { hint: hiddenHeadHint(heads) },
  )

function unknownKeys(
  tree: SourceTree,
  schema: object,
  issue: Extract<Issue, { code: 'unrecognized_keys' }>,
): Problem[] {
  const at = plainPath(issue.path)
  const data = valueAt(tree.data, at)
  return issue.keys.slice(0, mostTold).map((key) => {
    const place = tree.keyPlaceOf([...at, key])
    const heads = headsAbove(tree, place.line)
    if (heads.length > 0) return underRemark(tree, place, key, heads)
    const { message, hint } = unknownKey({ key, schema, at, data })
    return tree.problem(place, 'schema/unknown-key', message, { hint })
  })
}

function missingEntry(tree: SourceTree, schema: object, path: Path): Problem {
  const at =
    tree.emptyPlaceOf?.(path) ??
    (path.length > 1 ? tree.keyPlaceOf(path.slice(0, -1)) : tree.placeOf([]))
  const group = tree.placeOf(path.slice(0, -1))
  const isInBraces = tree.lineAt(group)[group.column - 1] === '{'
  const { message, hint } = missing(schema, path, isInBraces)
  return tree.problem(at, 'schema/missing', message, { hint, path })
}

/** The name of an entry in a group whose names are free but have a form. */
function wrongKey(tree: SourceTree, issue: Extract<Issue, { code: 'invalid_key' }>): Problem {
  const path = plainPath(issue.path)
  const wanted = issue.issues[0]?.message ?? ''
  return tree.problem(
    tree.keyPlaceOf(path),
    'schema/unknown-key',
    `"${String(path.at(-1))}" is no name for an entry here`,
    /^Invalid/.test(wanted) ? {} : { hint: `expected ${wanted}` },
  )
}

function problemsOf(tree: SourceTree, schema: object, issue: Issue): Problem[] {
  const path = plainPath(issue.path)
  const value = valueAt(tree.data, path)
  const place = tree.placeOf(path)
  if (issue.code === 'unrecognized_keys') return unknownKeys(tree, schema, issue)
  if (issue.code === 'invalid_key') return [wrongKey(tree, issue)]
  if (issue.code === 'custom' && issue.params !== undefined) {
    const params = issue.params as IssueParams
    const quoted = /["']/.test(tree.lineAt(place).charAt(place.column - 1)) ? 1 : 0
    const inside =
      params.at === undefined
        ? place
        : { ...place, column: place.column + quoted + params.at, length: params.length ?? 1 }
    return [tree.problem(inside, params.code, issue.message, { hint: params.hint })]
  }
  if (issue.code === 'invalid_union') {
    const values = issue.errors.flatMap(([first]) =>
      first?.code === 'invalid_value' && first.path.length === 0 ? [first.values.map(String)] : [],
    )
    // One of several single values: all of them are the choices.
    if (value !== undefined && values.length === issue.errors.length)
      return [tree.problem(place, 'schema/choice', ...choiceSaid(values.flat(), value))]
    // Report the branch that got furthest: the one whose faults lie deepest.
    const branches = [...issue.errors].sort(
      (a, b) =>
        Math.max(0, ...b.map((i) => i.path.length)) - Math.max(0, ...a.map((i) => i.path.length)),
    )
    return (branches[0] ?? []).flatMap((inner) =>
      problemsOf(tree, schema, { ...inner, path: [...issue.path, ...inner.path] }),
    )
  }
  if (value === undefined && (issue.code === 'invalid_type' || issue.code === 'invalid_value'))
    return [missingEntry(tree, schema, path)]
  const raw = tree.lineAt(place).slice(place.column - 1, place.column - 1 + place.length)
  const { code, message, hint } = saidOf(
    schema,
    path,
    { value, raw, fairYear: fairYear(tree.data) },
    issue,
  )
  return [tree.problem(place, code, message, { hint })]
}

function choiceSaid(choices: readonly string[], value: unknown) {
  const { message, hint } = wrongChoice(choices, value, false)
  return [message, { hint }] as const
}

/** What is said of a value that is there and is not right. */
function saidOf(
  schema: object,
  path: Path,
  given: { readonly value: unknown; readonly raw: string; readonly fairYear: string | undefined },
  issue: Issue,
) {
  const { value } = given

  if (issue.code === 'invalid_type')
    return { code: 'schema/type', ...wrongType(schema, path, given, issue.expected) } as const
  if (issue.code === 'invalid_value')
    return {
      code: 'schema/choice',
      ...wrongChoice(issue.values.map(String), value, typeof path.at(-1) === 'number'),
    } as const
  return {
    code: 'schema/format',
    ...wrongForm(schema, path, value, { message: issue.message, fairYear: given.fairYear }),
  } as const
}

/** The entry before one that is the end of its number. */
function cutBefore(key: string, at: Path, data: unknown): string[] {
  const names = Object.keys(data as Readonly<Record<string, unknown>>)
  // Keys that look like whole numbers stand first in an object, so only others have one before them.
  const before = names[names.indexOf(key) - 1]
  return before === undefined ? [] : [[...at, before].join('.')]
}

/**
 * Entries that are missing or empty only because another entry was meant for them: one that is
 * misspelt, or that lost its indent. The message about that one says it.
 */
function meantBy(tree: SourceTree, schema: object, issue: Issue): string[] {
  if (issue.code !== 'unrecognized_keys') return []
  const at = plainPath(issue.path)
  const data = valueAt(tree.data, at)
  const allowed = Object.keys(shapeOf(schemaAt(schema, at)))
  return issue.keys.slice(0, mostTold).flatMap((key) => {
    // The rest of a number that a comma has cut in two; the first part is told with it.
    if (/^\d{3}/.test(key)) return cutBefore(key, at, data)
    const meant = emptyGroupFor({ key, schema, at, data }) ?? nameMeant(key, at, allowed)
    return meant === undefined ? [] : [[...at, meant].join('.')]
  })
}

/** Of a line whose group still has its head behind #, only that is told: the rest comes of it. */
function withoutConsequences(tree: SourceTree, problems: readonly Problem[]): Problem[] {
  const inLine = (p: Problem): readonly Problem[] =>
    problems.filter((q) => q.place.line === p.place.line)
  return problems.filter((p) => {
    const first = inLine(p).find((q) => q.code === 'schema/unknown-key' && isUnderRemark(tree, q))
    return first === undefined || first === p
  })
}

const isUnderRemark = (tree: SourceTree, { place }: Problem): boolean =>
  headsAbove(tree, place.line).length > 0

/** Checks a tree against a schema; every fault is reported at its line. */
export function checkSchema<T extends z.ZodType>(tree: SourceTree, schema: T): Result<z.output<T>> {
  const parsed = schema.safeParse(tree.data)
  if (parsed.success) return { value: parsed.data, problems: [] }
  const { issues } = parsed.error
  const told = new Set(issues.flatMap((issue) => meantBy(tree, schema, issue)))
  const problems = issues
    .filter((issue) => !told.has(issue.path.join('.')))
    .flatMap((issue) => problemsOf(tree, schema, issue))
  return { value: undefined, problems: withoutConsequences(tree, problems) }
}
