import { describe, expect, it } from 'vitest'
import { demoManual, demos, loadText } from '../../support/demo.ts'

const oval =
  'id: tiny\nname: Tiny Fair\nplace: { town: Nowhere }\nunits: us\npaper: letter\noval: { lap: 2640 ft, straight: 600 ft }\ncushion: { material: clay }\n'

describe('the emergency page', () => {
  it('says what the facility file says', async () => {
    const { manual } = await demoManual('larkmoor')
    const { emergency } = manual
    expect(emergency.number).toBe('911')
    expect(emergency.coordinates).toMatch(/^40\.\d{5}° N, 83\.\d{5}° W$/)
    expect(emergency.stops.map((c) => c.phone)).toEqual(['555-0104', '555-0101'])
    expect(emergency.contacts.every((c) => c.name !== '' && c.phone !== '')).toBe(true)
  })

  it.each(demos)('names nobody twice, and everybody whom %s must be able to reach', async (id) => {
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

  it('keeps an empty place for everything that a file leaves out, and finds it', async () => {
    const { manual } = await loadText(oval)
    if (!manual) throw new Error('no manual')
    const {
      contacts,
      stops,
      firstAid,
      defibrillator,
      extinguishers,
      hospital,
      equineClinic,
      ...lines
    } = manual.emergency
    expect(Object.values(lines).every((text) => text === '')).toBe(true)
    expect([stops, firstAid, defibrillator, extinguishers]).toEqual([[], [], [], []])
    expect([hospital.name, equineClinic.name]).toEqual(['', ''])
    expect(contacts.length).toBeGreaterThanOrEqual(10)
    for (const c of contacts)
      expect([c.roleTitle === '', c.name, c.phone], c.role).toEqual([false, '', ''])
    const found = new Set(manual.findings.map((f) => f.id))
    for (const id of [
      'no-emergency-number',
      'no-address',
      'no-ambulance-gate',
      'no-way-in',
      'no-coordinates',
      'no-meeting-point',
      'no-stop-racing',
      'no-radio',
      'no-hospital',
      'no-equine-clinic',
      'no-first-aid',
      'no-defibrillator',
      'no-extinguishers',
    ])
      expect(found, id).toContain(id)
    for (const id of [
      'no-ambulance',
      'no-veterinarian',
      'no-fire',
      'no-police',
      'no-horse-ambulance',
      'no-superintendent',
      'no-presiding-judge',
      'no-president',
      'no-power-company',
      'no-utility-locate',
    ])
      expect(found, id).toContain(id)
  })

  it('finds nothing missing where nothing is missing, and only the one thing that is', async () => {
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
