import { describe, expect, it } from 'vitest'
import { composeMachines } from '../../../src/compose/facility/machines.ts'
import { contextFor, halfMile } from '../support/context.ts'

const equipment = `equipment:
  - { id: truck, name: the truck, can: [spray], from: own, tank: "1,500 gal" }
  - id: harrow
    name: the old harrow
    can: [harrow]
    from: borrowed
    owner: a neighbor
    width: 8 ft
`

describe('machines', () => {
  it('stand in the order of the file, with whose they are', async () => {
    const machines = composeMachines(await contextFor(`${halfMile}${equipment}`))
    expect(machines.map((m) => [m.id, m.from])).toEqual([
      ['truck', 'own'],
      ['harrow', 'borrowed: a neighbor'],
    ])
  })

  it('say what the file says of them, and on which line', async () => {
    const [, harrow] = composeMachines(await contextFor(`${halfMile}${equipment}`))
    expect(harrow?.facts).toMatchObject([
      { text: '8 ft', provenance: { kind: 'stated', at: { line: 15 } } },
    ])
  })

  it('say on which days a borrowed one is here', async () => {
    const booked = equipment.replace(
      'owner: a neighbor',
      'owner: a neighbor\n    days: [2027-07-20]',
    )
    const [, harrow] = composeMachines(await contextFor(`${halfMile}${booked}`))
    expect(harrow?.from).toBe('borrowed: a neighbor; here on Tue, Jul 20 only')
  })

  it('are none where the file names none', async () => {
    expect(composeMachines(await contextFor(halfMile))).toEqual([])
  })
})
