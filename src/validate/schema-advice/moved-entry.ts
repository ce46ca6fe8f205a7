import type { Path } from '../../read/read-yaml.ts'
import { schemaAt, shapeOf } from './schema-keys.ts'

const entriesOf = (data: unknown): readonly (readonly [string, unknown])[] =>
  typeof data === 'object' && data !== null && !Array.isArray(data) ? Object.entries(data) : []

/**
 * The empty group beside an entry that has such an entry: its indent was lost, so that it stands
 * beside the group instead of in it.
 * @param at Path of the group in which it stands now.
 * @param data What stands there.
 */
export function emptyGroupFor(
  key: string,
  schema: unknown,
  at: Path,
  data: unknown,
): string | undefined {
  const shape = shapeOf(schemaAt(schema, at))
  return entriesOf(data).find(
    ([name, value]) => value === null && Object.hasOwn(shapeOf(shape[name]), key),
  )?.[0]
}
