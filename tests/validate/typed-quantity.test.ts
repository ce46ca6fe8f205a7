import { expect, it } from 'vitest'
import { unitNames } from '../../src/model/quantity/units.ts'
import { typedQuantity } from '../../src/validate/typed-quantity.ts'

it('finds a number typed with any unit of the table, so that a new unit is looked for at once', () => {
  const spelled = unitNames.filter((name) => /\p{L}/u.test(name))
  expect(spelled.length).toBeGreaterThan(60)
  expect(spelled.filter((name) => typedQuantity(`Stay 3 ${name} away.`) !== `3 ${name}`)).toEqual(
    [],
  )
})

it('takes numbers without a unit, and parts of names, for what they are', () => {
  for (const text of ['Walk 2 laps.', 'See {seal.time}.', 'Drain 1 is shut.', 'At 3 inspections.'])
    expect(typedQuantity(text)).toBeUndefined()
})
