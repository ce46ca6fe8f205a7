import { expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'

it.each([
  ['a: { { time } : 1 }', 1, 6],
  ['a: 1\n? [b, c]\n: 2\n', 2, 3],
])('a group or list in the place of a name is refused where it stands: %s', (text, line, column) =>
  expect(readYaml({ path: 'a.yaml', text })).toMatchObject({
    value: undefined,
    problems: [{ code: 'yaml/syntax', place: { line, column } }],
  }),
)
