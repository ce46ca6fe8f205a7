import { expect, it } from 'vitest'
import { composeContacts } from '../../../src/compose/facility/contacts.ts'
import { contextFor, halfMile } from '../support/context.ts'

it('contacts stand in the order of the file, with the title of their role', async () => {
  const context = await contextFor(`${halfMile}contacts:
  - { role: fire, name: F, phone: 555-7701 }
  - { role: superintendent, name: S, phone: 555-7702, note: evenings }
`)
  expect(composeContacts(context)).toEqual([
    { role: 'fire', roleTitle: 'Fire company', name: 'F', phone: '555-7701', note: '' },
    {
      role: 'superintendent',
      roleTitle: 'Superintendent',
      name: 'S',
      phone: '555-7702',
      note: 'evenings',
    },
  ])
})

it('a number that was typed without spaces is printed as it is read out', async () => {
  const phones = ['"5557702"', '"2175557702"', '"911"', '555-7702 ext 2']
  const context = await contextFor(
    `${halfMile}contacts:\n${phones.map((p) => `  - { role: fire, name: F, phone: ${p} }\n`).join('')}`,
  )
  expect(composeContacts(context).map((c) => c.phone)).toEqual([
    '555-7702',
    '217-555-7702',
    '911',
    '555-7702 ext 2',
  ])
})
