import { gearFields, gearSpec } from '../../model/fact-spec.ts'
import type { GlanceRow, Machine } from '../../model/manual/facility.ts'
import { formatExact } from '../../model/quantity/format-exact.ts'
import type { Quantity } from '../../model/quantity/parse-quantity.ts'
import type { ComposeContext } from '../context.ts'

/** The machines of the facility file, in its order, each with what the file says of it. */
export const composeMachines = ({ facility, locale }: ComposeContext): readonly Machine[] =>
  (facility.file.equipment ?? []).map((machine, index) => ({
    id: machine.id,
    name: machine.name,
    can: machine.can,
    from: machine.owner === undefined ? machine.from : `${machine.from}: ${machine.owner}`,
    facts: gearFields.flatMap((field): GlanceRow[] => {
      const value = (machine as Readonly<Record<string, unknown>>)[field] as Quantity | undefined
      const spec = gearSpec(field)
      if (!value || !spec) return []
      return [
        {
          label: spec.label,
          text: formatExact(value.si, spec.kind, locale),
          provenance: {
            kind: 'stated',
            at: facility.tree.placeOf(['equipment', index, field]),
          },
          howTo: spec.howTo,
        },
      ]
    }),
  }))
