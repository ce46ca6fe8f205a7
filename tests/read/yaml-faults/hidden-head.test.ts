import { describe, expect, it } from 'vitest'
import { blankFacility } from '../../../src/edit/blank-facility.ts'
import { hiddenHeadHint, hiddenHeads } from '../../../src/read/yaml-faults/hidden-head.ts'
import { facility } from '../../../src/validate/schemas/facility.ts'

const lines = blankFacility(facility, 'us').split('\n')

/** An entry behind #, or a line of a list. */
const silent = /^#((?: {2})+)(?:([a-z][a-z0-9-]*):(?: .+)?|- \{ .+)$/

describe('the heads of an entry that are still behind #', () => {
  it('are found for every entry of the file in which each is explained', () => {
    let found = 0
    for (const [i, line] of lines.entries()) {
      const [, spaces = ''] = silent.exec(line) ?? []
      if (spaces === '') continue
      const opened = lines.with(i, line.slice(1))
      const heads = hiddenHeads(opened, i + 1, false)
      // What stands in a group that is open has no such head.
      const outer = heads[0]?.line ?? i + 1
      const above = opened.slice(0, outer - 1).findLast((l) => /^ *[a-z-]+:/.test(l)) ?? ''
      const depth = spaces.length / 2 - heads.length
      if (depth > 0) expect(above.search(/\S/), line).toBeGreaterThanOrEqual(2 * (depth - 1))
      for (const head of heads) expect(opened[head.line - 1]?.trim()).toMatch(/^#\s*[a-z-]+:$/)
      if (heads.length > 0) found++
    }
    expect(found).toBeGreaterThan(150)
  })

  it('are all named, outermost first', () => {
    const at = lines.indexOf('#    speed: 6 mph')
    const opened = lines.with(at, '    speed: 6 mph')
    const heads = hiddenHeads(opened, at + 1, false)
    expect(heads.map((h) => h.name)).toEqual(['practice', 'haul'])
    expect(hiddenHeadHint(heads)).toMatch(
      /^take the # away before "practice:" in line \d+ and "haul:" in line \d+ too$/,
    )
  })

  it('are none where the head is open, or only a remark that somebody wrote', () => {
    expect(hiddenHeads(['crew:', '# people:', '  people: 3'], 3, false)).toEqual([])
    expect(hiddenHeads(['crew:', '# harrow:', '  people: 3'], 3, true)).toEqual([])
  })
})
