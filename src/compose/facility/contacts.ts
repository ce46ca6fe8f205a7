import type { Contact } from '../../model/manual/emergency.ts'
import type { UnitSystem } from '../../model/quantity/kinds.ts'
import type { ComposeContext } from '../context.ts'

/** A number that was typed without spaces, as it is read out: 555-2123. */
const spaced = (phone: string, units: UnitSystem): string =>
  units === 'us'
    ? phone.replace(/^(\d{3})?(\d{3})(\d{4})$/, (_, area, a, b) =>
        [area, a, b].filter(Boolean).join('-'),
      )
    : phone

/** The contacts of the facility file, in its order. */
export const composeContacts = ({ facility, library }: ComposeContext): readonly Contact[] =>
  (facility.file.contacts ?? []).map((c) => ({
    role: c.role,
    roleTitle: library.words.roles[c.role],
    name: c.name,
    phone: spaced(c.phone, facility.file.units),
    note: c.note ?? '',
  }))
