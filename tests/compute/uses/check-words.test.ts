import { describe, expect, it } from 'vitest'
import { calculation } from '../../../src/compute/calculation.ts'
import { worksheetWordProblems } from '../../../src/compute/uses/check-words.ts'
import { readYaml } from '../../../src/read/read-yaml.ts'
import { checkSchema } from '../../../src/validate/check-schema.ts'
import { worksheets } from '../../../src/validate/schemas/worksheets.ts'

const area = calculation({
  id: 'area',
  sources: ['geometry'],
  inputs: { width: { symbol: 'w', kind: 'width', range: [0, 100] } },
  outputs: { total: { symbol: 'A', kind: 'area', tex: '@width\\,\\text{way}' } },
  refusals: ['too-narrow'],
  terms: ['way'],
  compute: (x) => ({ total: x.width }),
})

const good = `worksheets:
  ground: { number: 1 }
  second: { number: 2, title: The second }
calculations:
  area:
    title: Area
    about: How large it is.
    inputs: { width: how wide }
    outputs: { total: area }
    refusals: { too-narrow: it is too narrow }
    terms: { way: way }
reasons:
  as-at-sea: as at the sea
`

function problemsOf(text: string): readonly string[] {
  const tree = readYaml({ path: 'oval.yaml', text }).value
  const value = tree && checkSchema(tree, worksheets).value
  if (!tree || !value) throw new Error('no file')
  const declared = { uses: { ground: [area], second: [area] }, reasons: ['as-at-sea'] }
  return worksheetWordProblems([{ value, tree, path: [], schema: worksheets }], declared).map(
    (p) => `${p.place.line}:${p.place.column} ${p.message}${p.hint ? `; ${p.hint}` : ''}`,
  )
}

describe('words of worksheets', () => {
  it('are complete when every use, calculation and reason has them', () => {
    expect(problemsOf(good)).toEqual([])
  })

  it.each<[string, string, string, string]>([
    [
      'two worksheets with one number',
      'number: 2',
      'number: 1',
      '3:21 worksheet 1 is "ground" already; it stands at oval.yaml:2; numbers are never given twice',
    ],
    [
      'a worksheet without words',
      '  second: { number: 2, title: The second }\n',
      '',
      '1:1 there are no words for the worksheet "second"; add "second" under "worksheets" in the file of its subject',
    ],
    [
      'words for a calculation that is not there',
      '  area:\n    title: Area\n',
      '  areas:\n    title: Area\n',
      '5:3 there is no calculation "areas"; did you mean "area"?',
    ],
    [
      'an input without words',
      '    inputs: { width: how wide }\n',
      '',
      '5:3 "area" has no words for "width"; add "width" under "inputs"',
    ],
    [
      'a misspelt output',
      'total: area',
      'totl: area',
      '9:16 "area" has nothing called "totl"; did you mean "total"?',
    ],
    [
      'a refusal that nothing gives',
      'too-narrow: it is too narrow',
      'too-narrow: it is too narrow, too-wide: it is too wide',
      '10:47 "area" has nothing called "too-wide"; it has: too-narrow',
    ],
    [
      'a misspelt reason',
      'as-at-sea: as',
      'as-at-see: as',
      '13:3 there is no reason "as-at-see"; did you mean "as-at-sea"?',
    ],
  ])('report %s', (_, from, to, expected) => {
    expect(problemsOf(good.replace(from, to))).toContain(expected)
  })
})
