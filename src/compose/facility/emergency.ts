import type { Contact, Emergency, PlaceOfHelp } from '../../model/manual/emergency.ts'
import { type ContactRole, helperRoles } from '../../validate/schemas/contacts.ts'
import type { Words } from '../../validate/schemas/words.ts'
import type { ComposeContext } from '../context.ts'

/** Whom an emergency page must name, in the order in which they are needed. */
const called: readonly ContactRole[] = [
  ...helperRoles,
  'superintendent',
  'presiding-judge',
  'president',
  'utility-locate',
]

/** These stand among those who may stop racing, and need not stand on the page twice. */
const officials: readonly ContactRole[] = ['superintendent', 'presiding-judge', 'president']

type Coordinates = { readonly latitude: number; readonly longitude: number }

/** Five places of a degree are about a meter: the gate, not the field beside it. */
const degrees = (value: number, plus: string, minus: string): string =>
  `${Math.abs(value).toFixed(5)}° ${value < 0 ? minus : plus}`

const pointText = ({ latitude, longitude }: Coordinates, to: Words['compass']): string =>
  `${degrees(latitude, to.north, to.south)}, ${degrees(longitude, to.east, to.west)}`

const helpOf = (
  help:
    | { readonly name: string; readonly phone?: string | undefined; readonly way: string }
    | undefined,
): PlaceOfHelp => ({ name: help?.name ?? '', phone: help?.phone ?? '', way: help?.way ?? '' })

/**
 * The emergency page of a facility: all that it must say, with empty places where the file says
 * nothing.
 */
export function composeEmergency({ facility, library, parts }: ComposeContext): Emergency {
  const said = facility.file.emergency ?? {}
  const byRole = (role: ContactRole): readonly Contact[] =>
    parts.contacts.filter((c) => c.role === role)
  const orBlank = (role: ContactRole): readonly Contact[] =>
    byRole(role).length > 0
      ? byRole(role)
      : [{ role, roleTitle: library.words.roles[role], name: '', phone: '', note: '' }]
  const stops = (said['stops-racing'] ?? []).flatMap(byRole)
  const above = new Set(
    stops.map((c) => c.role).filter((role) => officials.some((o) => o === role)),
  )
  return {
    number: said.number ?? '',
    radio: said.radio ?? '',
    address: said.address ?? '',
    gate: said.gate ?? '',
    way: said.way ?? '',
    coordinates: said.coordinates ? pointText(said.coordinates, library.words.compass) : '',
    point: said.coordinates,
    meetingPoint: said['meeting-point'] ?? '',
    stops,
    contacts: called.filter((role) => !above.has(role)).flatMap(orBlank),
    hospital: helpOf(said.hospital),
    equineClinic: helpOf(said['equine-clinic']),
    firstAid: said['first-aid'] ?? [],
    defibrillator: said.defibrillator ?? [],
    extinguishers: said.extinguishers ?? [],
  }
}
