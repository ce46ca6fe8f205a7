import { describe, expect, it } from 'vitest'
import { readCsv } from '../../src/read/read-csv.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { unprintableIn } from '../../src/read/unprintable.ts'

describe('a character that cannot be printed', () => {
  it('is a control, half of a pair, what Unicode leaves out, or what turns the direction', () => {
    for (const odd of ['\0', '\x07', '\x1b', '\ud800', '\udc00', '\uffff', '\u202e', '\ue000'])
      expect(unprintableIn(`a${odd}b`)?.at).toBe(1)
    for (const fine of ['a\tb', 'a\nb', '½ °F − 🐎', 'Zürich', 'שלום', '\u2028'])
      expect(unprintableIn(fine)).toBeUndefined()
  })

  it('is refused in a YAML file with its place, also as an escape', () => {
    const { value, problems } = readYaml({ path: 'a.yaml', text: 'a: b\nname: "x\\ud800y"\n' })
    expect(value?.data).toBeUndefined()
    expect(problems).toMatchObject([
      {
        code: 'schema/format',
        place: { line: 2, column: 7 },
        message: expect.stringContaining('U+D800'),
      },
    ])
  })

  it('is refused in a table with its place', () =>
    expect(readCsv({ path: 'a.csv', text: 'date,by\n2027-06-01,A\x1bB\n' }).problems).toMatchObject(
      [{ code: 'schema/format', place: { line: 2, column: 13 } }],
    ))
})
