import type { Problem } from '../../../model/problem.ts'
import type { ParsedFacility } from '../parsed-facility.ts'

/** The demo fairs, which alone may have what is theirs. */
const demos = ['larkmoor', 'brambleford', 'ostmere']

/** Numbers that are kept for stories: nobody answers them. */
const invented = /555-?01\d\d$/

/** Nothing that must be rung or driven to was left over from a demo. */
export function checkCopied({ file, tree }: ParsedFacility): Problem[] {
  if (demos.includes(file.id)) return []
  const phones = (file.contacts ?? []).flatMap(({ phone }, i) =>
    phone !== undefined && invented.test(phone)
      ? [
          tree.problem(
            tree.placeOf(['contacts', i, 'phone']),
            'facility/odd',
            `"${phone}" is a number of the demo, which nobody answers`,
            { hint: 'write the number of your own fair, or leave the line out' },
          ),
        ]
      : [],
  )
  const town = demos.some((demo) => file.place.town.toLowerCase() === demo)
  return town
    ? [
        ...phones,
        tree.problem(
          tree.placeOf(['place', 'town']),
          'facility/odd',
          `"${file.place.town}" is the town of a demo, and there is none of that name`,
          { hint: 'write your own place; sun and weather are reckoned from it' },
        ),
      ]
    : phones
}
