import { distanceBetween } from '../../model/geodesy.ts'
import type { Problem } from '../../model/problem.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/**
 * Farther than this from the place in the same file, m, a gate is another fairground's, or a digit
 * is wrong.
 */
const farthestGate = 20_000

/** Whoever may stop racing can be called. */
function unnamed({ file, tree }: ParsedFacility): Problem[] {
  const roles = new Set((file.contacts ?? []).map((c) => c.role))
  return (file.emergency?.['stops-racing'] ?? []).flatMap((role, i) =>
    roles.has(role)
      ? []
      : [
          tree.problem(
            tree.placeOf(['emergency', 'stops-racing', i]),
            'ref/missing',
            `nobody among the contacts is "${role}"`,
            {
              hint: 'add a contact with this role, so that the page has a name and a telephone number',
            },
          ),
        ],
  )
}

function farOff({ file, tree }: ParsedFacility): Problem[] {
  const { latitude, longitude } = file.place
  const gate = file.emergency?.coordinates
  if (!gate || latitude === undefined || longitude === undefined) return []
  const far = distanceBetween(gate, { latitude, longitude })
  if (far <= farthestGate) return []
  return [
    tree.problem(
      tree.placeOf(['emergency', 'coordinates', 'latitude']),
      'quantity/range',
      `the gate lies ${Math.round(far / 1000)} km from the place in this file`,
      { hint: 'read both numbers again at the gate; west and south are negative' },
    ),
  ]
}

/** Checks what stands on the emergency page against the rest of the file. */
export const checkEmergency = (facility: ParsedFacility): Problem[] => [
  ...unnamed(facility),
  ...farOff(facility),
]
