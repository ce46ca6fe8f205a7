import type { Path } from '../read/read-yaml.ts'
import type { Value } from './written.ts'

type Group = Readonly<Record<string, unknown>>

const isGroup = (data: unknown): data is Group =>
  typeof data === 'object' && data !== null && !Array.isArray(data)

const isEmpty = (data: unknown): boolean =>
  typeof data === 'object' && data !== null && Object.keys(data).length === 0

/** Data with an entry removed; groups that this leaves empty are removed too. */
function without(data: unknown, path: Path): { readonly data: unknown } | undefined {
  const [step, ...rest] = path
  if (step === undefined) return { data: undefined }
  const has =
    (Array.isArray(data) && typeof step === 'number' && step < data.length) ||
    (isGroup(data) && Object.hasOwn(data, step))
  if (!has) return undefined
  const inner = without((data as Record<string | number, unknown>)[step], rest)
  if (!inner) return undefined
  const goes = inner.data === undefined || isEmpty(inner.data)
  if (Array.isArray(data))
    return {
      data: data.flatMap((v: unknown, i) => (i === step ? (goes ? [] : [inner.data]) : [v])),
    }
  const entries = Object.entries(data as Group).flatMap(([key, v]) =>
    key === String(step) ? (goes ? [] : [[key, inner.data] as const]) : [[key, v] as const],
  )
  return { data: Object.fromEntries(entries) }
}

/** Data with an entry changed or added. */
function put(data: unknown, path: Path, value: Value): { readonly data: unknown } | undefined {
  const [step, ...rest] = path
  if (step === undefined) return { data: value }
  const there = data ?? (typeof step === 'number' ? [] : {})
  if (Array.isArray(there)) {
    if (typeof step !== 'number' || step > there.length) return undefined
    const inner = put(there[step], rest, value)
    return inner && { data: [...there.slice(0, step), inner.data, ...there.slice(step + 1)] }
  }
  if (!isGroup(there) || typeof step === 'number') return undefined
  const inner = put(there[step], rest, value)
  return inner && { data: { ...there, [step]: inner.data } }
}

/**
 * What a file must say after a change; undefined where the change has no place in it.
 * @param value Undefined to remove the entry.
 */
export const dataWith = (
  data: unknown,
  path: Path,
  value: Value | undefined,
): { readonly data: unknown } | undefined =>
  path.length === 0 ? undefined : value === undefined ? without(data, path) : put(data, path, value)
