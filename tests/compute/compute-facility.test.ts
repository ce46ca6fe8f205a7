import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeFacility } from '../../src/compute/compute-facility.ts'
import { capabilities } from '../../src/model/capability.ts'
import { readYaml } from '../../src/read/read-yaml.ts'
import { checkFacility } from '../../src/validate/check-facility.ts'
import { libraryWords } from '../support/worksheet-words.ts'

// Any oval from a 400 m practice ring to two miles, metric or US, any surface, any subset of
// equipment.
const machine: Readonly<Record<string, string>> = {
  spray: 'tank: 1,500 gal',
  'roll-tires': 'count: 2',
  grade: 'width: 10 ft',
  draw: 'width: 8 ft',
  harrow: 'width: 8 ft',
  screen: 'width: 12 ft',
  condition: 'width: 7 ft',
  'roll-drum': 'width: 6 ft',
  load: 'bucket: 14 ft3',
  haul: 'bed: 8 tons',
  tamp: 'note: small',
}

type Shape = {
  lap: number
  share: number
  units: 'us' | 'metric'
  material: string
  can: readonly string[]
  found: number
}

const facility = ({ lap, share, units, material, can, found }: Shape): string => `
id: any
name: Any Fair
place: { town: Nowhere, latitude: 41, longitude: -83, elevation: 800 ft, time-zone: America/New_York }
units: ${units}
paper: letter
oval: { lap: ${lap} m, straight: ${Math.round(lap * share)} m }
cushion: { material: ${material}, depth: { found: ${found} mm } }
equipment:${can.length === 0 ? ' []' : ''}
${can.map((c) => `  - { id: ${c}, name: the ${c}, can: [${c}], from: own, ${(machine[c] ?? '').replace('1,500 gal', '"1,500 gal"')}, cost: $40/h, fuel: 3 gal/h }`).join('\n')}
prices: { fuel: $4/gal, labor: $20/h, material: $20/ton }
climate: [{ month: 8, tmax: 82 °F, tmin: 61 °F, humidity: 70 %, wind: 6 mph, sun: 8 h }]
race-days: [{ date: 2027-08-03, first-post: "13:00", races: 10, interval: 20 min }]
`

const shapes = fc.record({
  lap: fc.integer({ min: 400, max: 3218 }),
  share: fc.constantFrom(0.15, 0.2, 0.25, 0.3),
  units: fc.constantFrom<'us' | 'metric'>('us', 'metric'),
  material: fc.constantFrom('stone-dust', 'clay', 'sand-clay'),
  can: fc.subarray([...capabilities]),
  found: fc.integer({ min: 5, max: 150 }),
})

describe('every oval within reach', () => {
  it('gets figures that are finite and not negative, or a reason why there is none', () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const tree = readYaml({ path: 'facility.yaml', text: facility(shape) }).value
        const checked = tree && checkFacility(tree)
        // Ovals that are hardly built so are asked about.
        expect(checked?.problems.filter((p) => p.severity === 'error')).toEqual([])
        if (!checked?.value) throw new Error('faults')
        const { engine } = computeFacility(checked.value, libraryWords)
        for (const id of engine.figureIds) {
          const figure = engine.figure(id)
          if (!figure) throw new Error(id)
          else if (!figure.value.ok) expect(figure.value.reason, id).toBeTruthy()
          else
            expect(
              Number.isFinite(figure.value.si) && (figure.value.si >= 0 || id.startsWith('heat.')),
              `${id} = ${figure.value.si}`,
            ).toBe(true)
          // Cold is below zero in Celsius.
          if (figure.value.ok && id !== 'chill.felt')
            expect(figure.value.text).not.toMatch(/NaN|−|Infinity/)
        }
      }),
      { numRuns: 60 },
    )
  })
})
