import type { ProblemCode } from '../../model/problem.ts'
import type { Value } from '../written.ts'

/** What was understood of something that somebody typed. */
export type Understood = {
  /** What is written; nothing where nothing is said. */
  readonly value: Value | undefined
  /** What the field shows once it is left. */
  readonly typed: string
  /** What was understood, where that is worth saying. */
  readonly shown?: string
  /** What is wrong with it, in plain words. */
  readonly fault?: string
  /** Whether somebody said that nobody knows it. */
  readonly isNotKnown?: boolean
}

/** What is said of an entry that is not there. */
const lacking: readonly ProblemCode[] = ['schema/missing', 'oval/too-little', 'file/empty']

/** Whether a problem is that nothing is said, so that there is nothing to look at again. */
export const isLacking = (code: ProblemCode): boolean => lacking.includes(code)

/** Advice that only whoever writes a file by hand can follow. */
const aboutFiles = [
  /; (?:what it varies between|that it is not exact) can stand behind #/,
  /; or delete the line/,
  /; one of digits alone is put in quotes: "\d+"/,
  / such as 555-\d+(?=[;.]|$)/,
  /: put " before it too, or leave both out/,
]

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** What is said of a file, for somebody who sees a field and no file. */
export function worded(message: string, hint?: string): string {
  const advice = aboutFiles.reduce((text, part) => text.replace(part, ''), hint ?? '')
  const said = aboutFiles.reduce((text, part) => text.replace(part, ''), message)
  return advice === '' ? sentence(said) : `${sentence(said)}: ${advice}`
}
