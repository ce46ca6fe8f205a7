import type { Computed } from '../../compute/compute-facility.ts'
import { type Capability, capabilities } from '../../model/capability.ts'
import type { Facility } from '../../validate/check-facility.ts'
import type { Library } from '../../validate/check-library.ts'
import type { When } from '../../validate/schemas/when.ts'
import { applies } from '../applies.ts'
import { circumstancesOf } from '../circumstances.ts'
import { itemsOf } from '../context.ts'

/** A kind of work, which machines do it here, and what depends on it. */
export type Job = {
  readonly capability: Capability
  /** Names of the machines that can, the first one to choose first; none where it cannot be done. */
  readonly machines: readonly string[]
  /** Titles of procedures that are there, or have more in them, only where it can be done. */
  readonly procedures: readonly string[]
}

/** Every condition in a procedure, at whatever depth; `when` of a sheet is a text. */
function conditionsIn(data: unknown): readonly When[] {
  if (typeof data !== 'object' || data === null) return []
  return Object.entries(data).flatMap(([key, value]: [string, unknown]) =>
    key === 'when' && typeof value === 'object' && value !== null
      ? [value as When]
      : conditionsIn(value),
  )
}

/** Which machines open which procedures, by kind of work; work that nothing depends on is left out. */
export function composeJobs(
  library: Pick<Library, 'procedures'>,
  facility: Facility,
  computed: Computed,
): readonly Job[] {
  const here = circumstancesOf(facility, computed)
  const procedures = itemsOf(library.procedures).map((p) => ({ ...p, all: conditionsIn(p) }))
  return capabilities.flatMap((capability): Job[] => {
    const others = [...here.capabilities].filter((c) => c !== capability)
    const able = { ...here, capabilities: new Set([...others, capability]) }
    const unable = { ...here, capabilities: new Set<string>(others) }
    const opened = procedures.filter(
      (p) =>
        applies(p.when, able) &&
        p.all.some((when) => applies(when, able) && !applies(when, unable)),
    )
    const machines = (facility.file.equipment ?? []).filter((m) => m.can.includes(capability))
    return opened.length === 0 && machines.length === 0
      ? []
      : [
          {
            capability,
            machines: machines.map((m) => m.name),
            procedures: opened.map((p) => p.title),
          },
        ]
  })
}
