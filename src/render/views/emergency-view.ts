import type { Contact, PlaceOfHelp } from '../../model/manual.ts'
import type { Pen } from './pen.ts'

/** Something to read out, or an empty line with its label to write on. */
type Line = { readonly label: string; readonly text: string }

type Call = {
  readonly role: string
  readonly name: string
  readonly phone: string
  readonly href: string
  readonly note: string
}

/** On a phone a touch rings; on paper a number is a number. */
const telephone = (phone: string, linked: boolean): string =>
  linked && phone !== '' ? `tel:${phone.replace(/[^\d+*#]/g, '')}` : ''

const call = (c: Contact, linked: boolean): Call => ({
  role: c.roleTitle,
  name: c.name,
  phone: c.phone,
  href: telephone(c.phone, linked),
  note: c.note,
})

const help = (label: string, p: PlaceOfHelp, linked: boolean) => ({
  label,
  ...p,
  href: telephone(p.phone, linked),
})

/**
 * The emergency page. Nothing is left out: what the facility does not say keeps its label, with an
 * empty line.
 * @param medium On screen telephone numbers are links.
 */
export function emergencyView({ manual, words }: Pen, medium: 'screen' | 'paper') {
  const e = manual.emergency
  const w = words.emergency
  const linked = medium === 'screen'
  const line = (label: string, text: string): Line => ({ label, text })
  return {
    w,
    facility: manual.facility.name,
    number: e.number,
    // More than an emergency number of three or four digits is set smaller.
    longNumber: e.number.length > 4,
    numberHref: telephone(e.number, linked),
    radio: line(w.radio, e.radio),
    // Place first: when the line breaks, they already know where to drive.
    place: [
      line(w.address, e.address),
      line(w.gate, e.gate),
      line(w.way, e.way),
      line(w.coordinates, e.coordinates),
    ],
    meetingPoint: line(w.meetingPoint, e.meetingPoint),
    stops: e.stops.map((c) => call(c, linked)),
    contacts: e.contacts.map((c) => call(c, linked)),
    helps: [help(w.hospital, e.hospital, linked), help(w.equineClinic, e.equineClinic, linked)],
    kept: [
      line(w.firstAid, e.firstAid.join('; ')),
      line(w.defibrillator, e.defibrillator.join('; ')),
      line(w.extinguishers, e.extinguishers.join('; ')),
    ],
  }
}
