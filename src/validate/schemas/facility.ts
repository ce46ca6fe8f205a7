import * as z from 'zod'
import { factCalled } from '../../model/fact-called.ts'
import { inks } from '../../model/ink.ts'
import { materials } from '../../model/oval-choices.ts'
import { binderPapers, dividerKinds, sheetPapers } from '../../model/papers.ts'
import { entriesUnder } from '../imports/imports.ts'
import { densityEntry } from '../materials/density-tests.ts'
import { sieveEntry } from '../materials/sieve-tests.ts'
import { contact, emergency } from './contacts.ts'
import { machine } from './equipment.ts'
import { factsUnder, group } from './facts-under.ts'
import { oval } from './oval.ts'
import { quantity } from './quantity.ts'
import { clock, date, id, line, prose } from './text.ts'

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

const month = z.strictObject({ month: z.int().min(1).max(12), ...factsUnder('climate') })

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
  /** The day to which this file is up to date; the manual is dated by it, else by today. */
  'as-of': date.optional(),
  revision: z.union([z.string(), z.int()]).transform(String).optional(),
  /**
   * How the binder is printed: on one side of the leaf or both, what a section begins on, dividers
   * before sections, and whether it is wanted in black too.
   */
  binder: z
    .strictObject({
      sides: z.union([z.literal(1), z.literal(2)]).optional(),
      sections: z.enum(['right-hand', 'next']).optional(),
      dividers: z.enum(dividerKinds).optional(),
      ink: z.enum(inks).optional(),
    })
    .optional(),
  /** Papers for the posted sheets. */
  sheets: z.strictObject({ papers: z.array(z.enum(sheetPapers)).min(1) }).optional(),
  'site-address': z
    .url({ protocol: /^https?$/, error: 'a web address such as https://fair.example/track' })
    // Its square code stands on every posted sheet and must be read by a phone.
    .max(200, { error: 'a web address of at most 200 characters' })
    .optional(),
  oval,
  cushion: z.strictObject({
    material: z.enum(materials),
    depth: group('cushion.depth'),
    'unit-weight': group('cushion.unit-weight'),
    moisture: group('cushion.moisture'),
    grit: group('cushion.grit'),
    sieve: z.array(sieveEntry).optional(),
  }),
  base: z
    .strictObject({
      ...factsUnder('base'),
      material: line.optional(),
      proctor: group('base.proctor', { test: z.enum(['standard', 'modified']) }),
      density: z.array(densityEntry).optional(),
    })
    .optional(),
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
        'break-every': quantity('race-days.break-every'),
        break: quantity('race-days.break'),
      }),
    )
    .optional(),
  contacts: z.array(contact).optional(),
  emergency: emergency.optional(),
  measurements: z
    .array(
      z.strictObject({
        /** The path of a fact; its label, as the manual prints it, will do too. */
        of: z.string().transform((name) => factCalled(name) ?? name),
        value: z.union([z.string(), z.number()]),
        date,
        by: line,
        note: line.optional(),
      }),
    )
    .optional(),
  ...entriesUnder('top'),
  practice: group('practice', {
    washout: group('practice.washout'),
    seal: group('practice.seal'),
    harrow: group('practice.harrow'),
    reopen: group('practice.reopen'),
    heat: group('practice.heat'),
    grade: group('practice.grade'),
    grit: group('practice.grit'),
    water: group('practice.water'),
    wetting: group('practice.wetting'),
    machine: group('practice.machine'),
    haul: group('practice.haul'),
    cold: group('practice.cold'),
    survey: group('practice.survey'),
    drum: group('practice.drum'),
    'race-day': group('practice.race-day'),
  }),
  /** Lights reach all of the track, so that work may be planned after dark. */
  lights: z.boolean().optional(),
  notes: z.array(note).optional(),
})

export type FacilityFile = z.output<typeof facility>
