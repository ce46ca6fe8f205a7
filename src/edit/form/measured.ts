import type { Capability } from '../../model/capability.ts'
import { factCalled } from '../../model/fact-called.ts'
import { factSpec } from '../../model/fact-spec.ts'
import type { Path } from '../../read/read-yaml.ts'
import { groupsAt } from './data.ts'

/** A measurement of the list that goes before what is stated. */
export type Measured = {
  readonly index: number
  readonly value: string
  readonly date: string
  readonly by: string
}

const textOf = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : ''

/** Works for which a machine is the one that is used: the first in the file that can do them. */
function worksOf(data: unknown, index: number): readonly Capability[] {
  const machines = groupsAt(data, ['equipment'])
  const can = (i: number): readonly Capability[] => {
    const found = machines[i]?.['can']
    return Array.isArray(found) ? (found as Capability[]) : []
  }
  return can(index).filter(
    (work) => machines.findIndex((_machine, i) => can(i).includes(work)) === index,
  )
}

/** The facts that an entry of the file states, by their paths. */
export function factsStated(data: unknown, at: Path): readonly string[] {
  const [top, index, field] = at
  if (top === 'equipment' && typeof index === 'number' && at.length === 3)
    return worksOf(data, index).map((work) => `gear.${work}.${String(field)}`)
  const path = at.join('.')
  return at.every((step) => typeof step === 'string') && factSpec(path) ? [path] : []
}

/** The latest measurement of what an entry states. */
export function measuredAt(data: unknown, at: Path): Measured | undefined {
  const facts = factsStated(data, at)
  if (facts.length === 0) return undefined
  return groupsAt(data, ['measurements'])
    .map((entry, index) => ({
      index,
      of: textOf(entry['of']),
      value: textOf(entry['value']),
      date: textOf(entry['date']),
      by: textOf(entry['by']),
    }))
    .filter(({ of }) => facts.includes(factCalled(of) ?? of))
    .sort((a, b) => a.date.localeCompare(b.date))
    .at(-1)
}
