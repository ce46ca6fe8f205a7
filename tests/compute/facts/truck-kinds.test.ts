import { describe, expect, it } from 'vitest'
import { contextFor, halfMile } from '../../compose/support/context.ts'

const truck = (id: string, tank: string, more = ''): string =>
  `  - { id: ${id}, name: ${id}, can: [spray], from: own, tank: "${tank}"${more} }\n`
const engineOf = async (...trucks: readonly string[]) =>
  (await contextFor(`${halfMile}equipment:\n${trucks.join('')}`)).engine

describe('machines that spray', () => {
  it('are the same trucks whether they stand in one entry or in two', async () => {
    const one = await engineOf(truck('a', '1,500 gal', ', count: 2'))
    const two = await engineOf(truck('a', '1,500 gal'), truck('b', '1,500 gal'))
    expect(two.si('gear.spray.count')).toBe(2)
    for (const id of ['round.time', 'round.loads', 'fleet.turn', 'supply.need'] as const)
      expect(two.si(id), id).toBe(one.si(id))
    expect(two.si('second-truck.count')).toBeUndefined()
  })

  it('are reckoned with, though they are not alike', async () => {
    const alone = await engineOf(truck('a', '2,000 gal'))
    const both = await engineOf(truck('a', '2,000 gal'), truck('b', '1,200 gal'))
    expect(both.si('fleet.all')).toBe(2)
    // Nine tenths of 1,200 gal.
    expect(both.text('second-truck.load')).toBe('1,080 gal')
    // Spraying 1,080 gal at the usual 120 gal/min, and 4 min on the way.
    expect(both.text('second-truck.away')).toBe('13 min')
    expect(both.si('round.time') ?? 0).toBeLessThan(alone.si('round.time') ?? 0)
    expect(both.si('round.alone')).toBe(alone.si('round.time'))
    expect(both.restsOn('round.time').has('second-truck.load')).toBe(true)
  })

  it('are a third kind with their mean, from the third kind on', async () => {
    const engine = await engineOf(
      truck('a', '2,000 gal'),
      truck('b', '1,200 gal'),
      truck('c', '1,000 gal'),
      truck('d', '500 gal', ', count: 3'),
    )
    expect(engine.si('fleet.all')).toBe(6)
    // (900 + 3 × 450) / 4
    expect(engine.text('third-truck.load')).toBe('562.5 gal')
    expect(engine.figure('round.time')?.value.ok).toBe(true)
  })

  it('cost in an hour what they cost on average, where each has a price', async () => {
    const each = (cost: string, fuel: string) => `, cost: ${cost}, fuel: ${fuel}`
    const trucks = [
      truck('a', '2,000 gal', each('$45/h', '4 gal/h')),
      truck('b', '1,000 gal', `${each('$90/h', '6 gal/h')}, count: 2`),
    ]
    const prices = 'prices: { fuel: $4/gal, labor: $20/h }\n'
    const engineWith = async (...of: readonly string[]) =>
      (await contextFor(`${halfMile}${prices}equipment:\n${of.join('')}`)).engine
    const both = await engineWith(...trucks)
    // (45 + 2 × 90) / 3 = $75 and (4 + 2 × 6) / 3 gal in each truck's hour; three trucks.
    const hours = ((both.si('round.time') ?? 0) / 3600) * 3
    const fuel = (hours * 16) / 3
    expect(both.si('round-cost.machine')).toBeCloseTo(hours * 75 + fuel * 4, 6)
    // Where one has no price, the first stands for all.
    const half = await engineWith(trucks[0] ?? '', truck('b', '1,000 gal', ', count: 2'))
    const first = ((half.si('round.time') ?? 0) / 3600) * 3
    expect(half.si('round-cost.machine')).toBeCloseTo(first * (45 + 4 * 4), 6)
  })

  it('count once where the entry comes before another machine', async () => {
    const engine = await engineOf(
      truck('a', '2,000 gal'),
      '  - { id: h, name: h, can: [harrow], from: own }\n',
    )
    expect([engine.si('gear.spray.count'), engine.si('fleet.all')]).toEqual([1, 1])
  })
})
