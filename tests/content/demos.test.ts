import { describe, expect, it } from 'vitest'
import { demoManual, demos } from '../support/demo.ts'

// What the library and the demo facilities promise together; how it is made is tested with the small
// library.

describe.each(demos)('the manual of %s', (id) => {
  it('names on its emergency page nobody twice, and everybody who must be reached', async () => {
    const { manual } = await demoManual(id)
    const roles = [...manual.emergency.stops, ...manual.emergency.contacts].map((c) => c.role)
    for (const role of [
      'ambulance',
      'veterinarian',
      'fire',
      'superintendent',
      'president',
      'power',
      'utility-locate',
      'presiding-judge',
    ])
      expect(roles, role).toContain(role)
    for (const role of ['superintendent', 'presiding-judge', 'president'])
      expect(
        roles.filter((r) => r === role),
        role,
      ).toHaveLength(1)
  })

  it('says on its cards only what the manual holds and knows', async () => {
    const { manual } = await demoManual(id)
    expect(manual.cards.length).toBeGreaterThanOrEqual(5)
    const cautions = new Set(manual.cautions.map((c) => c.id))
    const tables = new Set(manual.reckoners.map((r) => r.id))
    for (const c of manual.cards) {
      expect(c.figures.length, c.id).toBeGreaterThanOrEqual(3)
      for (const f of c.figures)
        expect(manual.quantities[f.name]?.ok, `${c.id}: ${f.name}`).toBe(true)
      expect(c.cautions.length, c.id).toBeGreaterThan(0)
      for (const { id: caution } of c.cautions) expect(cautions, c.id).toContain(caution)
      if (c.reckoner) expect(tables, c.id).toContain(c.reckoner.id)
      for (const p of c.phones) expect(manual.contacts, c.id).toContainEqual(p)
    }
  })

  it('has cards for machines that are there', async () => {
    const { manual } = await demoManual(id)
    const can = new Set(manual.machines.flatMap((m) => m.can))
    const cards = new Set(manual.cards.map((c) => c.id))
    expect([cards.has('water-truck'), cards.has('grader')]).toEqual([
      can.has('spray'),
      can.has('grade'),
    ])
    expect(cards).toContain('superintendent')
  })

  it('leaves room to write in every table of its forms', async () => {
    const { manual } = await demoManual(id)
    for (const f of manual.forms)
      if (f.table) expect(f.table.rows.length + f.table.spare, f.id).toBeGreaterThan(2)
  })

  it('has a form for each part of the work', async () => {
    const { manual } = await demoManual(id)
    const ids = manual.forms.map((f) => f.id)
    for (const wanted of [
      'daily-log',
      'depth-grid',
      'moisture-log',
      'watering-log',
      'repair-record',
      'rain-record',
      'incident',
      'training-record',
      'hand-over',
      'order',
    ])
      expect(ids).toContain(wanted)
    expect(new Set(ids).size).toBe(ids.length)
  })
})

describe('the demo facilities', () => {
  it('finds nothing missing for an emergency where nothing is missing, and what is', async () => {
    const missing = async (id: string) =>
      (await demoManual(id)).manual.findings
        .map((f) => f.id)
        .filter((f) =>
          /^no-(emergency|address|ambulance|way|coord|meeting|stop|radio|hospital|equine|first|defib|exting|veterin|fire|police|horse|super|presiding|president|power|utility)/.test(
            f,
          ),
        )
    expect(await missing('larkmoor')).toEqual([])
    expect((await missing('ostmere')).sort()).toEqual(['no-defibrillator', 'no-horse-ambulance'])
  })
})
