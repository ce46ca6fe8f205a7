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
  const facts = factPaths.filter((path) => {
    if (known.has(path)) return false
    paths.delete(path)
    if (there(paths, readings)) return false
    paths.add(path)
    return true
  })
  return { facts, readings: needed }
}

const withoutEmpty = (data: Readings): Readings =>
  Object.fromEntries(Object.entries(data).filter(([, value]) => value !== undefined))
