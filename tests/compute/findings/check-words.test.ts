import { describe, expect, it } from 'vitest'
import { findingWordProblems } from '../../../src/compute/findings/check-words.ts'
import { type FindingRule, findingRules } from '../../../src/compute/findings/rules.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { type FindingText, findings } from '../../../src/validate/schemas/library.ts'
import { loadDemo } from '../../support/demo.ts'

const rules: readonly FindingRule[] = ['no-grader', 'no-spray'].map((id) => ({
  id,
  holds: () => true,
}))

/** What is said of words with these ids, one entry a line from the second line on. */
function problems(...ids: readonly string[]) {
  const text = [
    'findings:',
    ...ids.map((id) => `  - { id: ${id}, severity: note, title: T, text: T, do: D }`),
  ].join('\n')
  const tree = readYaml({ path: 'content/findings.yaml', text }).value
  if (!tree) throw new Error('no tree')
  const list = (tree.data as { findings: readonly FindingText[] }).findings
  const texts = list.map((value, i) => ({ value, tree, path: ['findings', i], schema: findings }))
  return findingWordProblems(texts, rules)
}

describe('findings', () => {
  it('are fine when each rule has its words', () => {
    expect(problems('no-spray', 'no-grader')).toEqual([])
  })

  it('are refused without words, at the list that lacks them', () => {
    expect(problems('no-spray')).toMatchObject([
      {
        code: 'schema/missing',
        severity: 'error',
        message: 'there are no words for the finding "no-grader"',
        place: { file: 'content/findings.yaml', line: 1 },
      },
    ])
  })

  it('are refused without a rule, at their line, with the name that may be meant', () => {
    expect(problems('no-spray', 'no-grader', 'no-gradder')).toMatchObject([
      {
        code: 'ref/missing',
        severity: 'error',
        hint: 'did you mean "no-grader"?',
        source: '  - { id: no-gradder, severity: note, title: T, text: T, do: D }',
        place: { file: 'content/findings.yaml', line: 4, column: 11 },
      },
    ])
  })

  it('of the library have a rule and words each', async () => {
    const { library } = await loadDemo('larkmoor')
    expect(library?.findings).toHaveLength(findingRules.length)
    expect(findingWordProblems(library?.findings ?? [])).toEqual([])
  })
})
