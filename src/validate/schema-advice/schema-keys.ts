import type { Path } from '../../read/read-yaml.ts'

type Def = {
  readonly type?: string
  readonly shape?: Readonly<Record<string, unknown>>
  readonly innerType?: unknown
  readonly element?: unknown
  readonly in?: unknown
  readonly options?: readonly unknown[]
  readonly entries?: Readonly<Record<string, string>>
}

const defOf = (schema: unknown): Def | undefined =>
  (schema as { _zod?: { def?: Def } } | undefined)?._zod?.def

/** A schema without the layers that make it optional or change what was read. */
function bare(schema: unknown): unknown {
  const def = defOf(schema)
  if (def?.innerType !== undefined) return bare(def.innerType)
  if (def?.type === 'pipe') return bare(def.in)
  return schema
}

/** What a schema is, in a word of its library: `object`, `array`, `string`, `enum` … */
export const typeOf = (schema: unknown): string => defOf(bare(schema))?.type ?? 'unknown'

/** The schema of what stands in a list. */
export const elementOf = (schema: unknown): unknown => defOf(bare(schema))?.element

/** The entries that a group may have, with their schemas. */
export const shapeOf = (schema: unknown): Readonly<Record<string, unknown>> =>
  defOf(bare(schema))?.shape ?? {}

/** The words that may stand in a place. */
export const choicesOf = (schema: unknown): readonly string[] =>
  Object.values(defOf(bare(schema))?.entries ?? {})

/** Whether an entry may be left out. */
export const isOptional = (schema: unknown): boolean => {
  const def = defOf(schema)
  return def?.type === 'optional' || (def?.type === 'pipe' && isOptional(def.in))
}

/** The schema that governs a path of a file. */
export function schemaAt(schema: unknown, path: Path): unknown {
  let at: unknown = bare(schema)
  for (const step of path) at = bare(typeof step === 'number' ? elementOf(at) : shapeOf(at)[step])
  return at
}

/** A group of the file, by the keys that lead to it; lists are passed without a number. */
export type Group = {
  readonly path: readonly string[]
  readonly keys: readonly string[]
  /** Whether it stands in a list. */
  readonly listed: boolean
}

function collect(schema: unknown, path: readonly string[], listed: boolean): Group[] {
  if (typeOf(schema) === 'array') return collect(elementOf(schema), path, true)
  const shape = shapeOf(schema)
  const keys = Object.keys(shape)
  if (keys.length === 0) return []
  return [
    { path, keys, listed },
    ...keys.flatMap((key) => collect(shape[key], [...path, key], listed)),
  ]
}

const known = new WeakMap<object, readonly Group[]>()

/** All groups that a file may have, the outermost first. */
export function groupsOf(schema: object): readonly Group[] {
  const groups = known.get(schema) ?? collect(schema, [], false)
  known.set(schema, groups)
  return groups
}
