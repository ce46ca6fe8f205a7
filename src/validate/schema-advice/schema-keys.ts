import type { Path } from '../../read/read-yaml.ts'

type Def = {
  readonly type?: string
  readonly shape?: Readonly<Record<string, unknown>>
  readonly innerType?: unknown
  readonly element?: unknown
  readonly in?: unknown
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

/** The schema of what stands in a list. */
const elementOf = (schema: unknown): unknown => defOf(bare(schema))?.element

/** The entries that a group may have, with their schemas. */
export const shapeOf = (schema: unknown): Readonly<Record<string, unknown>> =>
  defOf(bare(schema))?.shape ?? {}

/** The schema that governs a path of a file. */
export function schemaAt(schema: unknown, path: Path): unknown {
  let at: unknown = bare(schema)
  for (const step of path) at = bare(typeof step === 'number' ? elementOf(at) : shapeOf(at)[step])
  return at
}
