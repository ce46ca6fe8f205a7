import { describe, expect, it } from 'vitest'
import { readYaml } from '../../src/read/read-yaml.ts'
import { saidTwice } from '../../src/validate/said-twice.ts'
import type { Procedure } from '../../src/validate/schemas/procedure.ts'

/** Faults of a procedure of which only the cautions are written, as `line:column message`. */
function faults(text: string): readonly string[] {
  const tree = readYaml({ path: 'content/procedures/own.yaml', text }).value
  if (!tree) throw new Error('no tree')
  return saidTwice({ tree, path: [], value: tree.data as Procedure }).map(
    (p) => `${p.place.file}:${p.place.line}:${p.place.column} ${p.code} ${p.message}`,
  )
}

describe('a caution in a procedure', () => {
  it('may stand at the head or at a step', () =>
    expect(
      faults(
        'cautions: [dust]\nmethods:\n  - steps:\n      - { do: Rake. }\n      - { do: Dig., cautions: [heat] }\n',
      ),
    ).toEqual([]))

  it('is pointed at where a step says it again', () =>
    expect(
      faults(
        'cautions: [dust]\nmethods:\n  - steps:\n      - { do: Dig., cautions: [heat, dust] }\n',
      ),
    ).toEqual([
      'content/procedures/own.yaml:4:38 ref/twice the caution "dust" stands in this procedure already',
    ]))

  it('is pointed at where another method or the head itself says it again', () =>
    expect(
      faults(
        'cautions: [heat, heat]\nmethods:\n  - steps: [{ do: Dig., cautions: [dust] }]\n  - steps: [{ do: Dig., cautions: [dust] }]\n',
      ),
    ).toEqual([
      'content/procedures/own.yaml:1:18 ref/twice the caution "heat" stands in this procedure already',
      'content/procedures/own.yaml:4:36 ref/twice the caution "dust" stands in this procedure already',
    ]))
})
