import type { Path } from '../../read/read-yaml.ts'

/** A text or number of a facility file, and where it stands. */
export type SaidEntry = { readonly at: Path; readonly value: unknown }

/** Every text and number of a group, by its path. */
export const saidEntries = (value: unknown, at: Path): readonly SaidEntry[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) =>
        saidEntries(inner, [...at, Array.isArray(value) ? Number(key) : key]),
      )
    : [{ at, value }]
