import { describe, expect, it } from 'vitest'
import { splice } from '../../src/edit/splice.ts'
import { describeSplices, spliced } from '../support/splices.ts'

// More of them are made where whole demos are gone through.
describeSplices(29)

describe('splice', () => {
  it('makes the first entry of an empty file, and of one of remarks', () => {
    expect(spliced('', ['oval', 'lap'], '2,640 ft')).toBe('oval:\n  lap: 2,640 ft\n')
    expect(spliced('# mine', ['name'], 'Fair')).toBe('# mine\nname: Fair\n')
  })

  it('fills an entry that stands empty, before its remark', () => {
    expect(spliced('crew:   # ask\nunits: us\n', ['crew', 'people'], 3)).toBe(
      'crew: { people: 3 }   # ask\nunits: us\n',
    )
  })

  it('puts quotes only where they are needed', () => {
    expect(spliced('a: 1\n', ['a'], '2,640 ft')).toBe('a: 2,640 ft\n')
    expect(spliced('a: { b: 1 }\n', ['a', 'b'], '2,640 ft')).toBe('a: { b: "2,640 ft" }\n')
    expect(spliced('a: 1\n', ['a'], '911')).toBe('a: "911"\n')
    expect(spliced('a: 1\n', ['a'], '13:30')).toBe('a: "13:30"\n')
    expect(spliced('a: 1\n', ['a'], 'say "go"')).toBe('a: say "go"\n')
    expect(spliced('a: 1\n', ['a'], '"go" she said: now')).toBe(`a: '"go" she said: now'\n`)
  })

  it('exchanges a whole group or list for another', () => {
    expect(spliced('a:\n  b: 1 # x\n  c: 2\nd: 3\n', ['a'], { b: 2 })).toBe('a: { b: 2 }\nd: 3\n')
    expect(spliced('a:\n  - 1\n  - 2\nd: 3\n', ['a'], [3])).toBe('a: [3]\nd: 3\n')
  })

  it('refuses what has no place, and a file that cannot be read', () => {
    expect(splice('a: 1\n', { path: ['a', 'b'], value: 'x' }).ok).toBe(false)
    expect(splice('a: 1\n', { path: ['b'], value: undefined }).ok).toBe(false)
    expect(splice('a: [1]\n', { path: ['a', 3], value: 2 }).ok).toBe(false)
    expect(splice('a: "1\n', { path: ['b'], value: 1 }).ok).toBe(false)
    expect(splice('a: 1\n', { path: [], value: 1 }).ok).toBe(false)
  })
})
