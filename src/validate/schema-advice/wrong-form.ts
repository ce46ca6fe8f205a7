import { saysNothing } from '../../model/quantity/slips.ts'
import { readTimeOfDay } from '../../model/time-of-day.ts'
import type { Path } from '../../read/read-yaml.ts'
import { dateMeant } from './date-meant.ts'
import { exampleAt } from './example.ts'
import { isOwn, whatBelongs } from './own-words.ts'
import { schemaAt } from './schema-keys.ts'
import { nameOf, shown } from './wrong-type.ts'

/** Time zones by the letters that people in North America call them by. */
const zones: Readonly<Record<string, string>> = {
  E: 'America/New_York',
  C: 'America/Chicago',
  M: 'America/Denver',
  P: 'America/Los_Angeles',
  A: 'America/Halifax',
}

const currencies: Readonly<Record<string, string>> = {
  $: 'USD',
  dollar: 'USD',
  dollars: 'USD',
  '€': 'EUR',
  euro: 'EUR',
  euros: 'EUR',
  '£': 'GBP',
  pound: 'GBP',
  pounds: 'GBP',
}

/** A time of day in a form that is not read. */
function timeMeant(text: string): string | undefined {
  if (/^noon$/i.test(text)) return '12:00 PM'
  const [, hour = '', minutes = '00', half = ''] =
    /^(\d{1,2})(?:[.h: ]?(\d{2}))?\s*(?:o'clock)?\s*([ap])?\.?(?:m\.?)?$/i.exec(text) ?? []
  if (hour === '') return undefined
  const time = `${hour}:${minutes}${half === '' ? '' : ` ${half.toUpperCase()}M`}`
  return readTimeOfDay(time) === undefined ? undefined : time
}

const slug = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[-0-9]+|-+$/g, '')

/** What a text in the wrong form was meant to be, by the name of its entry. */
function meant(name: string, text: string, message: string): string | undefined {
  if (name === 'id' || message.startsWith('an id'))
    return slug(text) === text ? undefined : slug(text) || undefined
  if (name === 'first-post') return timeMeant(text)
  if (name === 'currency') return currencies[text.toLowerCase()]
  if (name === 'time-zone') return zones[/^([ECMPA])[SD]?T$/.exec(text.toUpperCase())?.[1] ?? '']
  if (name === 'site-address' && /^[\w.-]+\.[a-z]{2,}(\/\S*)?$/.test(text)) return `https://${text}`
  if (/["“”]/.test(text)) return `"${text.replaceAll(/["“”]/g, '').trim()}"`
  return undefined
}

/** What a library of schemas says of a limit, in words. */
const limit = (message: string): string => {
  const [, side = '', number = ''] = /^Too (big|small): .*?([<>]=?-?\d+)/.exec(message) ?? []
  if (side === '') return message
  const digits = number.replace(/[<>=]/g, '')
  return side === 'big' ? `at most ${digits}` : `at least ${digits}`
}

/** What to do where something that one place alone knows is not in its form. */
function ownHint(path: Path, text: string): string {
  const what = `write the ${whatBelongs(path)}`
  const isPhone = ['phone', 'number'].includes(nameOf(path))
  if (!isPhone && !saysNothing.test(text)) return what
  const without =
    path[0] === 'contacts'
      ? 'delete the whole entry of this contact'
      : `delete "${nameOf(path)}: ${text}"`
  return saysNothing.test(text)
    ? `${without}: the emergency page then has a line to fill in by hand`
    : `${what}; where there is none, ${without}: the emergency page then has a line to fill in by hand`
}

/**
 * A text or number that is not in the form that its place asks for.
 * @param asked What its place asks for, and the year of the fair where the file says it.
 */
export function wrongForm(
  root: object,
  path: Path,
  value: unknown,
  { message, fairYear }: { readonly message: string; readonly fairYear?: string | undefined },
) {
  const text = typeof value === 'string' ? value : ''
  const name = nameOf(path)
  const inList = typeof path.at(-1) === 'number'
  const typed = (what: string): string => (inList ? what : `${name}: ${what}`)
  const isDate = message.startsWith('a date')
  const day = isDate ? dateMeant(text, fairYear) : undefined
  const intended = meant(name, text.trim(), message)
  const said = `${shown(value)} is not right here: ${limit(message)}`
  if (day !== undefined) return { message: said, hint: day }
  if (intended !== undefined) return { message: said, hint: `write ${typed(intended)}` }
  if (typeof value === 'number') return { message: said, hint: 'write a number in that range' }
  const hint = isOwn(path)
    ? ownHint(path, text.trim())
    : `write it as in ${typed(exampleAt(schemaAt(root, path), path))}`
  return { message: said, hint }
}
