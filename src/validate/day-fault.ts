import { dayNumber } from '../model/day.ts'
import type { Problem } from '../model/problem.ts'

/** Days from a day to another; negative where it is still to come. */
export const ageOf = (day: string, date: string): number => dayNumber(date) - dayNumber(day)

/** In the east a day begins before it does for the clock of a machine. */
const ahead = 1

/** Days after which a measurement is worth another one, and before which nobody made any. */
const [old, oldest] = [5 * 366, 50 * 366]

type Fault = Pick<Problem, 'message' | 'severity'> & { readonly hint: string }

/**
 * What is wrong with a day on which something is said to have been measured or seen.
 * @param date Of the manual.
 */
export function dayFault(day: string, date: string): Fault | undefined {
  const age = ageOf(day, date)
  if (age < -ahead)
    return {
      message: `${day} is after ${date}, the date of the manual: nothing has been measured on a day to come`,
      hint: 'is the year right? the manual is dated by as-of in the facility file, else today',
      severity: 'error',
    }
  if (age <= old) return undefined
  return {
    message: `${day} is ${Math.floor(age / 365.25)} years before ${date}, the date of the manual`,
    hint: age > oldest ? 'is the year right?' : 'measure again; or is the year wrong?',
    severity: age > oldest ? 'error' : 'warning',
  }
}
