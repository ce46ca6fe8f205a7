import { expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { findingReferences } from '../../src/validate/finding-references.ts'
import { type FindingText, findings } from '../../src/validate/schemas/library.ts'
import { loadDemo } from '../support/demo.ts'

/** What is said of findings that belong to these entries, one a line from the second line on. */
function problems(...asks: readonly string[]) {
  const text = [
    'findings:',
    ...asks.map((ask) => `  - { id: a, severity: note, ask: ${ask}, title: T, text: T, do: D }`),
  ].join('\n')
  const tree = readYaml({ path: 'content/findings.yaml', text }).value
  if (!tree) throw new Error('no tree')
  const list = (tree.data as { findings: readonly FindingText[] }).findings
  return findingReferences({
    findings: list.map((value, i) => ({ value, tree, path: ['findings', i], schema: findings })),
  })
}

it('Findings belong to entries that a facility file may have', () => {
  expect(problems('emergency.way', 'race-days', 'cushion.depth.found', 'oval.lap')).toEqual([])
})

it('A finding that belongs to none is an error with its line', () => {
  expect(problems('oval.lap', 'emergency.wey')).toMatchObject([
    {
      code: 'ref/missing',
      severity: 'error',
      hint: 'did you mean "emergency.way"?',
      place: { file: 'content/findings.yaml', line: 3 },
    },
  ])
})

it('No finding speaks of keys of the file, which its readers have never seen', async () => {
  const { library } = await loadDemo('larkmoor')
  const texts = library?.findings.map((f) => f.value) ?? []
  expect(texts.length).toBeGreaterThan(50)
  const speaking = texts.filter(({ title, text, do: what }) =>
    /\b(?:under|role|facility\.yaml|entry|key)\b [a-z-]+[,.]|lights: true|the file\b/.test(
      `${title} ${text} ${what}`,
    ),
  )
  expect(speaking.map((f) => f.id)).toEqual([])
})
