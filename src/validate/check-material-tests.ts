import { closest } from '../model/closest.ts'
import type { DensityTest, SieveTest } from '../model/material-tests.ts'
import type { Problem, Result } from '../model/problem.ts'
import type { Quantity } from '../model/quantity/parse-quantity.ts'
import { sieveNames, sieveOpening } from '../model/sieves.ts'
import type { SourceTree } from '../read/read-yaml.ts'
import type { FacilityFile } from './schemas/facility.ts'
import { readMeasured } from './schemas/quantity.ts'

/** Sieve analyses and density tests of a facility, read and in order. */
export type MaterialTests = {
  readonly sieves: readonly SieveTest[]
  readonly densities: readonly DensityTest[]
}

type SieveEntry = NonNullable<FacilityFile['cushion']['sieve']>[number]

function checkSieves(
  entry: SieveEntry,
  index: number,
  tree: SourceTree,
): Result<SieveTest['sieves']> {
  const path = ['cushion', 'sieve', index, 'passing']
  const problems: Problem[] = []
  const sieves = Object.entries(entry.passing)
    .flatMap(([name, written]) => {
      const opening = sieveOpening(name)
      const read = readMeasured('sieve.passing', written)
      if (opening === undefined) {
        const near = closest(name, sieveNames)
        problems.push(
          tree.problem(
            tree.keyPlaceOf([...path, name]),
            'ref/missing',
            `there is no sieve "${name}"`,
            { hint: near ? `did you mean "${near}"?` : `known: ${sieveNames.join(', ')}` },
          ),
        )
      }
      if ('params' in read)
        problems.push(
          tree.problem(
            tree.placeOf([...path, name]),
            read.params.code,
            read.message,
            read.params.hint === undefined ? {} : { hint: read.params.hint },
          ),
        )
      return opening === undefined || 'params' in read ? [] : [{ name, opening, passing: read.si }]
    })
    .sort((a, b) => b.opening - a.opening)
  for (const [i, s] of sieves.entries()) {
    const coarser = sieves[i - 1]
    if (coarser && s.passing > coarser.passing)
      problems.push(
        tree.problem(
          tree.placeOf([...path, s.name]),
          'quantity/range',
          `more passes ${s.name} than the coarser ${coarser.name}`,
          { hint: 'shares fall from the coarsest sieve to the finest' },
        ),
      )
  }
  if (problems.length === 0 && sieves.length < 3)
    problems.push(
      tree.problem(
        tree.keyPlaceOf(path),
        'schema/missing',
        'a sieve analysis has at least three sieves',
        { hint: 'such as No. 4, No. 40 and No. 200' },
      ),
    )
  return problems.length > 0 ? { value: undefined, problems } : { value: sieves, problems }
}

const si = (quantity: unknown): number | undefined => (quantity as Quantity | undefined)?.si

/** Checks what no schema can see of the tests of cushion and base. */
export function checkMaterialTests(file: FacilityFile, tree: SourceTree): Result<MaterialTests> {
  const checked = (file.cushion.sieve ?? []).map((entry, i) => ({
    entry,
    result: checkSieves(entry, i, tree),
    i,
  }))
  const limits = checked.flatMap(({ entry, i }) => {
    const [liquid, plastic] = [si(entry.limits?.['liquid']), si(entry.limits?.['plastic'])]
    return liquid !== undefined && plastic !== undefined && plastic > liquid
      ? [
          tree.problem(
            tree.placeOf(['cushion', 'sieve', i, 'limits', 'plastic']),
            'quantity/range',
            'the plastic limit is above the liquid limit',
            { hint: 'have the two changed places?' },
          ),
        ]
      : []
  })
  const sieves = checked.flatMap(({ entry, result }): SieveTest[] => {
    const [liquid, plastic] = [si(entry.limits?.['liquid']), si(entry.limits?.['plastic'])]
    return result.value
      ? [
          {
            date: entry.date,
            by: entry.by,
            sieves: result.value,
            clay: si(entry.clay),
            limits: liquid === undefined || plastic === undefined ? undefined : { liquid, plastic },
          },
        ]
      : []
  })
  const densities = (
    (file.base?.['density'] as readonly Readonly<Record<string, unknown>>[] | undefined) ?? []
  ).flatMap((d): DensityTest[] => {
    const [wet, moisture] = [si(d['wet']), si(d['moisture'])]
    return wet === undefined || moisture === undefined ? [] : [{ wet, moisture }]
  })
  return {
    value: { sieves: sieves.sort((a, b) => a.date.localeCompare(b.date)), densities },
    problems: [...checked.flatMap((c) => c.result.problems), ...limits],
  }
}
