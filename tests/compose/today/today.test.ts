import { describe, expect, it } from 'vitest'
import { bareFacility, manualOf, smallManual } from '../../support/small.ts'

describe('what a phone works out anew', () => {
  it('offers the facts of the day on which something rests here, in the words of the day', async () => {
    const { today } = (await smallManual()).manual
    // Nothing rolls here.
    expect(today.groups.map((g) => g.id)).toEqual(['now'])
    expect(today.groups[0]?.facts.map((f) => [f.path, f.label, f.step])).toEqual([
      ['cushion.moisture.found', 'moisture now', 0.5],
      ['gear.harrow.speed', 'speed of the harrow', 0.5],
      ['practice.cold.air', 'cold air', 1],
    ])
  })

  it('names everything that may change with these facts, and nothing else', async () => {
    const { today, figures } = (await smallManual()).manual
    const follow = new Set(today.follows)
    expect(follow).toContain('harrow.time')
    expect(follow).toContain('chill.felt')
    expect(follow).toContain('cushion.moisture.found')
    expect(follow).not.toContain('area.total')
    const known = new Set([
      ...figures.map((f) => f.id),
      ...today.groups.flatMap((g) => g.facts.map((f) => f.path)),
    ])
    expect(today.follows.filter((name) => !known.has(name))).toEqual([])
  })

  it('shows only what can have a number here', async () => {
    const { today } = (await smallManual()).manual
    expect(today.results.map((r) => r.title)).toEqual(['Water'])
    expect(today.clocks.map((c) => [c.id, c.rows.map((r) => r.figure)])).toEqual([
      ['between', ['gap.clear', 'gap.harrowed']],
    ])
    expect(today.clocks[0]?.rows[1]).toMatchObject({ needs: ['gap.harrowed'], above: ['gap.laps'] })
  })

  it('lists the race day by the rows of its plan, and what each race day says', async () => {
    const { today } = (await smallManual()).manual
    expect(today.list).toMatchObject({ plan: 'race-days', title: 'By the hour' })
    expect(today.list?.rows.map((r) => [r.at, r.needs])).toEqual([['clock.last', ['clock.last']]])
    expect(today.programs).toHaveLength(2)
  })

  it('has no list where there are no race days, and supposes what is not known', async () => {
    const { today } = (await manualOf(bareFacility)).manual
    expect(today.list).toBeUndefined()
    expect(today.sums.facts.map(([path]) => path)).not.toContain('cushion.moisture.found')
    expect(today.sums.supposed['cushion.moisture.found']).toBe('fineShare')
  })
})
