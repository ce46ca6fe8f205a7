import type { Problem } from '../../model/problem.ts'
import { saysNothing } from '../../model/quantity/slips.ts'
import type { ParsedFacility } from './parsed-facility.ts'
import { saidEntries } from './said-entries.ts'

/** That there is none of something is said, and printed. */
const isNone = (text: string): boolean => /^none$/i.test(text)

const byHand = 'the emergency page then has a line to fill in by hand'

/** A word that says that nobody knows would be printed where a line to fill in belongs. */
export const checkSaid = ({ file, tree }: ParsedFacility): Problem[] =>
  [
    ...saidEntries(file.contacts, ['contacts']).filter(({ at }) => at.at(-1) === 'name'),
    ...saidEntries(file.emergency, ['emergency']),
  ].flatMap(({ at, value }) => {
    if (typeof value !== 'string' || !saysNothing.test(value.trim()) || isNone(value.trim()))
      return []
    const hint =
      at[0] === 'contacts'
        ? `write the person or the office that answers; where nobody is known, delete the whole entry of this contact: ${byHand}`
        : `write what is so, or delete the entry: ${byHand}`
    const message = `"${value}" would be printed as it stands`
    return [tree.problem(tree.placeOf(at), 'facility/odd', message, { hint, severity: 'warning' })]
  })
