import { describe, expect, it } from 'vitest'
import { demoManual, demos, loadDemo } from '../support/demo.ts'

describe('the library', () => {
  it.each(demos)('has neither faults nor warnings for %s', async (id) => {
    const { problems } = await loadDemo(id)
    expect(problems.map((p) => `${p.place.file}:${p.place.line} ${p.message}`)).toEqual([])
  })

  it.each(demos)('names only quantities that have a value in the steps of %s', async (id) => {
    const { manual } = await demoManual(id)
    const words = manual.procedures.flatMap((p) => [
      ...p.methods.flatMap((m) => m.steps.flatMap((s) => [s.do, s.note ?? ''])),
      p.sheet.when,
    ])
    const unknown = words
      .flatMap((text) => [...text.matchAll(/\{([^}]*)\}/g)].map((m) => m[1] ?? ''))
      .filter((name) => !manual.quantities[name]?.ok)
    expect(unknown).toEqual([])
  })

  it.each(demos)(
    'leads elsewhere in the notes of steps, never in what sheets print, at %s',
    async (id) => {
      const { manual } = await demoManual(id)
      const steps = manual.procedures.flatMap((p) => p.methods.flatMap((m) => m.steps))
      expect(steps.map((s) => s.do).filter((text) => text.includes(']('))).toEqual([])
    },
  )

  it('asks questions whose answers cannot be guessed from their letters', async () => {
    const { manual } = await demoManual('larkmoor')
    const right = manual.procedures.flatMap((p) => p.training.questions.map((q) => q.right))
    for (const letter of [1, 2, 3])
      expect(right.filter((r) => r === letter).length / right.length).toBeLessThan(0.45)
  })

  it('covers the year: procedures on every shelf, thirty and more in all', async () => {
    const { manual } = await demoManual('larkmoor')
    expect(manual.procedures.length).toBeGreaterThanOrEqual(38)
    for (const s of manual.sections) expect(s.procedures.length, s.id).toBeGreaterThan(1)
    expect(manual.sections).toHaveLength(9)
  })

  it.each(demos)('gives %s no step for a machine that it lacks', async (id) => {
    const { manual } = await demoManual(id)
    const can = new Set(manual.machines.flatMap((m) => m.can))
    for (const p of manual.procedures)
      for (const g of p.gear)
        expect(g.machine !== undefined || g.instead !== undefined, `${p.id}: ${g.can}`).toBe(true)
    const steps = manual.procedures
      .flatMap((p) => p.methods.flatMap((m) => m.steps.map((s) => s.do)))
      .join('\n')
    if (!can.has('grade')) expect(steps).not.toMatch(/\bblade\b|grader/)
    if (manual.geometry.rail === 'hub-rail') expect(steps).not.toMatch(/pylon/)
    if (!can.has('screen')) expect(steps).not.toMatch(/\bscreen\b/)
    if (!can.has('roll-tires')) expect(steps).not.toMatch(/truck tires|rolling truck/)
  })

  it('says what is behind every caution', async () => {
    const { manual } = await demoManual('larkmoor')
    expect(manual.cautions.every((c) => c.sources.length > 0)).toBe(true)
  })
})
