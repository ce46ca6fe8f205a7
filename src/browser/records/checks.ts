import { isKeptNumber, type KeptNumber, type ManualRecords } from '../../model/records.ts'
import { dayFault } from '../../validate/day-fault.ts'
import { depthOutliers } from '../../validate/imports/survey-outliers.ts'
import { type DayKept, fieldOf, rowName, rowsOf } from './kept.ts'
import { numberOf, soundNumber } from './numbers.ts'
import { weightOf } from './oven.ts'
import { sampleForm } from './tables.ts'

/** What is wrong or odd with what stands under a name; values in SI. */
export type Fault = { readonly name: string; readonly of: KeptNumber | undefined } & (
  | { readonly is: 'number' | 'outside' | 'upside' | 'weights' }
  | { readonly is: 'unusual'; readonly low: number; readonly high: number }
  | { readonly is: 'apart'; readonly middle: number }
)

/** Each number by itself: can it be read, can it be true, is it usual here? */
function ofNumbers(day: DayKept, usual: ManualRecords['usual']): readonly Fault[] {
  return Object.entries(day).flatMap(([name, text]): Fault[] => {
    const field = fieldOf(name)
    if (!isKeptNumber(field)) return []
    const read = numberOf(field, text)
    if ('fault' in read) return [{ name, of: field, is: read.fault }]
    const [low, high] = usual[field] ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
    // What is written as the limit itself is within it.
    const slack = 1e-6 * Math.max(1, Math.abs(high))
    return read.si < low - slack || read.si > high + slack
      ? [{ name, of: field, is: 'unusual', low, high }]
      : []
  })
}

function upsideDown(day: DayKept): readonly Fault[] {
  const [high, low] = [soundNumber('high', day['high']), soundNumber('low', day['low'])]
  return high !== undefined && low !== undefined && high < low
    ? [{ name: 'high', of: 'high', is: 'upside' }]
    : []
}

/** Readings that those around them do not bear out, as the facility folder asks about them. */
function apart(day: DayKept): readonly Fault[] {
  const readings = Object.entries(day).flatMap(([name, text]) => {
    const [, station, offset] = /^depth@([\d.]+),([\d.]+)$/.exec(name) ?? []
    const value = name.startsWith('depth@') ? soundNumber('depth', text) : undefined
    return value === undefined
      ? []
      : [{ name, station: Number(station), offset: Number(offset), value }]
  })
  return readings.length === 0
    ? []
    : depthOutliers(readings).map(({ reading, off }) => ({
        name: reading.name,
        of: 'depth',
        is: 'apart',
        middle: reading.value - off,
      }))
}

/** Weights that no sample can have, by the first that is off. */
const weights = (day: DayKept): readonly Fault[] =>
  rowsOf(day, sampleForm).flatMap(({ row, texts }) => {
    const [wet, dry, jar] = ['wet', 'dry', 'jar'].map((name) => ({ name, text: texts[name] }))
    const unread = [wet, dry, jar].find(
      (w) => w?.text !== undefined && weightOf(w.text) === undefined,
    )
    const fault = (field: string, is: 'number' | 'weights'): Fault[] => [
      { name: rowName(sampleForm, row, field), of: undefined, is },
    ]
    if (unread) return fault(unread.name, 'number')
    const [w, d, j] = [wet, dry, jar].map((x) => weightOf(x?.text))
    if (w !== undefined && d !== undefined && w < d) return fault('wet', 'weights')
    return d !== undefined && j !== undefined && d <= j ? fault('dry', 'weights') : []
  })

/**
 * Everything odd about a day, at most one fault a name; what cannot be comes before what is only
 * unusual.
 */
export function faultsOf(day: DayKept, usual: ManualRecords['usual']): readonly Fault[] {
  const numbers = ofNumbers(day, usual)
  const certain = numbers.filter((f) => f.is !== 'unusual')
  const all = [...certain, ...upsideDown(day), ...weights(day), ...apart(day), ...numbers]
  return all.filter((f, i) => all.findIndex((other) => other.name === f.name) === i)
}

/** Whether a day is still to come. @param today Of the phone. */
export const isToCome = (day: string, today: string): boolean =>
  day > today && dayFault(day, today)?.severity === 'error'
