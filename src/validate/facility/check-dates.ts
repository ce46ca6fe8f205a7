import { dayNumber } from '../../model/day.ts'
import type { Problem } from '../../model/problem.ts'
import type { Path } from '../../read/read-yaml.ts'
import { ageOf, dayFault } from '../day-fault.ts'
import { isDemo } from './demos.ts'
import type { ParsedFacility } from './parsed-facility.ts'

/** The days that everything is held against, `YYYY-MM-DD`. */
export type Dates = {
  /** The date of the manual. */
  readonly date: string
  /** What the clock says. */
  readonly today: string
}

/** Every entry that says on which day something was done. */
function done({ file }: ParsedFacility): { readonly path: Path; readonly day: string }[] {
  const listed = (entries: readonly { readonly date: string }[] | undefined, ...path: Path) =>
    (entries ?? []).map(({ date }, i) => ({ path: [...path, i, 'date'], day: date }))
  const walked = file.oval['rail-line']?.date
  return [
    ...listed(file.measurements, 'measurements'),
    ...listed(file.cushion.sieve, 'cushion', 'sieve'),
    ...listed(file.base?.density, 'base', 'density'),
    ...(walked === undefined ? [] : [{ path: ['oval', 'rail-line', 'date'], day: walked }]),
  ]
}

/** A file older than this, days, has missed a season; race days this far ahead are in no program. */
const [stale, program] = [400, 550]

/** Race days further than this, days, from the middle one are of another season. */
const season = 300

/** Further than this, days, from the others or from the manual, no plan can count. */
const farthest = 3 * 366

/** The day to which the file is said to be up to date, against the clock. */
function ownDate({ file, tree }: ParsedFacility, { today }: Dates): Problem[] {
  const day = file['as-of']
  // The demos play in a season of their own.
  if (day === undefined || isDemo(file)) return []
  const age = ageOf(day, today)
  if (age >= -1 && age <= stale) return []
  return [
    tree.problem(
      tree.placeOf(['as-of']),
      'facility/odd',
      age < 0
        ? `the manual would be dated ${day}, and today is ${today}`
        : `the manual would be dated ${day}, which is ${age} days before today, ${today}`,
      {
        hint: 'write the day to which this file is up to date, or leave as-of out for today',
        severity: 'warning',
      },
    ),
  ]
}

/** What is odd about one race day, and by how many days. */
function oddDay(day: string, middle: number, date: string) {
  const ahead = -ageOf(day, date)
  if (ahead > program)
    return {
      off: ahead,
      message: `races on ${day} are ${ahead} days after ${date}, the manual's date`,
    }
  const off = Math.round(Math.abs(dayNumber(day) - middle))
  return off > season
    ? { off, message: `races on ${day} are ${off} days from the others` }
    : undefined
}

/** Race days lie ahead, and in one season. */
function raceDays({ file, tree }: ParsedFacility, { date }: Dates): Problem[] {
  const days = (file['race-days'] ?? []).map((d) => d.date)
  const sorted = days.toSorted()
  const [last, middle] = [sorted.at(-1), sorted[Math.floor((sorted.length - 1) / 2)]]
  if (last === undefined || middle === undefined) return []
  const say = (i: number, message: string, hint: string, severity: Problem['severity']) => {
    const place = tree.placeOf(['race-days', i, 'date'])
    return tree.problem(place, 'facility/odd', message, { hint, severity })
  }
  const over = `all race days are over: the last was on ${last}, and the manual is dated ${date}`
  const odd = days.flatMap((day, i) => {
    const found = oddDay(day, dayNumber(middle), date)
    return found ? [{ ...found, i }] : []
  })
  const isOver = ageOf(last, date) > 0
  return [
    ...(isOver
      ? [
          say(
            days.indexOf(last),
            over,
            'write the days of the season to come; or is a year wrong?',
            'warning',
          ),
        ]
      : []),
    ...odd.flatMap(({ off, message, i }) =>
      off > farthest
        ? [say(i, message, 'is the year right?', 'error')]
        : isOver
          ? []
          : [say(i, message, 'is the year right?', 'warning')],
    ),
  ]
}

/** Nothing was measured after the manual was made, and races are still to come. */
export const checkDates = (facility: ParsedFacility, dates: Dates): Problem[] => [
  ...ownDate(facility, dates),
  ...done(facility).flatMap(({ path, day }) => {
    const fault = dayFault(day, dates.date)
    if (!fault) return []
    const { message, hint, severity } = fault
    const { tree } = facility
    return [tree.problem(tree.placeOf(path), 'facility/odd', message, { hint, severity })]
  }),
  ...raceDays(facility, dates),
]
