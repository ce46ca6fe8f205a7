import { describe, expect, it } from 'vitest'
import { bySignal, worstOf } from '../../src/model/manual/caution.ts'
import type { ManualProcedure } from '../../src/model/manual/procedure.ts'
import { demoManual, demos } from '../support/demo.ts'

/** More than these are no longer read. */
const mostBoxes = 95

const ofSteps = (p: ManualProcedure) => p.methods.flatMap((m) => m.steps.flatMap((s) => s.cautions))

describe('boxes of cautions', () => {
  it('are few enough to be read: how many each demo prints on its procedures', async () => {
    const rows = await Promise.all(
      demos.map(async (demo) => {
        const { procedures } = (await demoManual(demo)).manual
        const atHead = procedures.filter((p) => p.cautions.length > 0).length
        const atSteps = procedures.flatMap(ofSteps).length
        const lines = procedures.flatMap((p) => p.cautions).length
        return { demo, atHead, lines, atSteps, all: atHead + atSteps }
      }),
    )
    console.table(rows)
    for (const { demo, all } of rows) expect(all, demo).toBeLessThanOrEqual(mostBoxes)
  })

  // As ANSI Z535.6 defines them: what is not avoided will kill or maim, or could.
  it('have the signal word that their sentence says: what will happen is a DANGER, what could is none', async () => {
    const { cautions } = (await demoManual('larkmoor')).manual
    for (const { id, signal, hazard } of cautions.filter((c) => c.signal !== 'notice'))
      expect(/\bwill\b/.test(hazard), id).toBe(signal === 'danger')
  })

  it.each(demos)('stand once in a procedure, the worst signal first, at %s', async (demo) => {
    for (const p of (await demoManual(demo)).manual.procedures) {
      const ids = [...p.cautions, ...ofSteps(p)].map((c) => c.id)
      expect(new Set(ids).size, p.id).toBe(ids.length)
      expect(ids.length, p.id).toBeGreaterThan(0)
      expect([...p.cautions].sort(bySignal), p.id).toEqual(p.cautions)
      expect(worstOf([...p.cautions, ...ofSteps(p)])?.signal, p.id).toBe(p.cautions[0]?.signal)
    }
  })

  it.each(demos)(
    'leave no hazard of the library out where its work is done at %s',
    async (demo) => {
      const { manual } = await demoManual(demo)
      const shown = new Set(
        manual.procedures.flatMap((p) => [...p.cautions, ...ofSteps(p)]).map((c) => c.id),
      )
      for (const c of manual.cautions) expect(shown, c.id).toContain(c.id)
      for (const id of ['track-closed', 'rollover', 'backing', 'open-cut', 'lightning', 'heat'])
        expect(shown).toContain(id)
    },
  )
})
