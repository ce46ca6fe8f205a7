import { describe, expect, it } from 'vitest'
import { eveningRows, halfDayRows, signOffRows } from '../../../src/compose/schedules/training.ts'
import { contextFor, halfMile } from '../support/context.ts'

const crew = `${halfMile}crew: { race-day: 6 }\n`

describe('training', () => {
  it('puts all modules into one morning, each from the end of the one before', async () => {
    const rows = halfDayRows(await contextFor(crew))
    expect(rows.length).toBeGreaterThan(3)
    expect(rows.slice(1).map((r) => r[0])).toEqual(rows.slice(0, -1).map((r) => r[1]))
  })

  it('puts half of them on each of two evenings, which begin at the same hour', async () => {
    const context = await contextFor(crew)
    const rows = eveningRows(context)
    expect(rows.map((r) => r[3])).toEqual(halfDayRows(context).map((r) => r[2]))
    const firsts = ['1', '2'].map((evening) => rows.find((r) => r[0] === evening)?.[1])
    expect(firsts[0]).toBe(firsts[1])
    const lengths = ['1', '2'].map((evening) => rows.filter((r) => r[0] === evening).length)
    expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 0))).toBeLessThanOrEqual(1)
  })

  it('has a line to sign for each volunteer, and two to spare', async () => {
    expect(signOffRows(await contextFor(crew))).toHaveLength(8)
  })
})
