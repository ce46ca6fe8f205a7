import { describe, expect, it } from 'vitest'
import type { Problem } from '../../src/model/problem.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { checkDates } from '../../src/validate/facility/check-dates.ts'
import { badFacilities, placesOf } from '../support/bad-input.ts'

/** What the clock says. */
const today = '2027-06-14'

const { start, cases } = await badFacilities()

function problemsOf(text: string): readonly Problem[] {
  const read = readYaml({ path: 'facility.yaml', text })
  if (!read.value) return read.problems
  const { value, problems } = checkFacility(read.value)
  if (!value) return problems
  const date = value.file['as-of'] ?? today
  return [...problems, ...checkDates(value, { date, today })]
}

describe('checkFacility', () => {
  it('accepts the smallest facility that has a shape', () => {
    expect(problemsOf(start)).toEqual([])
  })

  it.each(cases.map((c) => [c.name, c] as const))(
    'points at %s',
    (_, { text, expect: places, says }) => {
      const problems = problemsOf(text)
      expect(placesOf(problems)).toEqual([...places].sort())
      expect(`${problems[0]?.message} ${problems[0]?.hint ?? ''}`).toContain(says)
    },
  )

  it('shows the line that it complains about', () => {
    expect(problemsOf(start.replace('600 ft', '600 gal'))[0]?.source).toBe('  straight: 600 gal')
  })

  it('takes a gate near the place of the facility, and an empty group', () => {
    const placed = start.replace(
      'latitude: 41, longitude: -89,',
      'latitude: 40.8, longitude: -89.1,',
    )
    const gate = 'emergency:\n  coordinates: { latitude: 40.8295, longitude: -89.0812 }\n'
    expect(problemsOf(placed + gate)).toEqual([])
    expect(problemsOf(`${start}emergency: {}\n`)).toEqual([])
  })

  it('tells a hundred of the entries that do not exist, and no more', () => {
    const strange = Array.from({ length: 400 }, (_, i) => `zq${i}: 1\n`).join('')
    const problems = problemsOf(start + strange)
    expect(problems).toHaveLength(100)
    expect(problems.map(({ place }) => place.line)).toEqual(
      Array.from({ length: 100 }, (_, i) => start.split('\n').length + i),
    )
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
