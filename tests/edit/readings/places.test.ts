import { describe, expect, it } from 'vitest'
import { nextPlace, placeSaid, placesFor, readyPlaces } from '../../../src/edit/readings/places.ts'
import { emptyTable, type ReadingTable, readingTable } from '../../../src/edit/readings/table.ts'
import { foot } from '../../../src/model/quantity/units.ts'

const ground = { rail: 2620 * foot, width: 60 * foot, stations: 4, lines: 3 }
const ready = readyPlaces('depth', ground, 'us')
const feet = (all: readonly number[]) => all.map((m) => Number(placeSaid(m, 'us')))
const table = (text: string): ReadingTable => {
  const found = readingTable(emptyTable('depth', 'us') + text, 'us')
  if (!found) throw new Error('no table')
  return found
}

describe('places of a grid', () => {
  it('stand ready evenly around the rail and across', () => {
    expect(feet(ready.stations)).toEqual([0, 655, 1310, 1965])
    expect(feet(ready.offsets)).toEqual([10, 30, 50])
    expect(feet(readyPlaces('level', ground, 'us').offsets)).toEqual([1, 16, 30, 45, 59])
    const metric = { rail: 800, width: 18, stations: 8, lines: 3 }
    expect(readyPlaces('depth', metric, 'metric').offsets).toEqual([3, 9, 15])
  })

  it('are those of the latest day, where that has nothing of its own yet', () => {
    const before = table('0,5,1,2027-05-15\n330,5,1,2027-05-15\n')
    const places = placesFor(before, '2027-06-12', { known: undefined, ready })
    expect(feet(places.stations)).toEqual([0, 330])
    expect(feet(places.offsets)).toEqual([5])
  })

  it('come back where only part of them was read before the page was closed', () => {
    const part = table('655,30,1,2027-05-15\n')
    expect(placesFor(part, '2027-05-15', { known: undefined, ready })).toEqual(ready)
    const other = table('650,31,1,2027-05-15\n')
    const own = placesFor(other, '2027-05-15', { known: undefined, ready })
    expect(feet(own.stations)).toEqual([650])
  })

  it('go on as far as the last one did', () => {
    expect(nextPlace([], 'us')).toBe(0)
    expect(feet([nextPlace([330 * foot, 660 * foot], 'us')])).toEqual([990])
    expect(feet([nextPlace([5 * foot], 'us')])).toEqual([15])
  })
})
