import type { Chance } from '../chance.ts'

/** One change of a file; where it finds nothing to change, the file stays. */
export type Mutation = (file: Buffer, chance: Chance) => Buffer

/** A change of a text; bytes that are no text are changed as they would be read. */
export type TextMutation = (text: string, chance: Chance) => string

export const ofText =
  (change: TextMutation): Mutation =>
  (file, chance) =>
    Buffer.from(change(file.toString('utf8'), chance), 'utf8')

/** What changes of one kind there are. */
export type Mutations = readonly Mutation[]
