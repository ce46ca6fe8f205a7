import { describe, expect, it } from 'vitest'
import type { Problem } from '../../src/model/problem.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'

const good = `id: tiny
name: Tiny Fair
place: { town: Nowhere }
units: us
paper: letter
oval:
  lap: 2,640 ft
  straight: 600 ft
cushion:
  material: stone-dust
`

function problemsOf(text: string): readonly Problem[] {
  const read = readYaml({ path: 'facility.yaml', text })
  return read.value ? checkFacility(read.value).problems : read.problems
}

const at = (p: Problem | undefined) => p && `${p.code} ${p.place.line}:${p.place.column}`

describe('tests of the material', () => {
  const check = (sieve: string) => {
    const tree = readYaml({
      path: 'facility.yaml',
      text: `id: any\nname: Any Fair\nplace: { town: Nowhere }\nunits: us\npaper: letter\noval: { lap: 2640 ft, straight: 600 ft }\ncushion:\n  material: clay\n  sieve:\n    - ${sieve}\n`,
    }).value
    if (!tree) throw new Error('no tree')
    return checkFacility(tree).problems
  }

  it.each<[string, string, string]>([
    [
      'an unknown sieve',
      '{ date: 2027-06-12, by: A, passing: { "No. 4": 90 %, "No. 41": 40 %, "No. 200": 9 % } }',
      'ref/missing',
    ],
    [
      'more through a finer sieve',
      '{ date: 2027-06-12, by: A, passing: { "No. 4": 40 %, "No. 40": 90 %, "No. 200": 9 % } }',
      'quantity/range',
    ],
    [
      'more than all',
      '{ date: 2027-06-12, by: A, passing: { "No. 4": 140 %, "No. 40": 90 %, "No. 200": 9 % } }',
      'quantity/range',
    ],
    [
      'two sieves only',
      '{ date: 2027-06-12, by: A, passing: { "No. 4": 90 %, "No. 200": 9 % } }',
      'schema/missing',
    ],
    [
      'limits that have changed places',
      '{ date: 2027-06-12, by: A, passing: { "No. 4": 90 %, "No. 40": 50 %, "No. 200": 9 % }, limits: { liquid: 12 %, plastic: 20 % } }',
      'quantity/range',
    ],
  ])('are refused with %s', (_, text, code) =>
    expect(check(text)).toMatchObject([{ code, place: { line: 10 } }]),
  )
})

describe('checkFacility', () => {
  it('accepts the smallest facility that has a shape', () => {
    expect(problemsOf(good)).toEqual([])
  })

  it.each([
    ['a wrong unit', good.replace('2,640 ft', '2,640 fet'), 'quantity/unknown-unit 7:14', '"ft"'],
    [
      'a wrong dimension',
      good.replace('600 ft', '600 gal'),
      'quantity/dimension 8:13',
      'a distance',
    ],
    ['a number without unit', good.replace('600 ft', '600'), 'quantity/no-unit 8:13', 'a distance'],
    [
      'a word instead of a number',
      good.replace('600 ft', 'long'),
      'quantity/number 8:13',
      'such as',
    ],
    [
      'a value out of range',
      good.replace('600 ft', '6 ft'),
      'quantity/range 8:13',
      '50 ft to 4,000 ft',
    ],
    ['an impossible oval', good.replace('600 ft', '1,300 ft'), 'oval/impossible 8:13', 'lap = 2'],
    [
      'an oval of which too little is known',
      good.replace('  straight: 600 ft\n', ''),
      'oval/too-little 6:1',
      'two of',
    ],
    [
      'three dimensions that do not close',
      good.replace('600 ft\n', '600 ft\n  radius: 250 ft\n'),
      'oval/impossible 9:11',
      'least sure',
    ],
    [
      'an unknown entry',
      good.replace('  straight:', '  strait:'),
      'schema/unknown-key 8:3',
      'did you mean "straight"?',
    ],
    [
      'an unknown entry at the top',
      `${good}crw: { people: 3 }\n`,
      'schema/unknown-key 11:1',
      'did you mean "crew"?',
    ],
    [
      'a choice that does not exist',
      good.replace('stone-dust', 'stone dust'),
      'schema/choice 10:13',
      'did you mean "stone-dust"?',
    ],
    [
      'a missing entry',
      good.replace('name: Tiny Fair\n', ''),
      'schema/missing 1:1',
      'expected text',
    ],
    [
      'a stockpile hauled to a gate that is not there',
      good.replace(
        'cushion:',
        '  marks:\n    - { kind: gate, name: Gate A, station: 10 ft }\n    - { kind: stockpile, name: Pile, station: 90 ft, gate: Gate B }\ncushion:',
      ),
      'ref/missing 11:60',
      'did you mean "Gate A"?',
    ],
    [
      'a direction that no compass shows',
      good.replace('cushion:', '  home-bearing: 400\ncushion:'),
      'schema/format 9:17',
      'from 0 to 360',
    ],
    ['malformed YAML', good.replace('place: {', 'place: {{'), 'yaml/syntax 4:1', ''],
    ['a key given twice', `${good}name: Other\n`, 'yaml/duplicate-key 11:1', ''],
    [
      'an alias',
      `${good}crew: &a { people: 3 }\nwater: *a\n`,
      'yaml/alias 12:8',
      'write the value out',
    ],
    ['an empty file', '', 'file/empty 1:1', ''],
    ['a file of comments', '# nothing\n', 'file/empty 1:1', ''],
    ['a list instead of entries', '- a\n- b\n', 'schema/type 1:1', ''],
    [
      'an id that is a path',
      good.replace('id: tiny', 'id: ../../etc'),
      'schema/format 1:5',
      'small letters',
    ],
    [
      'a measurement of nothing',
      `${good}measurements:\n  - { of: cushion.depth.fond, value: 1 in, date: 2027-06-01, by: x }\n`,
      'ref/missing 12:11',
      'cushion.depth.found',
    ],
    [
      'a measured value of another kind',
      `${good}measurements:\n  - { of: cushion.depth.found, value: 1 gal, date: 2027-06-01, by: x }\n`,
      'quantity/dimension 12:39',
      'a depth',
    ],
    [
      'a date that does not exist',
      `${good}measurements:\n  - { of: cushion.depth.found, value: 1 in, date: 2027-02-30, by: x }\n`,
      'schema/format 12:51',
      'a date',
    ],
    [
      'one id for two machines',
      `${good}equipment:\n  - { id: a, name: A, can: [harrow], from: own }\n  - { id: a, name: B, can: [spray], from: own }\n`,
      'ref/duplicate-id 13:5',
      'entry 1',
    ],
    [
      'a skill that no machine has',
      `${good}equipment:\n  - { id: a, name: A, can: [harow], from: own }\n`,
      'schema/choice 12:29',
      'did you mean "harrow"?',
    ],
  ])('points at %s', (_, text, place, hint) => {
    const problems = problemsOf(text)
    expect(problems.map(at)).toEqual([place])
    expect(`${problems[0]?.message} ${problems[0]?.hint ?? ''}`).toContain(hint)
  })

  it('shows the line that it complains about', () => {
    expect(problemsOf(good.replace('600 ft', '600 gal'))[0]?.source).toBe('  straight: 600 gal')
  })

  it('reports all faults of a file at once', () => {
    const text = good
      .replace('600 ft', '600 gal')
      .replace('us', 'imperial')
      .replace('name:', 'nam:')
    expect(
      problemsOf(text)
        .map((p) => p.code)
        .sort(),
    ).toEqual(['quantity/dimension', 'schema/choice', 'schema/missing', 'schema/unknown-key'])
  })

  it('never throws, whatever the text', () => {
    const junk = [
      '\u0000',
      '{',
      '[1, 2',
      'a: b: c',
      '? x',
      '%YAML 9',
      '!!js/function "x"',
      '__proto__: { polluted: 1 }',
      'constructor: 1',
      '"\\u',
      '\t- x',
      `${'['.repeat(500)}`,
      '---\na: 1\n---\nb: 2\n',
    ]
    for (const text of junk) expect(() => problemsOf(text)).not.toThrow()
    for (const text of junk) expect(problemsOf(text).length).toBeGreaterThan(0)
    expect(({} as { polluted?: number }).polluted).toBeUndefined()
  })
})

describe('the emergency entries', () => {
  const near = good.replace(
    '{ town: Nowhere }',
    '{ town: Nowhere, latitude: 40.6, longitude: -83.9 }',
  )

  it('may all be left out', () => expect(problemsOf(`${good}emergency: {}\n`)).toEqual([]))

  it.each([
    [
      'somebody who may stop racing but cannot be reached',
      `${good}emergency:\n  stops-racing: [superintendent]\n`,
      'ref/missing 12:18',
    ],
    [
      'a role that does not exist',
      `${good}emergency:\n  stops-racing: [superintendant]\n`,
      'schema/choice 12:18',
    ],
    [
      'a gate on the other side of the world',
      `${near}emergency:\n  coordinates: { latitude: 40.6, longitude: 83.9 }\n`,
      'quantity/range 12:28',
    ],
    [
      'a gate that is nowhere',
      `${near}emergency:\n  coordinates: { latitude: 140.6, longitude: -83.9 }\n`,
      'schema/format 12:28',
    ],
    [
      'a hospital without the way to it',
      `${good}emergency:\n  hospital: { name: County Hospital }\n`,
      'schema/missing 12:3',
    ],
  ])('are refused with %s', (_, text, place) => expect(problemsOf(text).map(at)).toEqual([place]))

  it('take a gate near the place of the facility', () =>
    expect(
      problemsOf(
        `${near}emergency:\n  coordinates: { latitude: 40.61942, longitude: -83.91101 }\n`,
      ),
    ).toEqual([]))
})
