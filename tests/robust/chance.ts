/** Chance that a seed repeats. */
export type Chance = {
  /** A whole number from 0 up to one less than `count`. */
  readonly below: (count: number) => number
  /** One of a list that is not empty. */
  readonly oneOf: <T>(list: readonly T[]) => T
  /** True so often, 0 to 1. */
  readonly happens: (often: number) => boolean
}

/** Mulberry32 (T. Ettinger, 2017, public domain), as published: from memory. */
function numbersFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** @param seed A whole number; neighbours give streams that have nothing in common. */
export function chanceFrom(seed: number): Chance {
  const next = numbersFrom(Math.imul(seed + 1, 0x9e3779b1))
  const below = (count: number): number => Math.floor(next() * count)
  return {
    below,
    oneOf: <T>(list: readonly T[]): T => {
      const found = list[below(list.length)]
      if (found === undefined) throw new RangeError('nothing to choose from')
      return found
    },
    happens: (often) => next() < often,
  }
}
