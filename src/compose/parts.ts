/** For each part of a whole the function that makes it. */
export type Composers<Whole, Context> = {
  readonly [Part in keyof Whole]: (context: Context) => Whole[Part]
}

/**
 * Makes all parts of a whole. A part may be made from others: each is made when it is first asked
 * for, and once, so that nobody has to write down an order.
 * @param composers One function for each part.
 * @param contextOf What the functions work with, given the parts.
 * @throws RangeError when a part needs itself.
 */
export function composeParts<Whole extends object, Context>(
  composers: Composers<Whole, Context>,
  contextOf: (parts: Whole) => Context,
): Whole {
  const made = new Map<keyof Whole, unknown>()
  const running = new Set<keyof Whole>()
  const make = (part: keyof Whole): unknown => {
    if (running.has(part)) throw new RangeError(`the part ${String(part)} needs itself`)
    if (!made.has(part)) {
      running.add(part)
      made.set(part, composers[part](context))
      running.delete(part)
    }
    return made.get(part)
  }
  const names = Object.keys(composers) as (keyof Whole)[]
  const asked = names.map((part) => [part, { enumerable: true, get: () => make(part) }] as const)
  const parts = Object.defineProperties({}, Object.fromEntries(asked)) as Whole
  const context = contextOf(parts)
  return { ...parts }
}
