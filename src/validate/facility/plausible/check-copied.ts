import type { Problem } from '../../../model/problem.ts'
import { demoIds, isDemo } from '../demos.ts'
import type { ParsedFacility } from '../parsed-facility.ts'

/** Numbers that are kept for stories: nobody answers them. */
const invented = /555-?01\d\d$/

/** Nothing that must be rung or driven to was left over from a demo. */
export function checkCopied({ file, tree }: ParsedFacility): Problem[] {
  if (isDemo(file)) return []
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
  const address = file['site-address']
  const site =
    address !== undefined && demoIds.some((demo) => address.includes(`//${demo}.example`))
      ? [
          tree.problem(
            tree.placeOf(['site-address']),
            'facility/odd',
            `"${address}" is the address of a demo, and leads nowhere`,
            { hint: 'write the address of your own site, or leave it out' },
          ),
        ]
      : []
  const kept = demoIds.includes(file.id)
    ? [
        tree.problem(
          tree.placeOf(['id']),
          'facility/odd',
          `"${file.id}" is the id of a demo, and this is ${file.name}`,
          { hint: 'write an id of your own; the folder of the manual is called by it' },
        ),
      ]
    : []
  const town = demoIds.some((demo) => file.place.town.toLowerCase() === demo)
  return town
    ? [
        ...kept,
        ...site,
        ...phones,
        tree.problem(
          tree.placeOf(['place', 'town']),
          'facility/odd',
          `"${file.place.town}" is the town of a demo, and there is none of that name`,
          { hint: 'write your own place; sun and weather are reckoned from it' },
        ),
      ]
    : [...kept, ...site, ...phones]
}
