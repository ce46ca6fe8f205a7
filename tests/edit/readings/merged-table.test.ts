import { describe, expect, it } from 'vitest'
import { mergedTable } from '../../../src/edit/readings/merged-table.ts'

const head = 'station (ft),offset (ft),depth (in),date\n'
const row = (station: number, depth: string): string => `${station},5,${depth},2027-05-15\n`

describe('readings that two have changed', () => {
  const base = head + row(0, '1') + row(330, '1')

  it('are put together, and what both have changed is asked', () => {
    const mine = head + row(0, '1 1/4') + row(330, '1 1/4') + row(660, '1 1/4')
    const theirs = `# theirs\n${head}${row(0, '1')}${row(330, '1 1/2')}`
    const made = mergedTable({ base, mine, theirs }, 'us')
    expect(made?.text).toBe(
      `# theirs\n${head}${row(0, '1 1/4')}${row(330, '1 1/2')}${row(660, '1 1/4')}`,
    )
    expect(made?.clashes).toMatchObject([{ mine: '1 1/4', theirs: '1 1/2' }])
  })

  it('are those of both where neither had any before', () => {
    const made = mergedTable(
      { base: '', mine: head + row(0, '1'), theirs: head + row(330, '2') },
      'us',
    )
    expect(made?.text).toBe(head + row(0, '1') + row(330, '2'))
    expect(made?.clashes).toEqual([])
  })

  it('agree where both have typed the same', () => {
    const same = head + row(0, '2') + row(330, '1')
    expect(mergedTable({ base, mine: same, theirs: same }, 'us')).toEqual({
      text: same,
      clashes: [],
    })
  })

  it('cannot be put into what is no such table', () => {
    expect(mergedTable({ base, mine: base, theirs: 'anything' }, 'us')).toBeUndefined()
  })
})
