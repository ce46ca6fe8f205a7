import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { demos, loadDemo } from '../support/demo.ts'
import { describeOneFault } from './support/one-fault.ts'
import { leavesOf, planted } from './support/plant.ts'
import { demoFiles, workHere } from './support/work.ts'

const file = (text: string): ReadonlyMap<string, string> => new Map([['facility.yaml', text]])

const enough = `
id: enough
name: Enough Fair
place: { town: Enough }
units: metric
paper: a4
cushion: { material: clay }
`

describe('answers', () => {
  it.each(demos)('of %s make the same figures and findings as its build', async (demo) => {
    const worked = (await workHere())(demoFiles(demo))
    const { manual, problems } = await loadDemo(demo)
    expect(worked.leftOut).toEqual([])
    expect(worked.standIns).toEqual([])
    expect(worked.problems.map((p) => p.message)).toEqual(problems.map((p) => p.message))
    const said = (m: typeof manual) => m?.figures.map((f) => [f.id, f.value, f.estimate])
    expect(said(worked.manual)).toEqual(said(manual))
    expect(worked.manual?.findings.map((f) => f.id)).toEqual(manual?.findings.map((f) => f.id))
  })

  it('that nobody has given yet make a half mile, with everything that stands in named', async () => {
    const { leftOut, standIns, manual, problems } = (await workHere())(new Map())
    expect(leftOut).toEqual([])
    expect(standIns).toEqual([
      'id',
      'name',
      'place.town',
      'units',
      'paper',
      'oval.lap',
      'oval.straight',
      'cushion.material',
    ])
    expect(manual?.geometry.lap).toBeCloseTo(2640 * 0.3048, 6)
    expect(problems.map((p) => p.path?.join('.'))).toContain('name')
  })

  it('in a file that is no YAML say so and nothing else', async () => {
    const { leftOut, manual, problems } = (await workHere())(file('oval: { lap: 2640 ft'))
    expect(leftOut).toEqual([''])
    expect(problems).toHaveLength(1)
    expect(manual?.figures.length).toBeGreaterThan(50)
  })

  // Straights and turns of a half mile: 600 ft and 720 ft, so a straight is 600/2640 of the lap.
  it.each([
    ['lap: 1100 m', 'oval.straight', 1100],
    ['straight: 250 m', 'oval.lap', 1100],
    ['radius: 69 m', 'oval.lap', (2 * Math.PI * (69 + 0.9144)) / (1 - 1200 / 2640)],
  ])('with %s alone draw an oval of the usual shape round it', async (given, standIn, lap) => {
    const worked = (await workHere())(file(`${enough}oval: { ${given} }\n`))
    expect(worked.standIns).toEqual([standIn])
    expect(worked.leftOut).toEqual([])
    expect(worked.manual?.geometry.lap).toBeCloseTo(lap, -1)
  })

  it('leave out a length that no oval fits, and draw another', async () => {
    const worked = (await workHere())(file(`${enough}oval: { straight: 20 m }\n`))
    expect(worked.leftOut).toEqual(['oval.straight'])
    expect(worked.standIns).toEqual(['oval.lap', 'oval.straight'])
    expect(worked.manual?.geometry.straight).toBeCloseTo(183, 0)
  })

  it('that contradict each other lose the one that is asked about', async () => {
    const oval = 'oval: { lap: 800 m, straight: 180 m, radius: 90 m }\n'
    const { leftOut, manual, problems } = (await workHere())(file(enough + oval))
    expect(leftOut).toEqual(['oval.radius'])
    expect(problems).toMatchObject([{ code: 'oval/impossible', path: ['oval', 'radius'] }])
    expect(manual?.geometry.straight).toBeCloseTo(180, 6)
  })

  it('do without a table that is not there, or that cannot be read', async () => {
    const work = await workHere()
    const larkmoor = demoFiles('larkmoor')
    const lacking = new Map([...larkmoor].filter(([name]) => name !== 'depths.csv'))
    const broken = new Map([...larkmoor, ['depths.csv', 'station (ft)\n"12']])
    for (const files of [lacking, broken]) {
      const { leftOut, problems, manual } = work(files)
      expect(leftOut).toEqual(['surveys.0'])
      expect(problems.filter((p) => p.severity === 'error')).toMatchObject([
        { path: ['surveys', 0, 'file'] },
      ])
      expect(manual?.figures.length).toBeGreaterThan(100)
    }
  })

  it('say where a fault lies by the places of the file, whatever is left out before it', async () => {
    const contacts = `contacts:
  - { role: president }
  - { role: ambulance, name: County, phone: 555-3010 }
  - { role: president, name: Nobody, phone: "" }
`
    const oval = 'oval: { lap: 800 m, straight: 180 m }\n'
    const { leftOut, problems } = (await workHere())(file(enough + oval + contacts))
    expect(leftOut).toEqual(['contacts.0', 'contacts.2'])
    expect([...new Set(problems.map((p) => p.path?.join('.')))]).toEqual([
      'contacts.0.name',
      'contacts.0.phone',
      'contacts.2.phone',
    ])
    expect(problems.at(-1)?.place.line).toBe(12)
  })

  it('with any values whatever make a drawing and figures', async () => {
    const work = await workHere()
    const leaves = leavesOf('brambleford')
    const value = fc.oneof(
      fc.string(),
      fc.integer(),
      fc.double(),
      fc.boolean(),
      fc.constantFrom(null, [], {}, '0 ft', '1e9 m', '-3 ft', '65', '2027-02-30', '25:00', '²'),
      fc.dictionary(fc.string(), fc.integer(), { maxKeys: 2 }),
    )
    const fault = fc.tuple(fc.constantFrom(...leaves), value)
    fc.assert(
      fc.property(fc.array(fault, { minLength: 1, maxLength: 5 }), (faults) => {
        const { manual, computed } = work(planted('brambleford', faults))
        expect(computed?.engine.si('rail.length')).toBeGreaterThan(0)
        expect(manual?.findings.length).toBeGreaterThan(0)
      }),
      { numRuns: 40 },
    )
  }, 60_000)
})

describe('one fault', () => describeOneFault(17))
