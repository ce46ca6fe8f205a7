import { describe, expect, it } from 'vitest'
import { bareFacility, manualOf, smallManual } from '../../support/small.ts'

describe('the emergency page', () => {
  it('says what the facility file says', async () => {
    const { manual } = await smallManual()
    const { emergency } = manual
    expect(emergency.number).toBe('911')
    expect(emergency.coordinates).toBe('40.00012° N, 90.00034° W')
    expect(emergency.stops.map((c) => c.phone)).toEqual(['555-7701'])
    expect(emergency.contacts.find((c) => c.role === 'ambulance')).toMatchObject({
      name: 'County ambulance',
      phone: '555-7710',
    })
  })

  it('keeps an empty place for everything that a file leaves out, and finds it', async () => {
    const { manual } = await manualOf(bareFacility)
    const {
      contacts,
      stops,
      firstAid,
      defibrillator,
      extinguishers,
      hospital,
      equineClinic,
      point,
      ...lines
    } = manual.emergency
    expect(Object.values(lines).every((text) => text === '')).toBe(true)
    expect(point).toBeUndefined()
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
})
