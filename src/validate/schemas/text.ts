import * as z from 'zod'
import { isDay } from '../../model/day.ts'
import { readTimeOfDay } from '../../model/time-of-day.ts'

/**
 * What the strings of a schema are: words for readers, which another language says in its own way,
 * or the name of a figure or fact. All other strings are ids, choices and written quantities. A
 * schema made from another by a further check keeps the other's meaning.
 */
export const meanings = z.registry<{ readonly is: 'words' | 'quantity' }>()

/**
 * Whether Windows takes a name for a device instead of a file, with any ending and in any folder
 * (Microsoft, Naming Files, Paths, and Namespaces).
 */
export const isDevice = (name: string): boolean =>
  /^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i.test(name)

/** What is said of such a name. */
export const noFile = 'Windows keeps this name for a device and no file; choose another'

/** Letters, digits and hyphens: ids become file names, links and anchors. */
export const id = z
  .string()
  .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, {
    error: 'an id: small letters, digits and single hyphens, such as "seal-before-rain"',
  })
  // Folders and files are called by it.
  .max(60, { error: 'an id of at most 60 letters' })
  .refine((name) => !isDevice(name), { error: noFile })

/** A quote that nothing opens: the one before the text was lost, and this one would be printed. */
const noLostQuote = /^(?![^"“”]*[^"“”\d]"$)/

/** One line of plain text that may hold `{figure.id}`; no Markdown blocks. */
export const line = z
  .string()
  .trim()
  .min(1, { error: 'some text' })
  .max(400, { error: 'one line of at most 400 characters', abort: true })
  .regex(noLostQuote, {
    error: 'a quote ends the text and none begins it: put " before it too, or leave both out',
  })
  .register(meanings, { is: 'words' })

/** A telephone number as it is dialed: digits, with what people put between them. */
export const phone = line.regex(/^[^"“”]*\d[^"“”]*$/, {
  error: 'a telephone number; one of digits alone is put in quotes: "911"',
})

/** Markdown that may hold `{figure.id}` and links such as `[seal it](procedure:seal)`. */
export const prose = z
  .string()
  .trim()
  .min(1, { error: 'some text' })
  .max(6000, { error: 'at most 6,000 characters' })
  .register(meanings, { is: 'words' })

/** A quantity as people write it, such as `2 1/2 in`. */
export const written = z
  .string()
  .trim()
  .min(1, { error: 'a quantity such as 3 in' })
  .max(200, { error: 'a quantity such as 3 in', abort: true })

/** A day as it is written everywhere. */
export const date = z.iso
  .date({ error: 'a date such as 2027-08-03', abort: true })
  .refine(isDay, { error: 'a date of the years 1900 to 2199, such as 2027-08-03' })

const timeOfDayWanted = 'a time of day such as 13:30 or 1:30 PM'

/** A time of day, such as 13:30 or 1:30 PM; seconds after midnight. */
export const clock = z
  .string()
  .regex(/^\s*\d{1,2}:[0-5]\d(?:\s*[apAP]\.?[mM]\.?)?\s*$/, { error: timeOfDayWanted })
  .transform((text, context) => {
    const seconds = readTimeOfDay(text)
    if (seconds !== undefined) return seconds
    context.addIssue({ code: 'custom', message: timeOfDayWanted })
    return z.NEVER
  })

/** Named quantities: a fact's path or a figure's id. */
export const figureName = z
  .string()
  .regex(/^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$/, { error: 'a figure or fact, such as "grade.time"' })
  .register(meanings, { is: 'quantity' })
