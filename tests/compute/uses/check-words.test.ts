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
  told: { date: '2000-07-01' },
  terms: ['way'],
  compute: (x) => ({ total: x.width }),
})

const noNumber = `no-number:
  unknown: "{input} is not known"
  outside: "{input} is {value}; from {low} to {high}"
  any: any
`

const good = `worksheets:
  ground: { number: 1 }
  second: { number: 2, title: The second }
calculations:
  area:
    title: Area
    about: How large it is on {date}.
    inputs: { width: how wide }
    outputs: { total: area }
    refusals: { too-narrow: it is too narrow }
    terms: { way: way }
reasons:
  as-at-sea: as at the sea
${noNumber}`

function fileOf(path: string, text: string) {
  const tree = readYaml({ path, text }).value
  const value = tree && checkSchema(tree, worksheets).value
  if (!tree || !value) throw new Error(`${path} does not fit the schema`)
  return { value, tree, path: [], schema: worksheets }
}

const declared = { uses: { ground: [area], second: [area] }, loose: [], reasons: ['as-at-sea'] }

const problemsOf = (text: string): readonly string[] =>
  worksheetWordProblems([fileOf('oval.yaml', text)], declared).map(
    (p) => `${p.place.line}:${p.place.column} ${p.message}${p.hint ? `; ${p.hint}` : ''}`,
  )

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
      '1:1 there are no words for the worksheet "second"; add "second" under "worksheets", with a number that no other has or had',
    ],
    [
      'a calculation without words, with all that it asks for',
      '  area:\n    title: Area\n',
      '  areas:\n    title: Area\n',
      '4:1 there are no words for the calculation "area"; add "area" under "calculations": title, about, inputs (width), outputs (total), refusals (too-narrow), terms (way)',
    ],
    [
      'a reason without words',
      'reasons:\n  as-at-sea: as at the sea\n',
      '',
      '1:1 there are no words for the reason "as-at-sea"; add "as-at-sea" under "reasons"',
    ],
    [
      'nothing said of numbers that cannot be given',
      noNumber,
      '',
      '1:1 there are no words for a number that cannot be given; add "no-number": unknown, outside, any',
    ],
    [
      'a place in a text that nothing fills',
      '{date}',
      '{dat}',
      '7:31 nothing stands for "{dat}" here; did you mean "{date}"?',
    ],
    [
      'a place in the words for a number that cannot be given',
      '{low}',
      '{least}',
      '16:38 nothing stands for "{least}" here; it may name: {input}, {value}, {low}, {high}',
    ],
    [
      'a place in a title, which has none',
      'The second',
      '"The second of {date}"',
      '3:46 nothing stands for "{date}" here; it may name: nothing',
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

  it('are missed in the file of their subject', () => {
    const [sheets = '', called = ''] = good.split(/(?=calculations:)/)
    const files = (first: string, second: string) => [
      fileOf('cushion.yaml', `${sheets.replace(/ {2}(ground|second).*\n/g, '')}${first}`),
      fileOf('oval.yaml', second),
    ]
    const placesOf = (...all: readonly ReturnType<typeof fileOf>[]): readonly string[] =>
      worksheetWordProblems(all, declared)
        .filter((p) => p.code === 'schema/missing')
        .map((p) => `${p.place.file}:${p.place.line} ${p.message}`)
    const other = '  other: { number: 9 }\n'
    expect(placesOf(...files(other, called))).toEqual([
      'oval.yaml:1 there are no words for the worksheet "ground"',
      'oval.yaml:1 there are no words for the worksheet "second"',
    ])
    const [, rest = ''] = called.split(/(?=reasons:)/)
    expect(placesOf(...files(`${other}${rest}`, sheets))).toEqual([
      'oval.yaml:1 there are no words for the calculation "area"',
    ])
  })

  it('are said once', () => {
    const all = [fileOf('oval.yaml', good), fileOf('reasons.yaml', noNumber)]
    expect(worksheetWordProblems(all, declared)).toMatchObject([
      { message: '"no-number" has words already', place: { file: 'reasons.yaml', line: 1 } },
    ])
  })

  it('are missed when there is no file at all', () => {
    expect(worksheetWordProblems([], declared)).toMatchObject([
      { message: 'there are no words of worksheets', place: { file: 'content/worksheets' } },
    ])
  })
})
