import { describe, expect, it } from 'vitest'
import { demoManual, demos } from '../../support/demo.ts'

describe.each(demos)('what the board of %s is asked for', (id) => {
  const board = async () => (await demoManual(id)).manual.board

  it('is one list, beside the findings and not among the plans', async () => {
    expect(await board()).toHaveLength(1)
    const { manual } = await demoManual(id)
    expect(manual.schedules.map((s) => s.id)).not.toContain('board')
  })

  it('begins with money and says of each amount that is missing who can tell', async () => {
    const [money, lacks] = (await board())[0]?.tables ?? []
    expect(money?.id).toBe('board-money')
    expect(lacks?.id).toBe('board-lacks')
    for (const [what, who] of lacks?.rows ?? []) expect(who, what).not.toBe('')
  })
})

describe('the grader of Larkmoor', () => {
  it('is booked for one day of two, and taking off begins the day before it', async () => {
    const { manual } = await demoManual('larkmoor')
    expect(manual.findings.map((f) => f.id)).toContain('grader-short')
    const rows = manual.schedules.find((s) => s.id === 'countdown')?.tables[0]?.rows ?? []
    const dayOf = (task: string) => rows.find((r) => r[1]?.includes(task))?.[0]
    expect(dayOf('[Take off]')).toBe('Mon, Jul 19')
    expect(dayOf('shape the whole width')).toBe('Tue, Jul 20')
    // Three working days before the 19th, a Monday: Wednesday to Friday lie between.
    expect(dayOf('Call to have buried lines marked, wherever')).toBe('Tue, Jul 13')
    expect(dayOf('Ask its owner for more days')).toMatch(/: past$/)
  })
})
