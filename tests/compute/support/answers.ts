import { expect } from 'vitest'
import { isRefusal, type Refusal } from '../../../src/compute/calculation.ts'

/** The number of an answer that must not be a refusal. */
export function numberOf(answer: number | Refusal | undefined): number {
  if (answer === undefined) throw new Error('no such answer')
  if (isRefusal(answer)) throw new Error(`refused: ${answer.refused}`)
  return answer
}

/** Expects every answer to be refused, for a reason that names what is wrong. */
export function expectRefused(
  answers: Readonly<Record<string, number | Refusal>> | readonly (number | Refusal | undefined)[],
  reason: RegExp,
): void {
  for (const answer of Object.values(answers)) {
    expect(answer !== undefined && isRefusal(answer) ? answer.refused : answer).toMatch(reason)
  }
}
