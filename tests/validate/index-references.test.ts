import { describe, expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { indexReferences } from '../../src/validate/index-references.ts'
import { indexTerms } from '../../src/validate/schemas/index-terms.ts'

function problems(text: string) {
  const tree = readYaml({ path: 'content/index.yaml', text }).value
  if (!tree) throw new Error('no tree')
  const named = (id: string) => [{ value: { id }, tree, path: [], schema: indexTerms }]
  const none = { procedures: [], symptoms: [], schedules: [], reckoners: [], chapters: [] }
  return indexReferences({
    ...none,
    cautions: named('dust'),
    indexTerms: indexTerms
      .parse(tree.data)
      .terms.map((value, i) => ({ value, tree, path: ['terms', i], schema: indexTerms })),
  })
}

describe('a term of the index', () => {
  it('is fine when it leads somewhere', () => {
    expect(problems('terms:\n  - { term: dust, main: ["hazard:dust", "page:call"] }\n')).toEqual([])
  })

  it('is refused at its line when it leads nowhere, or stands there twice', () => {
    const text =
      'terms:\n  - { term: dust, main: ["hazard:dusk"] }\n  - { term: dust, main: ["page:cal"] }\n'
    expect(problems(text)).toMatchObject([
      { code: 'ref/missing', hint: 'did you mean "dust"?', place: { line: 2 } },
      { code: 'ref/duplicate-id', message: '"dust" is in the index already', place: { line: 3 } },
      { code: 'ref/missing', hint: 'did you mean "call"?', place: { line: 3 } },
    ])
  })

  it('cannot lead to a kind of thing that there is not', () => {
    const { success } = indexTerms.safeParse({ terms: [{ term: 'a', main: ['caution:dust'] }] })
    expect(success).toBe(false)
  })
})
