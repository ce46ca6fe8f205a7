import { fill } from '../../model/pattern.ts'
import { isKeptNumber } from '../../model/records.ts'
import type { Fault } from './checks.ts'
import type { Desk } from './desk.ts'
import { exactText, limitsOf, printedText } from './numbers.ts'

/** What is said of a fault. */
export function faultWords(fault: Fault, { data, locale }: Desk): string {
  const { faults } = data.words.records
  const { of } = fault
  if (of === undefined || !isKeptNumber(of))
    return fault.is === 'weights' ? faults.weights : faults.number
  switch (fault.is) {
    case 'outside': {
      const [low, high] = limitsOf(of, locale)
      return fill(faults.outside, { low, high })
    }
    case 'unusual': {
      const { low, high } = fault
      return fill(faults.unusual, {
        low: printedText(of, low, locale),
        high: printedText(of, high, locale),
      })
    }
    case 'apart':
      return fill(faults.apart, { middle: exactText(of, fault.middle, locale) })
    case 'upside':
      return faults.upside
    default:
      return faults.number
  }
}
