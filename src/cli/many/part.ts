import { createHash } from 'node:crypto'

/** One of several parts into which a list of facilities falls. */
export type Part = { readonly number: number; readonly of: number }

/** Parts are counted by whoever starts the machines; beyond this it is a slip of the keyboard. */
const mostParts = 10_000

/** Reads `3/8`: the third of eight. @returns nothing where it is not of this form. */
export function readPart(text: string): Part | undefined {
  const [, number = 0, of = 0] = /^(\d{1,5})\/(\d{1,5})$/.exec(text)?.map(Number) ?? []
  return number >= 1 && number <= of && of <= mostParts ? { number, of } : undefined
}

/**
 * The part to which a facility falls, from 1. It rests on the facility's id alone, so every machine
 * comes to the same without knowing what the others were told: whichever folders are listed there, in
 * whatever order, none is left out and none is made twice, and a facility more moves no other to another
 * part. The price is that parts are only about equally large.
 */
export function partOf(id: string, of: number): number {
  const digest = createHash('sha256').update(id).digest('hex')
  // 48 bits: the whole numbers of a double go further.
  return (Number.parseInt(digest.slice(0, 12), 16) % of) + 1
}
