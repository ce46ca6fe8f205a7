/** For each part of a whole the function that makes it. */
export type Composers<Whole, Context> = {
  readonly [Part in keyof Whole]: (context: Context) => Whole[Part]
}

/**
 * The parts of a whole. A part may be made from others: each is made when it is first asked for, and
 * once, so that nobody has to write down an order, and whoever asks for a few does not wait for all.
 * @param composers One function for each part.
 * @param contextOf What the functions work with, given the parts.
 * @throws RangeError when a part needs itself.
 */
export function composeParts<Whole extends object, Context>(
  composers: Composers<Whole, Context>,
  contextOf: (parts: Whole) => Context,
): Whole {
  const running = new Set<keyof Whole>()
  const make = (part: keyof Whole): unknown => {
    if (running.has(part)) throw new RangeError(`the part ${String(part)} needs itself`)
    running.add(part)
    const value = composers[part](context)
    running.delete(part)
    // From now on it is a plain value.
    Object.defineProperty(parts, part, { value, enumerable: true })
    return value
  }
  const names = Object.keys(composers) as (keyof Whole)[]
  const asked = names.map(
    (part) => [part, { enumerable: true, configurable: true, get: () => make(part) }] as const,
  )
  const parts = Object.defineProperties({}, Object.fromEntries(asked)) as Whole
  const context = contextOf(parts)
  return parts
}
