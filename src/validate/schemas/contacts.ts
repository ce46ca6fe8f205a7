import * as z from 'zod'
import { line, phone } from './text.ts'

/** Who can be reached, by what they are there for. */
export const contactRoles = [
  'superintendent',
  'president',
  'board',
  'secretary',
  'treasurer',
  'race-secretary',
  'presiding-judge',
  'ambulance',
  'veterinarian',
  'horse-ambulance',
  'farrier',
  'fire',
  'police',
  'power',
  'grader-owner',
  'quarry',
  'water-supply',
  'utility-locate',
  // What for is said in the note.
  'other',
] as const
export type ContactRole = (typeof contactRoles)[number]

/** Who brings help, in the order in which they are needed. */
export const helperRoles = [
  'ambulance',
  'fire',
  'veterinarian',
  'horse-ambulance',
  'police',
  'power',
] as const satisfies readonly ContactRole[]

/** Somebody to call. */
export const contact = z.strictObject({
  role: z.enum(contactRoles),
  name: line,
  phone,
  note: line.optional(),
})

/** A place of help outside the grounds; `way` says how to get there and how long it takes. */
const help = z.strictObject({ name: line, phone: phone.optional(), way: line })

/** Degrees, north and east positive; read from a phone, so anywhere on earth. */
const coordinates = z.strictObject({
  latitude: z
    .number()
    .min(-90, { error: 'degrees, north positive, from -90 to 90' })
    .max(90, { error: 'degrees, north positive, from -90 to 90' }),
  longitude: z
    .number()
    .min(-180, { error: 'degrees, east positive, from -180 to 180' })
    .max(180, { error: 'degrees, east positive, from -180 to 180' }),
})

/**
 * What stands on the emergency page. Whatever is left out is printed there as a line to be filled
 * in by hand.
 */
export const emergency = z.strictObject({
  /** What is dialed for an ambulance or the fire company. */
  number: phone.optional(),
  /** Channel on which “stop” is called. */
  radio: line.optional(),
  /** Street address as dispatchers look it up. */
  address: line.optional(),
  /** Gate by which help comes in. */
  gate: line.optional(),
  /** From the public road to that gate. */
  way: line.optional(),
  /** Of that gate, read from a phone that stands there. */
  coordinates: coordinates.optional(),
  /** Where somebody waits for help and leads it in. */
  'meeting-point': line.optional(),
  /** Who may stop racing; each must be among the contacts. */
  'stops-racing': z.array(z.enum(contactRoles)).min(1).optional(),
  hospital: help.optional(),
  'equine-clinic': help.optional(),
  'first-aid': z.array(line).min(1).optional(),
  defibrillator: z.array(line).min(1).optional(),
  extinguishers: z.array(line).min(1).optional(),
})
