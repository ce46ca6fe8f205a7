import { describe, expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { planReferences } from '../../src/validate/plan-references.ts'
import { type FindingText, findings } from '../../src/validate/schemas/library.ts'
import { plans } from '../../src/validate/schemas/plans.ts'

const text = (row: string, by: string) => `plans:
  - id: days
    title: Days
    about: All of them.
    work:
      days: practice.ten-days.before
      shift: practice.shift
      people: [You, Helper]
      crew: crew.people
      all: Both
      all-more: All
      daily: Nothing
      jobs:
        - { does: Walk, people: 1, by: ${by}, takes: [practice.shift] }
    tables:
      - id: rows
        title: Rows
        heads: [What, How]
        rows:
          - { cells: [a, b], finding: [${row}] }
`

function problems(row: string, by: string) {
  const tree = readYaml({ path: 'content/plans.yaml', text: text(row, by) }).value
  if (!tree) throw new Error('no tree')
  const finding: FindingText = {
    id: 'no-grader',
    severity: 'note',
    ask: 'water',
    title: 'T',
    text: 'T',
    do: 'D',
  }
  return planReferences({
    schedules: plans
      .parse(tree.data)
      .plans.map((value, i) => ({ value, tree, path: ['plans', i], schema: plans })),
    findings: [{ value: finding, tree, path: [], schema: findings }],
  })
}

describe('what a plan names', () => {
  it('is fine when it is there', () => {
    expect(problems('no-grader', 'Helper')).toEqual([])
  })

  it('is refused at its line when no such finding or person exists', () => {
    expect(problems('no-gradder', 'Helpr')).toMatchObject([
      { code: 'ref/missing', hint: 'did you mean "no-grader"?', place: { line: 20 } },
      {
        code: 'ref/missing',
        message: 'there is no person under “people” "Helpr"',
        hint: 'did you mean "Helper"?',
        place: { line: 14 },
      },
    ])
  })
})
