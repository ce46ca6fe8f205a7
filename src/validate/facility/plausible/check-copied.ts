import type { Problem } from '../../../model/problem.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { demoIds, isDemo } from '../demos.ts'
import { isInvented } from '../invented.ts'
import type { ParsedFacility } from '../parsed-facility.ts'

type Entry = { readonly at: Path; readonly value: unknown }

/** Every text and number of a group, by its path. */
const entriesOf = (value: unknown, at: Path): readonly Entry[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, inner]) =>
        entriesOf(inner, [...at, Array.isArray(value) ? Number(key) : key]),
      )
    : [{ at, value }]

/** Nothing that must be rung or driven to was left over from a demo. */
export function checkCopied({ file, tree }: ParsedFacility): Problem[] {
  if (isDemo(file)) return []
  const called = [
    ...entriesOf(file.contacts, ['contacts']),
    ...entriesOf(file.emergency, ['emergency']),
  ]
    .filter(({ at, value }) => isInvented(at, value))
    .map(({ at, value }) =>
      tree.problem(
        tree.placeOf(at),
        'facility/odd',
        at.at(-1) === 'phone'
          ? `"${value}" is a number of the demo, which nobody answers`
          : `"${value}" is from a demo, which is invented`,
        {
          hint:
            at.at(-1) === 'phone'
              ? 'write the number of your own fair, or leave the line out'
              : 'write that of your own fair, or leave the line out',
        },
      ),
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
        ...called,
        tree.problem(
          tree.placeOf(['place', 'town']),
          'facility/odd',
          `"${file.place.town}" is the town of a demo, and there is none of that name`,
          { hint: 'write your own place; sun and weather are reckoned from it' },
        ),
      ]
    : [...kept, ...site, ...called]
}
