import { describe, expect, it } from 'vitest'
import { computeFacility } from '../../../src/compute/compute-facility.ts'
import { shapeProblems } from '../../../src/compute/oval/shape-problems.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import { libraryWords } from '../../support/worksheet-words.ts'

/** What is said of a half-mile on which somebody has measured this radius. */
function problems(radius: string) {
  const tree = readYaml({
    path: 'facility.yaml',
    text: `id: any
name: Any Fair
place: { town: Nowhere }
units: us
paper: letter
oval: { lap: "2,640 ft", straight: 600 ft }
cushion: { material: stone-dust }
measurements:
  - { of: oval.radius, value: ${radius}, date: 2027-05-01, by: D. O. }
`,
  }).value
  const checked = tree && checkFacility(tree)
  if (!checked?.value || checked.problems.length > 0) throw new Error('no facility')
  return shapeProblems(checked.value, computeFacility(checked.value, libraryWords).engine)
}

describe('a measured radius', () => {
  it('is taken where it leaves room for straights', () => {
    expect(problems('229.9 ft')).toEqual([])
  })

  it('is refused at its line where a full circle is longer than the lap', () => {
    expect(problems('430 ft')).toMatchObject([
      { code: 'oval/impossible', place: { line: 9, column: 31 } },
    ])
  })
})
