import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parse } from 'yaml'
import { written } from '../../src/edit/written.ts'

test('a text is typed so that a reader of YAML reads just that text', () => {
  const words = fc.constantFrom(
    'null',
    'True',
    'no',
    '1',
    '0x1',
    '1e3',
    '.inf',
    '5 mph',
    '2 1/4 in',
  )
  const letters = fc.string({ unit: fc.constantFrom(...`aZ0159.-_/%°' :#,[]{}"~&*\n`) })
  fc.assert(
    fc.property(fc.oneof(words, letters, fc.string()), (text) => {
      expect(parse(written(text))).toBe(text)
      expect(parse(written({ of: [text] }))).toEqual({ of: [text] })
    }),
    { numRuns: 2000 },
  )
})

test('quotes stand only where they are needed', () => {
  expect(written({ of: 'gear.grade.speed', value: '5 mph', by: 'your name', at: '12:30' })).toBe(
    '{ of: gear.grade.speed, value: 5 mph, by: your name, at: "12:30" }',
  )
})
