import { describe, expect, it } from 'vitest'
import { type Outcome, table, worst } from '../../../src/cli/many/table.ts'

const built = (pages: number, binderPages?: number): Outcome['built'] => ({
  counts: { pages, figures: 1, estimates: 1, findings: 12, worksheets: 1, procedures: 1 },
  printed:
    binderPages === undefined
      ? undefined
      : { binderPages, fieldBookPages: 1, sheets: 1, toExchange: 0, before: undefined },
})

describe('the table of many builds', () => {
  it('says of each what came of it, and why nothing did', () => {
    const outcomes: Outcome[] = [
      { id: 'alpha', code: 0, built: built(141, 220), seconds: 25.14 },
      { id: 'a-longer-name', code: 3, built: built(90), seconds: 2 },
      { id: 'wrong', code: 1, built: undefined, seconds: 0.3 },
      { id: 'shut', code: 5, built: undefined, seconds: 0.3 },
    ]
    expect(table(outcomes, 30).split('\n')).toEqual([
      'facility       site pages  binder pages  findings  seconds',
      'alpha                 141           220        12     25.1',
      'a-longer-name          90       no PDFs        12      2.0',
      'wrong          not made: its files have errors',
      'shut           not made: cannot be written',
      '2 of 4 made, 2 not: why stands above; 30.0 s',
    ])
  })

  it('has no word of failures where there are none', () => {
    const one: Outcome = { id: 'a', code: 0, built: built(1, 1), seconds: 1 }
    expect(table([one], 1)).toMatch(/\n1 of 1 made; 1\.0 s$/)
  })
})

describe('the exit code of many builds', () => {
  it('is the worst: a fault of the program before what cannot be written, faults, missing PDFs', () => {
    expect(worst([])).toBe(0)
    expect(worst([0, 3, 0])).toBe(3)
    expect(worst([3, 1, 0])).toBe(1)
    expect(worst([1, 5, 3])).toBe(5)
    expect(worst([5, 70, 1])).toBe(70)
  })
})
