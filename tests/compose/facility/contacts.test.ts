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
