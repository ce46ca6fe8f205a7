import type { Contact, PlaceOfHelp } from '../../model/manual/emergency.ts'
import { mapLinks } from './map-links.ts'
import type { Pen } from './pen.ts'
import { telephone } from './telephone.ts'

/** Something to read out, or an empty line with its label to write on. */
type Line = { readonly label: string; readonly text: string }

type Call = {
  readonly roleId: string
  readonly role: string
  readonly name: string
  readonly phone: string
  readonly href: string
  readonly note: string
}

/** On paper a number is a number. */
const dialed = (phone: string, linked: boolean): string => (linked ? telephone(phone) : '')

const call = (c: Contact, linked: boolean): Call => ({
  roleId: c.role,
  role: c.roleTitle,
  name: c.name,
  phone: c.phone,
  href: dialed(c.phone, linked),
  note: c.note,
})

const help = (label: string, p: PlaceOfHelp, linked: boolean) => ({
  label,
  ...p,
  href: dialed(p.phone, linked),
})

/**
 * The emergency page. Nothing is left out: what the facility does not say keeps its label, with an
 * empty line.
 * @param medium On screen telephone numbers are links.
 */
export function emergencyView(
  { manual, words }: Pick<Pen, 'manual' | 'words'>,
  medium: 'screen' | 'paper',
) {
  const e = manual.emergency
  const linked = medium === 'screen'
  const line = (label: string, text: string): Line => ({ label, text })
  return {
    facility: manual.facility.name,
    number: e.number,
    // More than an emergency number of three or four digits is set smaller.
    longNumber: e.number.length > 4,
    numberHref: dialed(e.number, linked),
    radio: line(words.emergency.radio, e.radio),
    // Place first: when the line breaks, they already know where to drive.
    place: [
      line(words.emergency.address, e.address),
      line(words.emergency.gate, e.gate),
      line(words.emergency.way, e.way),
      line(words.emergency.coordinates, e.coordinates),
    ],
    maps: linked ? mapLinks(e, words) : [],
    meetingPoint: line(words.emergency.meetingPoint, e.meetingPoint),
    stops: e.stops.map((c) => call(c, linked)),
    contacts: e.contacts.map((c) => call(c, linked)),
    helps: [
      help(words.emergency.hospital, e.hospital, linked),
      help(words.emergency.equineClinic, e.equineClinic, linked),
    ],
    kept: [
      { role: 'ambulance', ...line(words.emergency.firstAid, e.firstAid.join('; ')) },
      { role: 'ambulance', ...line(words.emergency.defibrillator, e.defibrillator.join('; ')) },
      { role: 'fire', ...line(words.emergency.extinguishers, e.extinguishers.join('; ')) },
    ],
  }
}
