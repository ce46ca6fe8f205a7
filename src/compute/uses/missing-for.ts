import { factPaths } from '../../model/fact-spec.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import { allUses } from './all-uses.ts'
import { type Readings, sampleReadings } from './readings.ts'

/** What a facility has, as far as it decides which worksheets there are. */
export type Had = {
  readonly known: ReadonlySet<string>
  readonly data: Readings
  readonly system: UnitSystem
}

/** What a facility would have to bring for a worksheet. */
export type MissingFor = {
  readonly facts: readonly string[]
  readonly readings: readonly (keyof Readings)[]
}

/**
 * What is missing for a worksheet that a facility has not: facts and readings of which none can be
 * left out, found by having all and giving back one after the other. Where there are several ways
 * this is one of them.
 * @returns undefined where the worksheet is not there even with everything.
 */
export function missingFor(use: string, { known, data, system }: Had): MissingFor | undefined {
  const paths = new Set<string>([...known, ...factPaths])
  let readings: Readings = { ...sampleReadings, ...withoutEmpty(data) }
  const there = (from: ReadonlySet<string>, of: Readings): boolean =>
    allUses(from, system, of).some(({ id }) => id === use)
  if (!there(paths, readings)) return undefined
  const names = (Object.keys(sampleReadings) as (keyof Readings)[]).filter((name) => !data[name])
  const needed = names.filter((name) => {
    const fewer = { ...readings, [name]: undefined }
    if (!there(paths, fewer)) return true
    readings = fewer
    return false
  })
  /** Gives back what can be, many facts at once where none of them is needed. @returns the others. */
  const neededOf = (some: readonly string[]): readonly string[] => {
    for (const path of some) paths.delete(path)
    if (there(paths, readings)) return []
    for (const path of some) paths.add(path)
    if (some.length === 1) return some
    const half = Math.ceil(some.length / 2)
    return [...neededOf(some.slice(0, half)), ...neededOf(some.slice(half))]
  }
  const facts = neededOf(factPaths.filter((path) => !known.has(path)))
  return { facts, readings: needed }
}

const withoutEmpty = (data: Readings): Readings =>
  Object.fromEntries(Object.entries(data).filter(([, value]) => value !== undefined))
