import { saidAt } from '../../compute/facts/known.ts'
import { gearFields, gearSpec } from '../../model/fact-spec.ts'
import type { GlanceRow, Machine } from '../../model/manual/facility.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Quantity } from '../../model/quantity/read-quantity.ts'
import { factWords } from '../../validate/fact-words.ts'
import type { FacilityFile } from '../../validate/schemas/facility.ts'
import type { ComposeContext } from '../context.ts'
import { bookedDays } from './booked.ts'

type Entry = NonNullable<FacilityFile['equipment']>[number]

/** What the file says of a machine. */
function factsOf(
  machine: Entry,
  index: number,
  { facility, locale, library }: ComposeContext,
): readonly GlanceRow[] {
  const words = factWords(library)
  return gearFields.flatMap((field): GlanceRow[] => {
    const value = (machine as Readonly<Record<string, unknown>>)[field] as Quantity | undefined
    const spec = gearSpec(field)
    if (!value || !spec) return []
    return [
      {
        label: words.fieldLabel(field),
        text: formatExact(value.si, spec.kind, locale),
        provenance: saidAt(value, facility.tree.placeOf(['equipment', index, field])).provenance,
        howTo: words.fieldHowTo(field),
      },
    ]
  })
}

/** The machines of the facility file, in its order. */
export const composeMachines = (context: ComposeContext): readonly Machine[] =>
  (context.facility.file.equipment ?? []).map((machine, index) => {
    const whose = context.library.words.ownership[machine.from]
    const owner = machine.owner === undefined ? whose : `${whose}: ${machine.owner}`
    const booked = bookedDays(machine, context)
    return {
      id: machine.id,
      name: machine.name,
      can: machine.can,
      from: booked === undefined ? owner : `${owner}; ${booked}`,
      facts: factsOf(machine, index, context),
    }
  })
