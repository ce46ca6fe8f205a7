import { degreesMeant } from '../../model/degrees.ts'
import { factAt } from '../../model/entry-about.ts'
import { idFor } from '../../model/id-for.ts'
import { asSaid, inFigures, withoutAbout } from '../../model/quantity/as-said.ts'
import { clockMeant } from '../form/typed-time.ts'
import type { Field } from './fields.ts'

/** Time zones by what people in North America call them. */
const zones: readonly (readonly [RegExp, string])[] = [
  [/^(?:us\/)?(?:eastern|e[sd]?t)\b/i, 'America/New_York'],
  [/^(?:us\/)?(?:central|c[sd]?t)\b/i, 'America/Chicago'],
  [/^(?:us\/)?(?:mountain|m[sd]?t)\b/i, 'America/Denver'],
  [/^(?:us\/)?(?:pacific|p[sd]?t)\b/i, 'America/Los_Angeles'],
  [/^(?:canada\/)?(?:atlantic|a[sd]?t)\b/i, 'America/Halifax'],
]

/** Names for what the file says by letters of a standard. */
const currencies: readonly (readonly [RegExp, string])[] = [
  [/^(?:us )?(?:\$|dollars?)$/i, 'USD'],
  [/^canadian dollars?$/i, 'CAD'],
  [/^(?:€|euros?)$/i, 'EUR'],
  [/^(?:£|pounds?)$/i, 'GBP'],
]
const languages: readonly (readonly [RegExp, string])[] = [
  [/^english$/i, 'en'],
  [/^(?:french|français)$/i, 'fr'],
  [/^(?:spanish|español)$/i, 'es'],
]

const named = (text: string, names: readonly (readonly [RegExp, string])[]): string =>
  names.find(([pattern]) => pattern.test(text))?.[1] ?? text

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

const monthCalled = (text: string): string => {
  const at = /^[a-z]{3,9}\.?$/i.test(text) ? months.indexOf(text.slice(0, 3).toLowerCase()) : -1
  return at === -1 ? text : String(at + 1)
}

/** Sides of a leaf that are printed on. */
const sidesCalled = (text: string): string =>
  /^(?:both|two|double)\b/i.test(text) ? '2' : /^(?:one|single)\b/i.test(text) ? '1' : text

/** The number before what is counted: `9 races`, `ten`, `4 volunteers`. */
function countOf(text: string): string {
  const said = inFigures(text) ?? asSaid(text)
  return /^(-?\d+)\s+[a-z][a-z -]*$/i.exec(said)?.[1] ?? said
}

/** Hours from one time of day to another: `8 am to 6 pm` is `10 h`. */
function hoursBetween(text: string): string | undefined {
  const [, from = '', to = ''] =
    /^(?:from )?(\d{1,2}(?::\d\d)?\s*[ap]\.?m\.?)\s*(?:to|-|–|until)\s*(\d{1,2}(?::\d\d)?\s*[ap]\.?m\.?)$/i.exec(
      text,
    ) ?? []
  if (from === '') return undefined
  const hourOf = (said: string): number => {
    const [, hour = '0', minutes = '0', half = 'a'] =
      /^(\d+)(?::(\d\d))?\s*([ap])/i.exec(said) ?? []
    return (Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0) + Number(minutes) / 60
  }
  const hours = (hourOf(to) - hourOf(from) + 24) % 24
  return hours === 0 ? undefined : `${Number(hours.toFixed(2))} h`
}

const isId = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/

/** A name of an entry in front, as a file has it: `latitude: 40.6`. */
function withoutName(text: string, { path, about }: Field): string {
  const [, name = '', rest = ''] = /^["']?([\w -]{2,60}):\s+(.*?)["']?$/.exec(text) ?? []
  const names = [path.at(-1), about.label.toLowerCase()]
  return name !== '' && names.includes(name.toLowerCase()) ? rest : text
}

/** What somebody has said in a cell, and whether as no more than an estimate. */
export type Said = { readonly text: string; readonly isRough: boolean }

function saidOfNumber(text: string, { path, kind }: Field): Said {
  const { text: exact, isRough } = withoutAbout(text)
  const name = path.at(-1) ?? ''
  if (/itude$/.test(name)) return { text: degreesMeant(exact), isRough }
  if (name === 'sides') return { text: sidesCalled(exact), isRough }
  if (name === 'month') return { text: monthCalled(exact), isRough }
  const fact = factAt(path)
  const isCount = kind === 'number' || fact?.kind === 'count' || fact?.kind === 'whole'
  if (isCount) return { text: countOf(exact), isRough }
  return { text: hoursBetween(exact) ?? inFigures(exact) ?? asSaid(exact), isRough }
}

/** What somebody has said in a cell, as the file has it; what is nothing known comes back as it is. */
export function saidInCell(cell: string, field: Field): Said {
  const text = withoutName(cell.trim(), field)
  if (field.kind === 'quantity' || field.kind === 'number') return saidOfNumber(text, field)
  const so = (meant: string): Said => ({ text: meant, isRough: false })
  if (field.kind !== 'words') return so(text)
  switch (field.path.at(-1)) {
    case 'id':
      return so(isId.test(text) ? text : idFor(text) || text)
    case 'time-zone':
      return so(named(text, zones))
    case 'currency':
      return so(named(text, currencies))
    case 'language':
      return so(named(text, languages))
    case 'first-post':
      return so(clockMeant(text))
    default:
      return so(text)
  }
}
