/** How many pages a booklet may have. */
export type BookletRoom = {
  /** What somebody carries: pages that can be spared go where it would have more. */
  readonly carried: number
  /** Where it has more all the same, it is printed with so many. */
  readonly most: number
}

/** Six leaves, folded; eight can still be folded by hand, better than no field book. */
export const fieldBookRoom: BookletRoom = { carried: 24, most: 32 }

/** Both sides of half a leaf, or of two. */
export const handoutRoom: BookletRoom = { carried: 2, most: 4 }
