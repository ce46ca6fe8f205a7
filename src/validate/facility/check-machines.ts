import type { Problem } from '../../model/problem.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** What the width of a machine is called whose work is not as wide as a blade. */
const otherWidths = { spray: 'spray-width', 'roll-tires': 'tire-width' } as const

/** A width that no work of its machine is reckoned with. */
export const checkMachines = ({ file, tree }: ParsedFacility): Problem[] =>
  (file.equipment ?? []).flatMap((machine, i) => {
    const has = machine as Readonly<Record<string, unknown>>
    const jobs = machine.can.filter((can) => !['load', 'haul', 'tamp'].includes(can))
    const names = jobs.flatMap((job) =>
      job === 'spray' || job === 'roll-tires' ? [otherWidths[job]] : [],
    )
    const [name] = names
    if (has['width'] === undefined || name === undefined || names.length < jobs.length) return []
    const path = ['equipment', i, 'width']
    const both = has[name] !== undefined
    return [
      tree.problem(
        tree.keyPlaceOf(path),
        'facility/odd',
        `"width" says nothing of a machine that can ${machine.can.join(' and ')}`,
        {
          hint: both
            ? `delete it: "${name}" stands there too`
            : `did you mean "${name}"? ${name === 'spray-width' ? 'the width that the spray wets evenly' : "the width of one tire's print"}`,
          severity: 'warning',
          path,
        },
      ),
    ]
  })
