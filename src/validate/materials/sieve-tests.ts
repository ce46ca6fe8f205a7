import * as z from 'zod'
import { didYouMeanOneOf } from '../../model/closest.ts'
import type { SieveTest } from '../../model/material-tests.ts'
import type { Problem, Result } from '../../model/problem.ts'
import { sieveNames, sieveOpening } from '../../model/sieves.ts'
import type { Path, SourceTree } from '../../read/read-yaml.ts'
import { quantity, readMeasuredAt } from '../schemas/quantity.ts'
import { date, line } from '../schemas/text.ts'

/**
 * The entry of the facility file: a sieve analysis of the cushion, what passes each sieve by its
 * designation, `"No. 4": 92 %`; clay by hydrometer and the Atterberg limits where they are known.
 */
export const sieveEntry = z.strictObject({
  date,
  by: line,
  passing: z.record(z.string(), z.union([z.string(), z.number()])),
  clay: quantity('sieve.clay'),
  limits: z
    .strictObject({ liquid: quantity('sieve.liquid'), plastic: quantity('sieve.plastic') })
    .optional(),
})

type SieveEntry = z.output<typeof sieveEntry>
type Sieve = SieveTest['sieves'][number]

/** One sieve with what passes it. */
function readSieve(name: string, written: string | number, at: Path, tree: SourceTree) {
  const opening = sieveOpening(name)
  const read = readMeasuredAt(tree, at, 'sieve.passing', written)
  const problems: Problem[] = []
  if (opening === undefined)
    problems.push(
      tree.problem(tree.keyPlaceOf(at), 'ref/missing', `there is no sieve "${name}"`, {
        hint: didYouMeanOneOf(name, sieveNames),
      }),
    )
  if ('code' in read) problems.push(read)
  const value: Sieve | undefined =
    opening === undefined || 'code' in read ? undefined : { name, opening, passing: read.si }
  return { value, problems }
}

/** What passes a sieve passes every coarser one. */
const rising = (sieves: readonly Sieve[], at: Path, tree: SourceTree): Problem[] =>
  sieves.flatMap((sieve, i) => {
    const coarser = sieves[i - 1]
    if (!coarser || sieve.passing <= coarser.passing) return []
    return [
      tree.problem(
        tree.placeOf([...at, sieve.name]),
        'quantity/range',
        `more passes ${sieve.name} than the coarser ${coarser.name}`,
        { hint: 'shares fall from the coarsest sieve to the finest' },
      ),
    ]
  })

const tooFew = (sieves: readonly Sieve[], at: Path, tree: SourceTree): Problem[] =>
  sieves.length >= 3
    ? []
    : [
        tree.problem(
          tree.keyPlaceOf(at),
          'schema/missing',
          'a sieve analysis has at least three sieves',
          { hint: 'such as No. 4, No. 40 and No. 200' },
        ),
      ]

function readSieves(
  { passing }: SieveEntry,
  at: Path,
  tree: SourceTree,
): Result<SieveTest['sieves']> {
  const read = Object.entries(passing).map(([name, written]) =>
    readSieve(name, written, [...at, name], tree),
  )
  const sieves = read.flatMap(({ value }) => value ?? []).sort((a, b) => b.opening - a.opening)
  const faults = [...read.flatMap((r) => r.problems), ...rising(sieves, at, tree)]
  // Sieves with faults are missing from the count, so it would be a false alarm.
  const problems = faults.length > 0 ? faults : tooFew(sieves, at, tree)
  return { value: problems.length > 0 ? undefined : sieves, problems }
}

function limitsOf({ limits }: SieveEntry): SieveTest['limits'] {
  const [liquid, plastic] = [limits?.liquid?.si, limits?.plastic?.si]
  return liquid === undefined || plastic === undefined ? undefined : { liquid, plastic }
}

function upsideDown(entry: SieveEntry, at: Path, tree: SourceTree): Problem[] {
  const limits = limitsOf(entry)
  if (!limits || limits.plastic <= limits.liquid) return []
  return [
    tree.problem(
      tree.placeOf([...at, 'limits', 'plastic']),
      'quantity/range',
      'the plastic limit is above the liquid limit',
      { hint: 'have the two changed places?' },
    ),
  ]
}

/** Reads the sieve analyses of a facility, oldest first. All faults are reported at once. */
export function readSieveTests(
  entries: readonly SieveEntry[],
  tree: SourceTree,
): { readonly value: readonly SieveTest[]; readonly problems: readonly Problem[] } {
  const read = entries.map((entry, i) => {
    const at = ['cushion', 'sieve', i]
    const sieves = readSieves(entry, [...at, 'passing'], tree)
    return { entry, sieves, problems: [...sieves.problems, ...upsideDown(entry, at, tree)] }
  })
  const tests = read.flatMap(({ entry, sieves }): SieveTest[] =>
    sieves.value
      ? [
          {
            date: entry.date,
            by: entry.by,
            sieves: sieves.value,
            clay: entry.clay?.si,
            limits: limitsOf(entry),
          },
        ]
      : [],
  )
  return {
    value: tests.sort((a, b) => a.date.localeCompare(b.date)),
    problems: read.flatMap((r) => r.problems),
  }
}
