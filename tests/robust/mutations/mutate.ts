import type { Chance } from '../chance.ts'
import { byteMutations } from './bytes.ts'
import { meaningsOfCells } from './cells.ts'
import { meaningsOfEntries, quantitiesOfEntries } from './entries.ts'
import { lineMutations } from './lines.ts'
import { meaningsOfMustaches } from './mustaches.ts'
import type { Mutations } from './mutation.ts'
import { meaningsOfPoints } from './points.ts'
import { tokenMutations } from './tokens.ts'
import { meaningsOfXml } from './xml.ts'

/** How a file is written. */
export type Form = 'entries' | 'table' | 'points' | 'template' | 'xml' | 'bytes'

type Groups = Readonly<Record<string, { readonly weight: number; readonly of: Mutations }>>

const ofAnyText: Groups = {
  bytes: { weight: 1, of: byteMutations },
  lines: { weight: 2, of: lineMutations },
  tokens: { weight: 3, of: tokenMutations },
}

const groupsOf: Readonly<Record<Form, Groups>> = {
  entries: {
    ...ofAnyText,
    meanings: { weight: 5, of: meaningsOfEntries },
    quantities: { weight: 9, of: quantitiesOfEntries },
  },
  table: { ...ofAnyText, meanings: { weight: 8, of: meaningsOfCells } },
  points: { ...ofAnyText, meanings: { weight: 10, of: meaningsOfPoints } },
  template: { ...ofAnyText, meanings: { weight: 8, of: meaningsOfMustaches } },
  xml: { ...ofAnyText, meanings: { weight: 12, of: meaningsOfXml } },
  bytes: { bytes: { weight: 1, of: byteMutations } },
}

/** A file that was changed, and by changes of which groups. */
export type Mutated = { readonly file: Buffer; readonly by: readonly string[] }

const most = 3

/** Changes a file once to three times. */
export function mutate(file: Buffer, form: Form, chance: Chance): Mutated {
  const groups = Object.entries(groupsOf[form])
  const drawn = groups.flatMap(([name, { weight }]) => Array.from({ length: weight }, () => name))
  let changed = file
  const by: string[] = []
  const times = 1 + (chance.happens(0.5) ? 0 : chance.below(most))
  for (let i = 0; i < times; i++) {
    const name = chance.oneOf(drawn)
    changed = chance.oneOf(groupsOf[form][name]?.of ?? byteMutations)(changed, chance)
    by.push(name)
  }
  return { file: changed, by }
}
