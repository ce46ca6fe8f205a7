import { describe, expect, it } from 'vitest'
import { composeCautions } from '../../../src/compose/procedures/cautions.ts'
import { composeProcedures } from '../../../src/compose/procedures/procedures.ts'
import { composeSections } from '../../../src/compose/procedures/sections.ts'
import { composeSymptoms } from '../../../src/compose/procedures/symptoms.ts'
import { demoManual, demos } from '../../support/demo.ts'
import { contextFor, halfMile } from '../support/context.ts'

/** The procedures of a facility with its sections, composed with nothing else. */
async function shelves(text: string) {
  const context = await contextFor(text, {}, { reckoners: [] })
  const procedures = composeProcedures(context)
  const parts = { ...context.parts, procedures, cards: [] }
  return { procedures, context: { ...context, parts } }
}

describe('procedures', () => {
  it('are numbered by section and place, in the order of the binder, without gaps', async () => {
    const { procedures, context } = await shelves(halfMile)
    const sections = composeSections(context)
    expect(sections.map((s) => s.number)).toEqual(sections.map((_, i) => i + 1))
    expect(procedures.map((p) => p.number)).toEqual(
      sections.flatMap((s) => s.procedures.map((_, j) => `${s.number}.${j + 1}`)),
    )
    expect(sections.flatMap((s) => s.procedures)).toEqual(procedures.map((p) => p.id))
  })

  it('are left out where nothing here can do the work', async () => {
    const ids = async (text: string) => (await shelves(text)).procedures.map((p) => p.id)
    expect(await ids(halfMile)).not.toContain('grader-day')
    const grader = 'equipment: [{ id: g, name: g, can: [grade], from: own, width: 10 ft }]\n'
    expect(await ids(`${halfMile}${grader}`)).toContain('grader-day')
  })

  it('say of a borrowed machine on which days it is here', async () => {
    const gear = async (days: string) => {
      const grader = `equipment: [{ id: g, name: the grader, can: [grade], from: borrowed${days} }]\n`
      const { procedures } = await shelves(`${halfMile}${grader}`)
      return procedures.find((p) => p.id === 'grader-day')?.gear.find((g) => g.can === 'grade')
    }
    expect((await gear(''))?.machine).toBe('the grader')
    expect((await gear(', days: [2027-07-21, 2027-07-20]'))?.machine).toBe(
      'the grader (here on Tue, Jul 20; Wed, Jul 21 only)',
    )
  })

  it('are all that a symptom leads to', async () => {
    const { procedures, context } = await shelves(halfMile)
    const present = new Set(procedures.map((p) => p.id))
    const symptoms = composeSymptoms(context)
    expect(symptoms.length).toBeGreaterThan(5)
    const causes = symptoms.flatMap((s) => s.causes.map((c) => c.procedure))
    expect(causes.filter((id) => !present.has(id))).toEqual([])
    expect(symptoms.filter((s) => s.causes.length === 0)).toEqual([])
  })

  it('give the manual the cautions that they show, each once', async () => {
    const { procedures, context } = await shelves(halfMile)
    const cautions = composeCautions(context).map((c) => c.id)
    expect(new Set(cautions).size).toBe(cautions.length)
    const shown = procedures.flatMap((p) => p.cautions.map((c) => c.id))
    expect(shown.filter((id) => !cautions.includes(id))).toEqual([])
  })
})

describe.each(demos)('procedures of %s', (id) => {
  it('lead to no procedure that the manual does not have', async () => {
    const { manual } = await demoManual(id)
    const present = new Set(manual.procedures.map((p) => p.id))
    const led = manual.procedures.flatMap((p) => [
      p.next,
      ...p.branches.map((b) => b.procedure),
      ...p.failures.map((f) => f.procedure),
    ])
    expect(led.filter((to) => to !== undefined && !present.has(to))).toEqual([])
  })
})
