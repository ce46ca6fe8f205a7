import { fill } from '../../model/pattern.ts'
import type { Pen } from './pen.ts'
import { telephone } from './telephone.ts'

/** What is one touch from every page: the number to dial, the emergency page, the first steps. */
export function emergencyBar({ manual, words }: Pen) {
  const { number, radio } = manual.emergency
  return {
    dial: number === '' ? '' : fill(words.site.dial, { number }),
    href: telephone(number),
    radio: radio === '' ? '' : `${words.emergency.radio}: ${radio}`,
    urgent: manual.procedures.flatMap(({ id, bar }) => (bar === undefined ? [] : [{ id, bar }])),
  }
}
