import { describe, expect, it } from 'vitest'
import {
  eveningRows,
  halfDayRows,
  roleRows,
  signOffRows,
} from '../../../src/compose/schedules/training.ts'
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
    expect(rows.map((r) => r[4])).toEqual(halfDayRows(context).map((r) => r[3]))
    const firsts = ['1', '2'].map((evening) => rows.find((r) => r[0] === evening)?.[1])
    expect(firsts[0]).toBe(firsts[1])
    const lengths = ['1', '2'].map((evening) => rows.filter((r) => r[0] === evening).length)
    expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 0))).toBeLessThanOrEqual(1)
  })

  it('says of each lesson how long it takes, who comes and where', async () => {
    for (const row of halfDayRows(await contextFor(crew))) {
      expect(row).toHaveLength(6)
      for (const cell of row) expect(cell, row[3]).not.toBe('')
    }
  })

  it('gives each role its own lessons and their minutes, and nobody more than the half day', async () => {
    const context = await contextFor(crew)
    const rows = roleRows(context)
    const lessons = halfDayRows(context)
    // Everybody comes to the lessons on horses, on weather, and to the rehearsal.
    for (const [role, own = ''] of rows)
      expect(own.split(', '), role).toEqual(expect.arrayContaining(['2', '7', '8']))
    const driver = rows.find((r) => r[0] === 'Drivers')
    expect(driver?.[1]).toBe('1, 2, 5, 6, 7, 8')
    // Six lessons of 22 minutes, in two stretches from 8:00.
    expect(driver?.[2]).toBe('2 h 12 min')
    expect(driver?.[3]).toBe('8:00 AM–8:44 AM; 9:28 AM–10:56 AM')
    expect(new Set(rows.flatMap(([, own = '']) => own.split(', '))).size).toBe(lessons.length)
  })

  it('names in its lessons only roles that are signed off', async () => {
    const context = await contextFor(crew)
    const roles = roleRows(context).map((r) => r[0]?.toLowerCase())
    for (const row of halfDayRows(context))
      if (row[4] !== 'everybody')
        for (const who of row[4]?.split(', ') ?? []) expect(roles).toContain(who)
  })

  it('has a line to sign for each volunteer, and two to spare', async () => {
    expect(signOffRows(await contextFor(crew))).toHaveLength(8)
  })
})
