import type { Contact } from '../../model/manual/emergency.ts'
import type { ComposeContext } from '../context.ts'

/** The contacts of the facility file, in its order. */
export const composeContacts = ({ facility, library }: ComposeContext): readonly Contact[] =>
  (facility.file.contacts ?? []).map((c) => ({
    role: c.role,
    roleTitle: library.words.roles[c.role],
    name: c.name,
    phone: c.phone,
    note: c.note ?? '',
  }))
