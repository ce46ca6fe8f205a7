import { degreesMeant } from '../../model/degrees.ts'
import { entryAbout } from '../../model/entry-about.ts'
import type { Path } from '../../read/read-yaml.ts'
import { quoted } from '../../read/yaml-faults/fault.ts'
import { choiceCalled, nearName } from './near-name.ts'
import { choicesOf, isOptional, shapeOf } from './schema-keys.ts'

/** Groups whose entries are facts of one place: an example of another would be printed as true. */
const ownGroups: readonly unknown[] = [
  'id',
  'name',
  'place',
  'contacts',
  'emergency',
  'site-address',
]

/** Whether what stands at a path is known to whoever types it alone, so that no example is given. */
export const isOwn = (path: Path): boolean => ownGroups.includes(path[0])

/** Whether a text needs quotes where it stands inside { } or [ ]. */
const needsQuotes = /[,[\]{}#]|:(?:\s|$)|^[@`%!*&|>'"?]|^-\s|^(?:true|false|yes|no|null)$/i

/** A text as it is typed inside { } or [ ]. */
export const inside = (text: string): string =>
  needsQuotes.test(text) && !/^["[{]/.test(text) ? quoted(text) : text

const aNumber = /\+?\(?\d[\d\s().-]{5,}\d(?:\s*(?:ext\.?|x)\s*\d+)?/i

/** North or south, then east or west, as a telephone shows them: `41.2 N 91.5 W`. */
function position(given: string): readonly string[] {
  const text = given.trim()
  const halves =
    /^(.+?)\s*[,;]\s*(.+)$/.exec(text) ??
    /^(.+?[NS])\s+(.+[EW])$/i.exec(text) ??
    /^(-?[\d.]+)\s+(-?[\d.]+)$/.exec(text)
  const both = (halves?.slice(1) ?? []).map((half) =>
    degreesMeant(half.replace(/^([NSEW])\s*(.+)$/i, '$2 $1')),
  )
  return both.every((half) => half !== '' && Number.isFinite(Number(half))) ? both : []
}

type Said = Readonly<Record<string, string>>

/** Who it is, what for, and what to dial, out of one line. */
function contactIn(given: string, roles: readonly string[]): Said {
  const phone = aNumber.exec(given)?.[0]
  const parts = given
    .replace(phone ?? '', '')
    .split(/\s*[,;:–—]\s*|\s+-\s+/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
  const roleOf = (part: string): string | undefined =>
    choiceCalled(part, roles) ?? nearName(part, roles)
  const role = parts.map(roleOf).find((found) => found !== undefined)
  const name = parts.filter((part) => roleOf(part) === undefined).join(', ')
  return {
    ...(role === undefined ? {} : { role }),
    ...(name === '' ? {} : { name }),
    ...(phone === undefined ? {} : { phone }),
  }
}

/** A place of help and the way there: `Valley Hospital in Orland, 25 minutes`. */
function helpIn(given: string): Said {
  const phone = aNumber.exec(given)?.[0]
  const text = given.replace(phone ?? '', '').replace(/[\s,;]+$/, '')
  const [, name = text, way] = /^(.+?)(?:\s+in\s+|\s*[,;]\s*)(.+)$/.exec(text) ?? []
  return {
    name,
    ...(phone === undefined ? {} : { phone }),
    ...(way === undefined ? {} : { way }),
  }
}

/** What one line says of the entries of a group. */
function saidIn(path: Path, shape: Readonly<Record<string, unknown>>, given: string): Said {
  const last = path.findLast((step) => typeof step === 'string')
  if (last === 'coordinates') {
    const [latitude, longitude] = position(given)
    return latitude === undefined || longitude === undefined ? {} : { latitude, longitude }
  }
  if (last === 'contacts') return contactIn(given, choicesOf(shape['role']))
  if (last === 'place') return { town: given }
  if (last === 'emergency') return /^\d+$/.test(given) ? { number: given } : { address: given }
  return helpIn(given)
}

/**
 * A group of such facts on one line, made of the words that stand where it belongs; what they do not
 * say stays empty, and is asked for.
 */
export function ownGroup(schema: unknown, path: Path, given: string): string {
  const shape = shapeOf(schema)
  const said = saidIn(path, shape, given)
  const parts = Object.keys(shape).flatMap((key) => {
    const value = said[key]
    if (value !== undefined)
      return [
        `${key}: ${/^\d+$/.test(value) && key !== 'latitude' ? quoted(value) : inside(value)}`,
      ]
    return isOptional(shape[key]) ? [] : [`${key}:`]
  })
  return `{ ${parts.join(', ')} }`
}

/** What belongs in a place, in the words of its explanation: `town (as people call it)`. */
export function whatBelongs(path: Path): string {
  const about = entryAbout(path.filter((step) => typeof step === 'string'))
  const label = about?.label ?? 'what is true here'
  const [first = ''] = (about?.howTo ?? '').split(/[.;](?:\s|$)/)
  return first === '' ? label : `${label} (${first.charAt(0).toLowerCase()}${first.slice(1)})`
}
