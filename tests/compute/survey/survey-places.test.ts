import { describe, expect, it } from 'vitest'
import { computeFacility } from '../../../src/compute/compute-facility.ts'
import { surveyPlaceProblems } from '../../../src/compute/survey/survey-places.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkFacility } from '../../../src/validate/check-facility.ts'
import { readSurvey } from '../../../src/validate/imports/survey-table.ts'
import { libraryWords } from '../../support/worksheet-words.ts'

const at = { file: 'facility.yaml', line: 1, column: 1, length: 1 }

/** What is said of readings at these stations and offsets, on an oval given in these words. */
function problems(oval: string, ...places: readonly string[]) {
  const tree = readYaml({
    path: 'facility.yaml',
    text: `
id: any
name: Any Fair
place: { town: Nowhere }
units: us
paper: letter
oval: { ${oval} }
cushion: { material: stone-dust }
`,
  }).value
  const facility = tree && checkFacility(tree).value
  const rows = ['0,5', '0,30', '330,5', '330,30', '660,5', '660,30', ...places]
  const text = [
    'station (ft),offset (ft),depth (in),date',
    ...rows.map((r) => `${r},1,2027-06-12`),
  ].join('\n')
  const entry = { of: 'cushion-depth', file: 'depths.csv', by: 'D. O.' } as const
  const survey = readSurvey({ path: 'depths.csv', text }, entry, { at, date: '2027-06-14' }).value
  if (!facility || !survey) throw new Error('no facility or survey')
  return surveyPlaceProblems([survey], computeFacility(facility, libraryWords).engine)
}

// Worked by hand: a rail of 2,640 − 2π × 3 ft, which is 2,621.15 ft.
const halfMile = 'lap: "2,640 ft", straight: 600 ft, width: { straights: 65 ft, turns: 70 ft }'

describe('readings of a survey', () => {
  it('lie on the rail once around, and on the track', () => {
    expect(problems(halfMile, '2621,5', '2621,70')).toEqual([])
  })

  it('are refused beyond the end of the rail, at the cell', () => {
    expect(problems(halfMile, '"2,622",5', '"2,622",30')).toMatchObject([
      {
        code: 'quantity/range',
        message: 'station 2,622 lies beyond the end of the rail',
        source: '"2,622",5,1,2027-06-12',
        place: { file: 'depths.csv', line: 8 },
      },
      { code: 'quantity/range', place: { file: 'depths.csv', line: 9 } },
    ])
  })

  it('are refused outside the widest part of the track, at the cell', () => {
    expect(problems(halfMile, '660,71')).toMatchObject([
      { code: 'quantity/range', place: { file: 'depths.csv', line: 8, column: 5 } },
    ])
  })

  it('are judged by the shape of the worksheet where more is stated than is needed', () => {
    const stated = 'lap: "2,640 ft", straight: 603 ft, radius: 226.3 ft'
    expect(problems(stated, '2621,5', '2621,30')).toEqual([])
    // The rail would be 2,627.9 ft by the stated straight; the worksheet says 2,621.2 ft.
    expect(problems(stated, '2625,5', '2625,30')).toHaveLength(2)
  })

  it('may lie farther out while nobody has taped the width', () => {
    expect(problems('lap: "2,640 ft", straight: 600 ft', '660,80')).toEqual([])
    expect(problems('lap: "2,640 ft", straight: 600 ft', '660,90')).toHaveLength(1)
  })
})
