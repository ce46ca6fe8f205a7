import * as z from 'zod'
import { capabilities } from '../../model/capability.ts'
import { factPaths, gearFields } from '../../model/fact-spec.ts'
import { materials, rails } from '../../model/oval-choices.ts'
import { binderPapers, dividerKinds, sheetPapers } from '../../model/papers.ts'
import { railLineEntry } from '../imports/rail-line.ts'
import { surveyEntry } from '../imports/surveys.ts'
import { weatherEntry } from '../imports/weather.ts'
import { gearQuantity, quantity } from './quantity.ts'
import { id, line, prose } from './text.ts'

const date = z.iso.date({ error: 'a date such as 2027-08-03' })
const clock = z
  .string()
  .regex(/^([01]?\d|2[0-3]):[0-5]\d$/, { error: 'a time of day such as 13:30' })

/**
 * One quantity field for each fact directly under a path: `cushion.depth` has `target`, `found` …
 */
function quantitiesUnder(prefix: string) {
  const names = factPaths
    .filter((p) => p.startsWith(`${prefix}.`) && !p.slice(prefix.length + 1).includes('.'))
    .map((p) => p.slice(prefix.length + 1))
  return Object.fromEntries(names.map((name) => [name, quantity(`${prefix}.${name}`)]))
}

const group = (prefix: string, inner: Record<string, z.ZodType> = {}) =>
  z.strictObject({ ...quantitiesUnder(prefix), ...inner }).optional()

const place = z.strictObject({
  town: line,
  latitude: z
    .number()
    .min(-66, { error: 'degrees, north positive, from -66 to 66' })
    .max(66, { error: 'degrees, north positive, from -66 to 66' })
    .optional(),
  longitude: z
    .number()
    .min(-180)
    .max(180, { error: 'degrees, east positive, from -180 to 180' })
    .optional(),
  elevation: quantity('place.elevation'),
  'time-zone': z
    .string()
    .regex(/^[A-Z][A-Za-z]+(\/[A-Za-z_+-]+)+$/, { error: 'a time zone such as America/New_York' })
    .optional(),
})

const mark = z.strictObject({
  kind: z.enum(['gate', 'drain', 'water', 'finish', 'stand', 'stockpile']),
  name: line,
  /** Along the rail from the start of the home straight, in the direction of travel. */
  station: quantity('mark.station').pipe(z.any()),
  side: z.enum(['rail', 'outside']).optional(),
  /**
   * Of a stockpile: the gate by which its material is hauled onto the track, by name; else the
   * nearest.
   */
  gate: line.optional(),
})

/** Whose a machine is. */
export const ownerships = ['own', 'borrowed', 'hired'] as const

const machine = z.strictObject({
  id,
  name: line,
  can: z.array(z.enum(capabilities)).min(1),
  from: z.enum(ownerships),
  owner: line.optional(),
  note: line.optional(),
  ...Object.fromEntries(gearFields.map((field) => [field, gearQuantity(field)])),
})

/** What passes each sieve, by its designation: `"No. 4": 92 %`. */
const sieveTest = z.strictObject({
  date,
  by: line,
  passing: z.record(z.string(), z.union([z.string(), z.number()])),
  clay: quantity('sieve.clay'),
  limits: z
    .strictObject({ liquid: quantity('sieve.liquid'), plastic: quantity('sieve.plastic') })
    .optional(),
})

const densityTest = z.strictObject({
  date,
  by: line,
  station: quantity('survey.station'),
  wet: quantity('density.wet'),
  moisture: quantity('density.moisture'),
})

const month = z.strictObject({ month: z.int().min(1).max(12), ...quantitiesUnder('climate') })

/** Who can be reached, by what they are there for. */
export const contactRoles = [
  'superintendent',
  'president',
  'board',
  'race-secretary',
  'presiding-judge',
  'ambulance',
  'veterinarian',
  'horse-ambulance',
  'fire',
  'police',
  'power',
  'grader-owner',
  'quarry',
  'water-supply',
  'utility-locate',
] as const
export type ContactRole = (typeof contactRoles)[number]

/** A place of help outside the grounds; `way` says how to get there and how long it takes. */
const help = z.strictObject({ name: line, phone: line.optional(), way: line })

/**
 * What stands on the emergency page. Whatever is left out is printed there as a line to be filled
 * in by hand.
 */
const emergency = z.strictObject({
  /** What is dialed for an ambulance or the fire company. */
  number: line.optional(),
  /** Channel on which “stop” is called. */
  radio: line.optional(),
  /** Street address as dispatchers look it up. */
  address: line.optional(),
  /** Gate by which help comes in. */
  gate: line.optional(),
  /** From the public road to that gate. */
  way: line.optional(),
  /** Of that gate, read from a phone that stands there. */
  coordinates: z
    .strictObject({
      latitude: z
        .number()
        .min(-90, { error: 'degrees, north positive, from -90 to 90' })
        .max(90, { error: 'degrees, north positive, from -90 to 90' }),
      longitude: z
        .number()
        .min(-180, { error: 'degrees, east positive, from -180 to 180' })
        .max(180, { error: 'degrees, east positive, from -180 to 180' }),
    })
    .optional(),
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

/** What a facility adds to a procedure of the library. */
export const note = z.strictObject({ procedure: id, text: prose })

/** A facility file. Only identity, units, the oval's shape and the material are required. */
export const facility = z.strictObject({
  id,
  name: line,
  place,
  units: z.enum(['us', 'metric']),
  paper: z.enum(binderPapers),
  /** Language of the manual and of this file's own texts: a folder of content/languages. */
  language: z
    .string()
    .regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, {
      error: 'a language by its code (BCP 47), such as en or fr-CA',
    })
    .optional(),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/, { error: 'a currency by its three letters, such as USD' })
    .optional(),
  revision: z.union([z.string(), z.int()]).transform(String).optional(),
  /**
   * How the binder is printed: on one side of the leaf or both, what a section begins on, and
   * dividers before sections.
   */
  binder: z
    .strictObject({
      sides: z.union([z.literal(1), z.literal(2)]).optional(),
      sections: z.enum(['right-hand', 'next']).optional(),
      dividers: z.enum(dividerKinds).optional(),
    })
    .optional(),
  /** Papers for the posted sheets. */
  sheets: z.strictObject({ papers: z.array(z.enum(sheetPapers)).min(1) }).optional(),
  'site-address': z
    .url({ protocol: /^https?$/, error: 'a web address such as https://fair.example/track' })
    .optional(),
  oval: z.strictObject({
    ...quantitiesUnder('oval'),
    width: group('oval.width'),
    'cross-fall': group('oval.cross-fall'),
    rail: z.enum(rails).optional(),
    'rail-line': railLineEntry.optional(),
    direction: z.enum(['counterclockwise', 'clockwise']).optional(),
    /**
     * Direction in which horses run on the home straight, degrees clockwise from true north: turns
     * the arrow on the plan.
     */
    'home-bearing': z
      .number()
      .min(0, { error: 'degrees clockwise from north, from 0 to 360' })
      .max(360, { error: 'degrees clockwise from north, from 0 to 360' })
      .optional(),
    marks: z.array(mark).optional(),
  }),
  cushion: z.strictObject({
    material: z.enum(materials),
    depth: group('cushion.depth'),
    'unit-weight': group('cushion.unit-weight'),
    moisture: group('cushion.moisture'),
    grit: group('cushion.grit'),
    sieve: z.array(sieveTest).optional(),
  }),
  base: group('base', {
    material: line.optional(),
    proctor: group('base.proctor', { test: z.enum(['standard', 'modified']) }),
    density: z.array(densityTest).optional(),
  }),
  'rail-ridge': group('rail-ridge'),
  creep: group('creep'),
  equipment: z.array(machine).optional(),
  water: group('water'),
  crew: group('crew'),
  prices: group('prices'),
  delivery: group('delivery'),
  climate: z.array(month).max(12).optional(),
  'race-days': z
    .array(
      z.strictObject({
        date,
        'first-post': clock,
        races: z.int().min(1).max(40),
        interval: quantity('race-days.interval'),
      }),
    )
    .optional(),
  contacts: z
    .array(
      z.strictObject({
        role: z.enum(contactRoles),
        name: line,
        phone: line,
        note: line.optional(),
      }),
    )
    .optional(),
  emergency: emergency.optional(),
  measurements: z
    .array(
      z.strictObject({
        of: z.string(),
        value: z.union([z.string(), z.number()]),
        date,
        by: line,
        note: line.optional(),
      }),
    )
    .optional(),
  surveys: z.array(surveyEntry).optional(),
  weather: weatherEntry.optional(),
  practice: group('practice', {
    washout: group('practice.washout'),
    seal: group('practice.seal'),
    harrow: group('practice.harrow'),
    reopen: group('practice.reopen'),
    heat: group('practice.heat'),
    grade: group('practice.grade'),
    grit: group('practice.grit'),
    water: group('practice.water'),
    survey: group('practice.survey'),
    drum: group('practice.drum'),
    'race-day': group('practice.race-day'),
  }),
  notes: z.array(note).optional(),
})

export type FacilityFile = z.output<typeof facility>
