import { describe, expect, it } from 'vitest'
import { findingsNamed } from '../../../src/compute/findings/check-named.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { plans, type Schedule } from '../../../src/validate/schemas/plans.ts'
import { loadDemo } from '../../support/demo.ts'

const text = `plans:
  - id: late
    title: T
    about: A
    work:
      days: practice.ten-days.before
      shift: practice.shift
      people: [A, B]
      crew: crew.people
      all: Both
      all-more: All
      daily: D
      jobs:
        - { does: W, people: 1, takes: [harrow.time], no-finding: [no-harow] }
    tables:
      - { id: t, title: T, heads: [A, B], rows: [{ cells: [a, b], finding: [no-spray, grit] }] }
`

describe('findings that plans name', () => {
  it('are refused at their line where no rule makes them', () => {
    const tree = readYaml({ path: 'content/plans.yaml', text }).value
    if (!tree) throw new Error('no tree')
    const value = (tree.data as { plans: readonly Schedule[] }).plans[0] as Schedule
    const found = findingsNamed([{ value, tree, path: ['plans', 0], schema: plans }])
    expect(found).toMatchObject([
      {
        message: 'there is no finding "no-harow"',
        hint: 'did you mean "no-harrow"?',
        place: { line: 14 },
      },
      { message: 'there is no finding "grit"', place: { line: 16 } },
    ])
  })

  it('of the library are all there', async () => {
    const { library } = await loadDemo('larkmoor')
    expect(findingsNamed(library?.schedules ?? [])).toEqual([])
  })
})
