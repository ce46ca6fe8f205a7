/** The place of a part among those that are joined into one document. */
export type PartPlace = {
  /** From 0. */
  readonly part: number
  /** How many parts there are. */
  readonly of: number
}

/** Numbers that a part takes at a time; those of the whole take the first so many. */
const block = 4096

/**
 * The number in the whole of a part's own i-th object. Every part has blocks of its own, so that
 * what is written of one stays as it is however many objects the others have.
 */
export const objectNumberAt = ({ part, of }: PartPlace, i: number): number =>
  Math.floor(i / block) * block * (of + 1) + (part + 1) * block + (i % block)

/** More keys of the parent tree than any part has pages and links. */
const keys = 2 ** 24

/** The key in the whole of a part's own key of the parent tree. */
export const parentKeyAt = ({ part }: PartPlace, key: number): number => part * keys + key

/** A key of the parent tree behind those of all parts. */
export const nextParentKey = (parts: number): number => parts * keys

/** The id in the whole of a part's own i-th structure element; ids stand in the order of their text. */
export const elementIdAt = ({ part }: PartPlace, i: number): string =>
  `n${String(part).padStart(3, '0')}-${String(i).padStart(6, '0')}`
