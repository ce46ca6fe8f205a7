import { type FactPath, factSpec } from '../../../model/fact-spec.ts'
import type { Quantity } from '../../../model/quantity/read-quantity.ts'
import { usualValue } from '../../../model/usual-value.ts'
import type { Path } from '../../../read/read-yaml.ts'
import type { ParsedFacility } from '../parsed-facility.ts'

/** A value of a facility file with the entry that states it; SI. */
export type Valued = {
  readonly si: number
  /** Undefined where nobody states it and a usual value stands in. */
  readonly path: Path | undefined
}

const isQuantity = (x: unknown): x is Quantity =>
  typeof x === 'object' && x !== null && 'si' in x && typeof x.si === 'number'

const entryAt = (file: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (at, step) =>
      typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[step] : undefined,
    file,
  )

/** A quantity at an entry of the file, if it stands there. */
export function statedAt({ file }: ParsedFacility, path: Path): Valued | undefined {
  const value = entryAt(file, path)
  return isQuantity(value) ? { si: value.si, path } : undefined
}

/** Every quantity of a tree of entries, those in lists too. */
export function quantitiesOf(
  data: unknown,
  path: Path = [],
): { readonly path: Path; readonly si: number }[] {
  if (isQuantity(data)) return [{ path, si: data.si }]
  if (typeof data !== 'object' || data === null) return []
  return Object.entries(data).flatMap(([key, value]) =>
    quantitiesOf(value, [...path, Array.isArray(data) ? Number(key) : key]),
  )
}

/** What a fact is for this facility: as stated, else what stands in for it. */
export function factAt(parsed: ParsedFacility, fact: FactPath): Valued | undefined {
  const stated = statedAt(parsed, fact.split('.'))
  if (stated) return stated
  const { cushion, units } = parsed.file
  const typical = factSpec(fact)?.typical(cushion.material)
  return typical && { si: usualValue(typical, units), path: undefined }
}

/** A quantity as the file writes it, for messages. */
export function written({ tree }: ParsedFacility, path: Path): string {
  const value = entryAt(tree.data, path)
  return typeof value === 'string' || typeof value === 'number' ? String(value) : ''
}
