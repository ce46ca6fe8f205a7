import { distanceBetween } from '../../model/geodesy.ts'
import type { Problem } from '../../model/problem.ts'
import { mile } from '../../model/quantity/units.ts'
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
      `the gate lies ${file.units === 'us' ? `${Math.round(far / mile)} miles` : `${Math.round(far / 1000)} km`} from the place in this file`,
      { hint: 'read both numbers again at the gate; west and south are negative' },
    ),
  ]
}

/** How many digits make a telephone number that is dialed from outside, at the least. */
const numberDigits = 6

/** Whether a text holds two telephone numbers; an extension is none. */
const isTwo = (phone: string): boolean =>
  phone.split(/[a-z,;/]/i).filter((part) => part.replace(/\D/g, '').length >= numberDigits).length >
  1

/** A touch on a telephone number rings one. */
const crowded = ({ file, tree }: ParsedFacility): Problem[] =>
  (file.contacts ?? []).flatMap(({ phone }, i) =>
    isTwo(phone)
      ? [
          tree.problem(
            tree.placeOf(['contacts', i, 'phone']),
            'facility/odd',
            'two telephone numbers in one place: a touch on it rings the first',
            {
              hint: 'keep the one to dial first, and write the other into the note',
              severity: 'warning',
            },
          ),
        ]
      : [],
  )

/** Checks what stands on the emergency page against the rest of the file. */
export const checkEmergency = (facility: ParsedFacility): Problem[] => [
  ...unnamed(facility),
  ...farOff(facility),
  ...crowded(facility),
]
