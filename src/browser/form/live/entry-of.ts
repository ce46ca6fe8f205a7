import { machineFor } from '../../../compute/facts/collect.ts'
import { entryAbout } from '../../../model/entry-about.ts'
import { capabilityOf } from '../../../model/fact-spec.ts'
import type { FacilityFile } from '../../../validate/schemas/facility.ts'

const lists = ['race-days', 'climate'] as const

/** Where the facility file says a fact, or would: a path with dots and numbers of lists. */
export function entryOf(fact: string, file: FacilityFile): string {
  const work = capabilityOf(fact)
  if (work) {
    const machine = machineFor(file, work)
    return machine ? `equipment.${machine.index}.${fact.split('.').at(-1)}` : 'equipment'
  }
  const list = lists.find((name) => fact.startsWith(`${name}.`))
  if (list === undefined) return fact
  // A fact over a whole list is asked for by the list, one of its entries by the first of them.
  const isEntry = entryAbout(fact.split('.')) !== undefined && (file[list] ?? []).length > 0
  return isEntry ? fact.replace(`${list}.`, `${list}.0.`) : list
}

/** What an entry is called, as a sentence begins. */
export function entryLabel(entry: string): string {
  const path = entry.split('.').filter((step) => !/^\d+$/.test(step))
  const label = entryAbout(path)?.label ?? path.at(-1) ?? ''
  return `${label.charAt(0).toUpperCase()}${label.slice(1)}`
}
