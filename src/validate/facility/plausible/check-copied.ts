import type { Problem } from '../../../model/problem.ts'
import type { Path } from '../../../read/read-yaml.ts'
import { demoIds, isDemo } from '../demos.ts'
import { isExample, isInvented } from '../invented.ts'
import type { ParsedFacility } from '../parsed-facility.ts'
import { saidEntries } from '../said-entries.ts'

/** What is said of something that was left over, and what to do. */
function said(at: Path, value: unknown): { readonly message: string; readonly hint: string } {
  const isPhone = at.at(-1) === 'phone'
  const needed = at.join('.') === 'place.town'
  const without = needed ? '' : ', or leave the line out'
  if (isExample(at, value) && !isPhone)
    return {
      message: `"${String(value)}" is the example of the file in which every entry is explained`,
      hint: `write what is so at your own fair${without}`,
    }
  return isPhone
    ? {
        message: `"${String(value)}" is a number of the demo, which nobody answers`,
        hint: `write the number of your own fair${without}`,
      }
    : {
        message: `"${String(value)}" is from a demo, which is invented`,
        hint: `write that of your own fair${without}`,
      }
}

const names: readonly string[] = ['measurements', 'surveys', 'weather', 'moisture', 'daily-log']

/** Nothing that must be rung or driven to was left over from a demo, or from an example. */
export function checkCopied({ file, tree }: ParsedFacility): Problem[] {
  if (isDemo(file)) return []
  const odd = (at: Path, message: string, hint: string): Problem =>
    tree.problem(tree.placeOf(at), 'facility/odd', message, { hint })
  const { cushion, base, oval } = file
  const inGroups = [
    ...saidEntries(file.contacts, ['contacts']),
    ...saidEntries(file.emergency, ['emergency']),
  ].filter(({ at, value }) => isInvented(at, value))
  const elsewhere = [
    ...saidEntries(file.place, ['place']),
    ...names.flatMap((name) => saidEntries(file[name as keyof typeof file], [name])),
    ...saidEntries(cushion.sieve, ['cushion', 'sieve']),
    ...saidEntries(base?.density, ['base', 'density']),
    ...saidEntries(oval['rail-line'], ['oval', 'rail-line']),
  ].filter(({ at, value }) => isExample(at, value))
  const called = [...elsewhere, ...inGroups].map(({ at, value }) => {
    const { message, hint } = said(at, value)
    return odd(at, message, hint)
  })
  const address = file['site-address']
  const site =
    address !== undefined && demoIds.some((demo) => address.includes(`//${demo}.example`))
      ? [
          odd(
            ['site-address'],
            `"${address}" is the address of a demo, and leads nowhere`,
            'write the address of your own site, or leave it out',
          ),
        ]
      : []
  const kept = demoIds.includes(file.id)
    ? [
        odd(
          ['id'],
          `"${file.id}" is the id of a demo, and this is ${file.name}`,
          'write an id of your own; the folder of the manual is called by it',
        ),
      ]
    : []
  const town = demoIds.some((demo) => file.place.town.toLowerCase() === demo)
    ? [
        odd(
          ['place', 'town'],
          `"${file.place.town}" is the town of a demo, and there is none of that name`,
          'write your own place; sun and weather are reckoned from it',
        ),
      ]
    : []
  return [...kept, ...site, ...called, ...town]
}
